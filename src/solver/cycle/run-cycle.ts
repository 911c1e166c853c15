/**
 * A damper driven through a stroke again and again, or along a trace, from rest. The last period counts, or the whole trace. Energies are
 * integrals over the steps with the weights of the integrator itself, so their balance tells what the integration lost:
 *   work = oil + friction + stop + separator + stored
 * Source: first law; see cycle-network.ts for the parts.
 *
 * symbol  unit  meaning
 * t, h    s     time, step of the integration
 * x, v    m,m/s stroke from full extension, shaft speed
 * F_f, F_s N    force of friction, of the hydraulic stop
 */
import { pressureInWords } from '../in-words.ts';
import { RADAU_B, STAGES } from '../numeric/radau-coefficients.ts';
import { integrateStiff } from '../numeric/stiff-integrator.ts';
import type { StiffResult, TakenStep } from '../numeric/stiff-types.ts';
import { stopIfAsked } from '../stopped.ts';
import type { SolveHooks } from '../types.ts';
import { checkModel, checkOptions } from './check-model.ts';
import { CycleNetwork } from './cycle-network.ts';
import { sampleTimes, seriesOf } from './cycle-series.ts';
import { causeOfEnd } from './run-end.ts';
import type {
  CycleEnergy,
  CycleModel,
  CycleOptions,
  CycleRun,
  CycleSeries,
  Drive,
  FailedCycle,
  Settling,
} from './types.ts';

const PRESSURE_TOLERANCE_PA = 100;
const OPENNESS_TOLERANCE = 1e-3;
/** Between two steps a period, so that what happens between samples is not stepped over. */
const STEPS_A_PERIOD = 60;

const MAX_STEPS = 200_000;
/** A trace breaks at each of its points. */
const MAX_STEPS_A_BREAK = 20;

/** What was put in and lost during one period [J]. */
interface Spent {
  work_J: number;
  oil_J: number;
  friction_J: number;
  stop_J: number;
  separator_J: number;
}

/**
 * @returns the run, or how far it came and why it ended
 * @throws InputError for a model or options that cannot be (check-model.ts); SolveStopped when the caller stops the run
 */
export function runCycle(
  model: CycleModel,
  drive: Drive,
  options: CycleOptions = {},
  hooks: SolveHooks = {},
): CycleRun | FailedCycle {
  checkModel(model);
  checkOptions(options);
  const network = new CycleNetwork(model, drive);
  const start = network.restingState();
  const times = sampleTimes(drive, options.samples);
  const tolerance_Pa = options.pressureTolerance_Pa ?? PRESSURE_TOLERANCE_PA;
  const length_s = drive.end_s - drive.start_s;
  const period_s = drive.period_s ?? length_s;
  const periods = Math.round(length_s / period_s);
  const spent = Array.from({ length: periods }, () => ({
    work_J: 0,
    oil_J: 0,
    friction_J: 0,
    stop_J: 0,
    separator_J: 0,
  }));
  const result = integrateStiff(
    { rates: (t, y, out) => network.rates(t, y, out) },
    drive.start_s,
    start,
    times,
    {
      relativeTolerance: 0,
      absoluteTolerance: network.tolerances(tolerance_Pa, OPENNESS_TOLERANCE),
      largestStep: period_s / STEPS_A_PERIOD,
      breaks: drive.breaks_s,
      maxSteps: MAX_STEPS + MAX_STEPS_A_BREAK * drive.breaks_s.length,
    },
    (step) => {
      stopIfAsked(hooks);
      const period = Math.min(Math.floor((step.t + step.h / 2 - drive.start_s) / period_s), periods - 1);
      spend(network, step, spent[period]);
      hooks.onProgress?.(step.t + step.h - drive.start_s, length_s);
    },
  );
  if (result.status !== 'finished') return failed(network, result, result.status);
  const counted = { first: ((times.length - 1) / periods) * (periods - 1), last: times.length - 1 };
  const series = seriesOf(network, times, result.states);
  return {
    status: 'finished',
    series,
    counted,
    energy: balance(spent[periods - 1], storedBetween(network, times, result, counted)),
    ...(periods > 1 && { settling: settlingOf(series, counted, spent) }),
    integration: {
      steps: result.steps,
      rejections: result.rejections,
      evaluations: result.evaluations,
      largestPressureError_Pa: result.largestError * tolerance_Pa,
    },
  };
}

function spend(network: CycleNetwork, { h, stageTimes, stages }: TakenStep, spent: Spent): void {
  const { friction, stop } = network.model;
  for (let s = 0; s < STAGES; s++) {
    network.read(stageTimes[s], stages[s]);
    const { position_m: x, speed_m_s: v } = network;
    const [F_f, F_s] = [friction(v), stop?.(x, v) ?? 0];
    const weight = RADAU_B[s] * h;
    spent.work_J += weight * (network.pressureForce_N + F_f + F_s) * v;
    spent.oil_J += weight * network.valvePower_W;
    spent.friction_J += weight * F_f * v;
    spent.stop_J += weight * F_s * v;
    spent.separator_J += weight * network.separatorPower_W;
  }
}

function storedBetween(
  network: CycleNetwork,
  times: Float64Array,
  { states }: StiffResult,
  { first, last }: CycleRun['counted'],
): number {
  const [before, after] = [first, last].map((k) => {
    network.read(times[k], states[k]);
    return network.storedEnergy_J;
  });
  return after - before;
}

function balance(spent: Spent, stored_J: number): CycleEnergy {
  const { work_J, oil_J, friction_J, stop_J, separator_J } = spent;
  return { ...spent, stored_J, balanceError_J: work_J - oil_J - friction_J - stop_J - separator_J - stored_J };
}

function settlingOf({ force_N }: CycleSeries, { first, last }: CycleRun['counted'], spent: readonly Spent[]): Settling {
  const length = last - first;
  let worst = 0;
  for (let k = first; k <= last; k++) worst = Math.max(worst, Math.abs(force_N[k] - force_N[k - length]));
  const [before, now] = spent.slice(-2).map(({ work_J }) => work_J);
  return { force_N: worst, work_J: now - before };
}

function failed(
  network: CycleNetwork,
  { time, state }: StiffResult,
  status: Exclude<StiffResult['status'], 'finished'>,
): FailedCycle {
  network.read(time, state);
  const pressures = network.names.map((name, i) => `${name} ${pressureInWords(network.pressure_Pa[i])}`);
  const end = causeOfEnd(network) ?? { status, reason: IN_WORDS[status] };
  const reason = `${end.reason}; absolute pressures there: ${pressures.join(', ')}`;
  return { status: end.status, time_s: time, reason };
}

const IN_WORDS: Record<Exclude<StiffResult['status'], 'finished'>, string> = {
  'step-too-small': 'the steps became too small to go on',
  'too-many-steps': 'the run took more steps than it may',
  'not-a-number': 'a pressure rose beyond 1 GPa, or the gas has no room left',
};
