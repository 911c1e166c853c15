/** A search in the words of the document, and its answers as rows of shims. */
import type { DrawerShim, Project, ShimRow, ValvePlace, Valving } from '../../model/project.ts';
import type { SearchLimits as AskedLimits, SearchRequest } from '../../model/search-request.ts';
import { InputError } from '../../units/fault.ts';
import { metresFromMillimetres as metres, pascalsFromBars } from '../../units/si.ts';
import type { StackPlace } from '../damper/types.ts';
import { damperFromProject } from '../from-model.ts';
import { runStart } from '../search/run-start.ts';
import type {
  SearchAnswer,
  SearchLimits,
  SearchPlace,
  SearchProblem,
  SearchSettings,
  StartResult,
  SupplyItem,
} from '../search/types.ts';
import type { SolveHooks, TheoryChoice } from '../types.ts';
import { expandShims } from './stacks.ts';

const STACK_OF: Readonly<Record<ValvePlace, StackPlace>> = {
  pistonCompression: 'compression',
  pistonRebound: 'rebound',
  baseCompression: 'base',
};
/** Single shims of one stack, where no limit is set. */
const MOST_SHIMS = 30;

export interface FoundStacks extends Pick<SearchAnswer, 'changes' | 'judgement'> {
  /** The stacks of the searched places, piston side first. */
  readonly shims: Readonly<Partial<Record<ValvePlace, readonly ShimRow[]>>>;
}

export interface FoundByStart extends Omit<StartResult, 'answers'> {
  readonly answers: readonly FoundStacks[];
}

/**
 * One start of a search in a project.
 * @throws InputError `build.unknown`, `search.*` and those of `damperFromProject`; SolveStopped when the caller stops the run
 */
export function searchStart(
  project: Project,
  request: SearchRequest,
  settings: SearchSettings & { readonly theory: TheoryChoice },
  start: number,
  hooks: SolveHooks = {},
): FoundByStart {
  const { problem, rows } = searchProblem(project, request, settings.theory);
  const { answers, ...rest } = runStart(problem, settings, start, hooks);
  const found = answers.map(({ arrangement, ...answer }) => {
    const shims = request.places.map((place) => [place, rowsOf(arrangement[STACK_OF[place]] ?? [], rows)] as const);
    return { ...answer, shims: Object.fromEntries(shims) };
  });
  return { ...rest, answers: found };
}

/** The sizes that may be laid, and how many there are of each. */
class Supply {
  readonly items: SupplyItem[] = [];
  readonly rows: ShimRow[] = [];
  private readonly known = new Map<string, number>();

  /** @returns its index; a size that is there already becomes more */
  add(row: Omit<ShimRow, 'count'>, count: number, material: Valving['material']): number {
    const key = JSON.stringify([row.outerDiameter_mm, row.thickness_mm, row, material]);
    const index = this.known.get(key) ?? this.items.length;
    this.known.set(key, index);
    const [shim] = expandShims([{ ...row, count: 1 }], material);
    this.items[index] = { shim, count: (this.items[index]?.count ?? 0) + count };
    this.rows[index] = row;
    return index;
  }
}

/** @throws InputError as `searchStart` does */
export function searchProblem(project: Project, request: SearchRequest, theory: TheoryChoice) {
  const { buildId, aim, places, limits = {} } = request;
  const damper = damperFromProject(project, buildId);
  const build = project.builds.find(({ id }) => id === buildId);
  const supply = new Supply();
  const searched = places.map((place): SearchPlace => {
    const valving = build?.valves[place];
    if (!valving) throw fault('search.place', 'places', place, 'a stack that the damper has');
    return placeOf(place, valving, request, supply);
  });
  const material = build?.valves[places[0]]?.material;
  for (const { count, ...row } of offered(project.drawer, request)) supply.add(row, count, material);
  const problem: SearchProblem = {
    damper,
    places: searched,
    supply: supply.items,
    aim,
    limits: limitsOf(limits),
    theory,
  };
  return { problem, rows: supply.rows };
}

/** A shim with more to it than its size is one of its kind, and stays. */
const isPlain = ({ innerDiameter_mm, dish_mm, notches, material }: Omit<ShimRow, 'count'>): boolean =>
  innerDiameter_mm === undefined && !dish_mm && notches === undefined && material === undefined;

function placeOf(
  place: ValvePlace,
  { shims, material }: Valving,
  { keep, keepFace = false, source }: SearchRequest,
  supply: Supply,
): SearchPlace {
  const kept = new Map<number, number>();
  const present = shims.flatMap(({ count = 1, ...row }) => {
    const size = supply.add(
      row,
      isPlain(row) && source.kind === 'catalogue' ? Number.POSITIVE_INFINITY : count,
      material,
    );
    if (!isPlain(row)) kept.set(size, (kept.get(size) ?? 0) + count);
    return Array.from({ length: count }, () => size);
  });
  for (const { count = 1, ...row } of keep?.[place] ?? []) {
    const size = supply.add(row, 0, material);
    const there = present.filter((each) => each === size).length;
    if (there < count)
      throw fault(
        'search.keep',
        `keep.${place}`,
        `${count} of ${sizeOf(row)}`,
        `at most ${there} of them, as the stack has`,
      );
    kept.set(size, Math.max(kept.get(size) ?? 0, count));
  }
  const [face] = shims;
  return { place: STACK_OF[place], present, kept, keepsFace: keepFace || !isPlain(face) };
}

const sizeOf = ({ outerDiameter_mm, thickness_mm }: Omit<ShimRow, 'count'>): string =>
  `${outerDiameter_mm} x ${thickness_mm} mm`;

/** A shim of the drawer whose bore is known goes where the shaft has that bore; that is the person's to see to, so the bore is left out. */
function offered(drawer: readonly DrawerShim[], { source }: SearchRequest): DrawerShim[] {
  if (source.kind === 'drawer') return drawer.map(({ innerDiameter_mm: _, ...shim }) => shim);
  const { outerDiameters_mm, thicknesses_mm } = source;
  return outerDiameters_mm.flatMap((outerDiameter_mm) =>
    thicknesses_mm.map((thickness_mm) => ({ outerDiameter_mm, thickness_mm, count: Number.POSITIVE_INFINITY })),
  );
}

function limitsOf(asked: AskedLimits): SearchLimits {
  const { maxShims = MOST_SHIMS, maxChanges, minHeight_mm, maxHeight_mm, minGasMargin_bar, ...reserves } = asked;
  return {
    maxShims,
    ...(maxChanges !== undefined && { maxChanges }),
    ...((minHeight_mm !== undefined || maxHeight_mm !== undefined) && {
      height_m: { from: metres(minHeight_mm ?? 0), upTo: metres(maxHeight_mm ?? 1000) },
    }),
    ...(minGasMargin_bar !== undefined && { minGasMargin_Pa: pascalsFromBars(minGasMargin_bar) }),
    ...reserves,
  };
}

function rowsOf(sizes: readonly number[], rows: readonly ShimRow[]): ShimRow[] {
  const out: ShimRow[] = [];
  sizes.forEach((size, i) => {
    const last = out.at(-1);
    if (last && sizes[i - 1] === size) last.count = (last.count ?? 1) + 1;
    else out.push({ ...rows[size], count: 1 });
  });
  return out;
}

const fault = (code: string, path: string, got: string, wanted: string) => new InputError({ code, path, got, wanted });
