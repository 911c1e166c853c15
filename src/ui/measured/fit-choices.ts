/** Which coefficients a fit of a build may change: what the solver offers for it, and what the person ticked. */
import { effect, signal, untracked } from '@preact/signals';
import { SolverError } from '../../../workers/client.ts';
import type { FitChoice } from '../../../workers/protocol.ts';
import type { FitCoefficientName } from '../../model/fit.ts';
import type { Build } from '../../model/project.ts';
import { sideSolver } from '../app/side-solver.ts';
import { keyNow } from '../app/solve.ts';
import { project, selectedBuild } from '../app/store.ts';
import { toggled } from '../app/toggled.ts';

interface Offer {
  readonly buildId: string;
  readonly key: string;
  readonly choices: readonly FitChoice[];
  /** Why there are none, where the damper cannot be. */
  readonly why?: string;
}

/** For the build on show. */
const offer = signal<Offer | undefined>(undefined);
/** Ticked by hand, by build id; of the bench and not of the document: a fit says itself what it changed. */
const picked = signal<ReadonlyMap<string, readonly FitCoefficientName[]>>(new Map());

export const offerFor = ({ id }: Build): Offer | undefined => (offer.value?.buildId === id ? offer.value : undefined);

/** What was ticked, else what the kept fit changed, else the usual ones; always of those that are offered, in their order. */
export function chosenNames(
  { id, fit }: Pick<Build, 'id' | 'fit'>,
  choices: readonly FitChoice[],
): FitCoefficientName[] {
  const wanted = picked.value.get(id) ?? fit?.coefficients.map(({ name }) => name);
  return choices.filter(({ name, isUsual }) => wanted?.includes(name) ?? isUsual).map(({ name }) => name);
}

export function toggleChoice(build: Build, choices: readonly FitChoice[], name: FitCoefficientName): void {
  picked.value = new Map([...picked.value, [build.id, toggled(chosenNames(build, choices), name)]]);
}

/** Back to the usual ones. */
export function chooseUsual({ id }: Build, choices: readonly FitChoice[]): void {
  const usual = choices.filter(({ isUsual }) => isUsual).map(({ name }) => name);
  picked.value = new Map([...picked.value, [id, usual]]);
}

const hasMeasured = ({ measurements = [], fit }: Build): boolean => measurements.length > 0 || fit !== undefined;

async function ask(build: Build, key: string): Promise<void> {
  const keep = (rest: Pick<Offer, 'choices' | 'why'>): void => {
    offer.value = { buildId: build.id, key, ...rest };
  };
  try {
    const request = { project: project.value, buildId: build.id };
    keep(await sideSolver().fitChoices(request, { channel: 'fit-choices' }));
  } catch (error) {
    if (!(error instanceof SolverError)) throw error;
    if (error.code !== 'cancelled' && error.code !== 'superseded') keep({ choices: [], why: error.message });
  }
}

/** Starts following the build on show: what it has of bleeds, friction and valves decides. */
export const startFitChoices = (): (() => void) =>
  effect(() => {
    const build = selectedBuild.value;
    if (!hasMeasured(build)) return;
    const key = keyNow(build);
    if (untracked(() => offer.value?.key !== key || offer.value.buildId !== build.id)) void ask(build, key);
  });
