/** The force curve of a found stack, solved when its card is pointed at. */
import { computed, signal } from '@preact/signals';
import { SolverError } from '../../../workers/client.ts';
import type { BuildForces, FoundStacks } from '../../../workers/protocol.ts';
import { newBuildFrom } from '../../model/new-build.ts';
import type { Build, Project } from '../../model/project.ts';
import { sideSolver } from '../app/side-solver.ts';
import { solvedSpeeds } from '../app/speeds.ts';
import { topSpeed } from '../app/store.ts';
import { ranked } from './run.ts';
import { buildOfStudy, type Study } from './study.ts';

/** Place in the list of the card that is pointed at, from 0. */
export const pointed = signal(0);

/** The build of the study with these stacks. */
export function buildWith(build: Build, { shims }: Pick<FoundStacks, 'shims'>): Build {
  const valves = Object.entries(shims).map(([place, rows]) => {
    const valving = build.valves[place as keyof Build['valves']];
    return [place, { ...valving, shims: (rows ?? []).map((row) => ({ ...row })) }];
  });
  return { ...build, valves: { ...build.valves, ...Object.fromEntries(valves) } };
}

/** A build of its own, with the notes and measurements of none. */
export const namedBuild = (of: Study, found: FoundStacks, name: string, taken: readonly string[]): Build =>
  newBuildFrom(buildWith(buildOfStudy(of), found), name, taken);

export const previewed = computed(() => {
  const found = ranked.value[pointed.value] ?? ranked.value[0];
  return found && { found, rank: ranked.value.indexOf(found) + 1 };
});

/** Answers by question; a handful of lists' worth. */
const KEPT = 64;
const answers = signal<ReadonlyMap<string, BuildForces | string>>(new Map());

const withFound = (of: Study, { shims }: Pick<FoundStacks, 'shims'>): Project => ({
  ...of.project,
  builds: [buildWith(buildOfStudy(of), { shims })],
});

const keyOf = (of: Study, { shims }: Pick<FoundStacks, 'shims'>): string =>
  JSON.stringify([of.id, shims, topSpeed.value]);

/** The forces, why there are none, or nothing while they are being solved. */
export const answerFor = (of: Study, found: Pick<FoundStacks, 'shims'>): BuildForces | string | undefined =>
  answers.value.get(keyOf(of, found));

/** Solves the curve of stacks unless it is known; a newer wish on the same channel takes its place. */
export async function solvePreview(
  of: Study,
  found: Pick<FoundStacks, 'shims'>,
  channel: 'present' | 'found',
): Promise<void> {
  if (answerFor(of, found) !== undefined) return;
  const key = keyOf(of, found);
  const { buildId } = of.request;
  const request = {
    project: withFound(of, found),
    buildIds: [buildId],
    speeds_m_s: solvedSpeeds(topSpeed.peek()),
    theory: of.settings.theory,
  };
  const keep = (answer: BuildForces | string): void => {
    answers.value = new Map([...answers.peek(), [key, answer] as const].slice(-KEPT));
  };
  try {
    const { builds } = await sideSolver().forces(request, { channel: `search-${channel}` });
    keep(builds[buildId]);
  } catch (error) {
    if (!(error instanceof SolverError)) throw error;
    if (error.code !== 'superseded' && error.code !== 'cancelled') keep(error.message);
  }
}
