/** The ways in which a data sheet gives viscosity, and going from one to another without losing what was typed. */
import { ISO_GRADES, type IsoGrade, type Viscosity } from '../../model/project.ts';
import { openId } from './store.ts';

export type ViscosityKind = Viscosity['kind'];
export const VISCOSITY_KINDS: readonly ViscosityKind[] = ['viscosity-index', 'two-point', 'iso-grade'];

const USUAL_INDEX = 150;
/** What oils of that index keep of their viscosity at 40 °C when they are at 100 °C, roughly: a starting value. */
const LEFT_AT_100 = 0.25;

const nearestGrade = (kv40_cSt: number): IsoGrade =>
  ISO_GRADES.reduce((best, grade) => (Math.abs(grade - kv40_cSt) < Math.abs(best - kv40_cSt) ? grade : best));

/** At 40 °C, or at what is nearest to it [cSt]. */
function at40(viscosity: Viscosity): number {
  if (viscosity.kind === 'viscosity-index') return viscosity.kinematicViscosity40_cSt;
  if (viscosity.kind === 'iso-grade') return viscosity.isoGrade;
  const [a, b] = viscosity.points;
  const nearer = Math.abs(a.temperature_degC - 40) <= Math.abs(b.temperature_degC - 40) ? a : b;
  return nearer.kinematicViscosity_cSt;
}

/** What is known of the other kind is taken over; the rest starts with a usual value, to be read off the data sheet. */
export function asKind(viscosity: Viscosity, kind: ViscosityKind): Viscosity {
  const kv40_cSt = at40(viscosity);
  const viscosityIndex = viscosity.kind === 'two-point' ? USUAL_INDEX : viscosity.viscosityIndex;
  if (kind === 'viscosity-index') return { kind, kinematicViscosity40_cSt: kv40_cSt, viscosityIndex };
  if (kind === 'iso-grade') return { kind, isoGrade: nearestGrade(kv40_cSt), viscosityIndex };
  const kv100_cSt = Number((kv40_cSt * LEFT_AT_100).toPrecision(3));
  return {
    kind,
    points: [
      { temperature_degC: 40, kinematicViscosity_cSt: kv40_cSt },
      { temperature_degC: 100, kinematicViscosity_cSt: kv100_cSt },
    ],
  };
}

/** As it was typed last, by project and kind; kept while the page is open. */
const typed = new Map<string, Viscosity>();
const keyOf = (kind: ViscosityKind): string => `${openId.value}:${kind}`;

/** The viscosity by another kind: as it was before, or started from this one. */
export function switchKind(viscosity: Viscosity, kind: ViscosityKind): Viscosity {
  typed.set(keyOf(viscosity.kind), viscosity);
  return typed.get(keyOf(kind)) ?? asKind(viscosity, kind);
}
