/** What shims are made of, where a document says it: of a whole stack, or of one row of it. */
import type { Material, Project, ShimRow, ValvePlace, Valving } from '../../model/project.ts';
import { buildOf, changeValving, replaceRows } from './edits.ts';
import { keyPut, type OptionalPart } from './optional-parts.ts';
import { valvingAt } from './places.ts';

/** Spring steel strip, as it is computed with where nothing is given: DIN 2093 / EN 16984 (from memory). */
export const SPRING_STEEL: Readonly<Material> = { youngsModulus_GPa: 206, poissonsRatio: 0.3 };

/** Moduli of the metals whose strengths are assumed to be those of spring steel (common practice) [GPa]. */
const STEELS_GPA = [190, 215] as const;

export const isSteel = ({ youngsModulus_GPa }: Material): boolean =>
  youngsModulus_GPa >= STEELS_GPA[0] && youngsModulus_GPa <= STEELS_GPA[1];

const ofStack = (
  buildId: string,
  place: ValvePlace,
  name: string,
  of: (valving: Valving) => Material | undefined,
  put: (valving: Valving, material: Material | undefined) => Valving,
): OptionalPart<Material> => ({
  id: `${buildId}:${place}:${name}`,
  of: (project: Project) => of(valvingAt(buildOf(project, buildId), place)),
  put: (project, material) => changeValving(project, buildId, place, (valving) => put(valving, material)),
  start: () => SPRING_STEEL,
});

export const materialOf = (buildId: string, place: ValvePlace): OptionalPart<Material> =>
  ofStack(
    buildId,
    place,
    'material',
    ({ material }) => material,
    (valving, material) => keyPut(valving, 'material', material),
  );

export function materialOfRow(buildId: string, place: ValvePlace, row: number): OptionalPart<Material> {
  const put = (valving: Valving, material: Material | undefined): Valving => {
    const shim: ShimRow = keyPut(valving.shims[row], 'material', material);
    return replaceRows(
      valving,
      valving.shims.map((each, i) => (i === row ? shim : each)),
    );
  };
  const part = ofStack(buildId, place, `material-${row}`, ({ shims }) => shims[row]?.material, put);
  // A shim of its own metal starts as the stack it lies in.
  return { ...part, start: (project) => valvingAt(buildOf(project, buildId), place).material ?? SPRING_STEEL };
}
