/**
 * The force of a damper whose parts scatter, as a study of samples: one input a factor, one group a tolerance. A damper that cannot
 * be, such as a shim punched smaller than its seat, has no force, and says why.
 *
 * symbol  unit  meaning
 * z       -     standard deviations off, one a factor
 */
import { InputError } from '../../units/fault.ts';
import { stackPlaces, valveAt } from '../damper/damper-valves.ts';
import { matchedForces } from '../damper/matched-forces.ts';
import type { DamperInput, StackTheories, ValveInput } from '../damper/types.ts';
import { withStack } from '../damper/with-stack.ts';
import type { SolveHooks, TheoryChoice } from '../types.ts';
import type { Study } from './sample-study.ts';
import { TOLERANCE_NAMES, type ToleranceName, type Tolerances } from './scatter-table.ts';
import { factorsOf, type ScatteringDamper, scattered } from './scattered-damper.ts';

export interface ForceStudy extends Study {
  /** Of the damper as it is drawn [N]. */
  readonly drawn: ReturnType<Study['at']>;
  /** Tolerances of parts that the damper has, whether they scatter or not. */
  readonly parts: readonly ToleranceName[];
  /** Why some samples have no force, each reason once; filled as they are solved. */
  readonly refusals: ReadonlySet<string>;
  /** Of the damper as it is drawn, which the samples keep to. */
  readonly theories: StackTheories;
}

/** Stacks of samples that others of the same sample share. */
const KEPT_STACKS = 32;

/**
 * @param speeds_m_s  any order, positive in compression; the places of the study
 * @throws InputError for a damper that cannot be; SolveStopped when the caller stops the run
 */
export function forceStudy(
  scattering: ScatteringDamper,
  tolerances: Tolerances,
  speeds_m_s: readonly number[],
  theory: TheoryChoice,
  hooks: Pick<SolveHooks, 'shouldStop'> = {},
): ForceStudy {
  const { damper } = scattering;
  const all = factorsOf(scattering);
  const factors = all.filter(({ name }) => tolerances[name] > 0);
  const forces = matchedForces(damper, speeds_m_s, theory, hooks);
  const share = sharedStacks();
  const refusals = new Set<string>();
  const at = (z: readonly number[]) => {
    try {
      return forces.of(share(scattered(damper, factors, tolerances, z)));
    } catch (error) {
      if (!(error instanceof InputError)) throw error;
      refusals.add(error.message);
      return speeds_m_s.map(() => null);
    }
  };
  return {
    groupOf: factors.map(({ name }) => TOLERANCE_NAMES.indexOf(name)),
    groups: TOLERANCE_NAMES.length,
    at,
    drawn: forces.of(damper),
    parts: TOLERANCE_NAMES.filter((name) => all.some((factor) => factor.name === name)),
    refusals,
    theories: forces.theories,
  };
}

/** Gives equal stacks one identity, by which their tables are found again. */
function sharedStacks(): (damper: DamperInput) => DamperInput {
  const known = new Map<string, ValveInput['stack']>();
  return (damper) =>
    stackPlaces(damper).reduce((of, place) => {
      const { stack } = valveAt(of, place);
      const key = `${place} ${JSON.stringify(stack)}`;
      const shared = known.get(key) ?? stack;
      known.set(key, shared);
      const [oldest] = known.keys();
      if (known.size > KEPT_STACKS) known.delete(oldest);
      return withStack(of, place, shared);
    }, damper);
}
