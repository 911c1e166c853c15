/**
 * One stack that may wave, kept ready for load after load: it follows the ports, falls to half as many waves where that
 * state is the stable one, or, with ports all round, takes waves of its own where it no longer stays round.
 *
 * | symbol | unit | meaning |
 * |---|---|---|
 * | p | Pa | pressure on the zone, where ports open it |
 * | n | - | waves round the circle |
 */
import type { ConvergedLift, LandPressure, LiftPoint, PortsUnderShims, StackInput } from '../../types.ts';
import { failedLift } from '../failed-lift.ts';
import { type FollowedLoads, followLoads } from '../followed-loads.ts';
import { createLoadedStack, type LoadedStack } from '../loaded-stack.ts';
import { validateStack } from '../validate-stack.ts';
import { fallsToHalf } from './halving-test.ts';
import { createPeriodicSystem, type PeriodicSystem } from './periodic-system.ts';
import { readPeriodic } from './read-periodic.ts';
import { onePortAPeriod, ownWaves, portsSetThePeriod, twoPortsAPeriod, type WavePattern } from './wave-pattern.ts';

export interface PeriodicStackOptions {
  readonly landPressure?: LandPressure;
  readonly profiles?: boolean;
  /** Least number of elements from clamp to rim; for convergence studies. */
  readonly elements?: number;
  /** The same stack under the round theory, where it is at hand: its states are then not solved again. */
  readonly round?: RoundStack;
}

type RoundStack = Pick<LoadedStack, 'at' | 'rufflingAt'>;

export interface LoadedPeriodicStack {
  /** Solves one pressure >= 0 [Pa]; a failure leaves what was solved before as it was. */
  readonly at: (p: number) => LiftPoint;
}

/** @throws InputError `stack.*` for a stack outside the model */
export function createLoadedPeriodicStack(stack: StackInput, options: PeriodicStackOptions): LoadedPeriodicStack {
  validateStack(stack);
  const { ports } = stack;
  return portsSetThePeriod(ports) ? followPorts(stack, ports, options) : followOwnWaves(stack, options);
}

/** A pattern with the loads it was followed through. */
interface Followed extends FollowedLoads {
  readonly system: PeriodicSystem;
  readonly at: (p: number) => LiftPoint;
}

function follow(
  stack: StackInput,
  pattern: WavePattern,
  { profiles = false, landPressure, elements }: PeriodicStackOptions,
): Followed {
  const system = createPeriodicSystem(stack, { landPressure, elements, ...pattern });
  const loads = followLoads(system, stack.float);
  const at = (p: number): LiftPoint => {
    const end = loads.solve(p);
    return end.status === 'converged' ? readPeriodic(system, p, end, profiles) : failedLift(p, end);
  };
  return { ...loads, system, at };
}

function followPorts(stack: StackInput, ports: PortsUnderShims, options: PeriodicStackOptions): LoadedPeriodicStack {
  const one = follow(stack, onePortAPeriod(ports), options);
  if (ports.count % 2 !== 0) return one;
  let two: Followed | undefined;
  /** Least pressure at which one wave a port was found to give way. */
  let halved = Number.POSITIVE_INFINITY;
  const at = (p: number): LiftPoint => {
    two ??= follow(stack, twoPortsAPeriod(ports), options);
    if (p >= halved) return two.at(p);
    const point = one.at(p);
    if (point.status !== 'converged' || !fallsToHalf(one.system, two.system)) return point;
    halved = p;
    return two.at(p);
  };
  return { at };
}

function followOwnWaves(stack: StackInput, options: PeriodicStackOptions): LoadedPeriodicStack {
  const round = options.round ?? roundOf(stack, options);
  let waved: Followed | undefined;
  const at = (p: number): LiftPoint => {
    const point = round.at(p);
    const ruffling = point.status === 'converged' ? round.rufflingAt(p) : undefined;
    if (point.status === 'converged' && ruffling?.status === 'round') return unwaved(point);
    waved ??= follow(stack, ownWaves(firstWaves(round, p), stack.ports), options);
    return waved.at(p);
  };
  return { at };
}

const roundOf = (stack: StackInput, { landPressure, profiles, elements }: PeriodicStackOptions): RoundStack =>
  createLoadedStack(stack, { landPressure, profiles, elements, theory: 'large-deflection' });

/** The margin against waves belongs to what does not follow them. */
function unwaved({ waviness: _, ...point }: ConvergedLift): ConvergedLift {
  const { faceEdgeLift_m } = point;
  return { ...point, wave: { waves: 0, minEdgeLift_m: faceEdgeLift_m, maxEdgeLift_m: faceEdgeLift_m } };
}

/** Halvings of the pressure in search of a round state, and then of the bracket round the onset. */
const LADDER = 12;
const BRACKET_HALVINGS = 5;
/** Number of waves of a stack of which none can be found, since its round state does not solve. */
const USUAL_WAVES = 3;

/** Waves in which the round state first gives way, below p. */
function firstWaves(round: RoundStack, p: number): number {
  let waves = USUAL_WAVES;
  const ruffles = (q: number): boolean => {
    if (round.at(q).status !== 'converged') return true;
    const outcome = round.rufflingAt(q);
    if (outcome.status === 'ruffled') waves = outcome.waves;
    return outcome.status !== 'round';
  };
  let high = p;
  let low = p;
  for (let rung = 0; rung < LADDER && ruffles(low); rung++) {
    high = low;
    low /= 2;
  }
  for (let halving = 0; halving < BRACKET_HALVINGS; halving++) {
    const middle = Math.sqrt(low * high);
    if (ruffles(middle)) high = middle;
    else low = middle;
  }
  return waves;
}
