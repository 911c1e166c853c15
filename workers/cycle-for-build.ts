/** One build driven over time, packed for the wire: calls the solver and takes from its run what a page shows. */
import {
  chamberExtremes,
  dampingCyclesForBuild,
  type FollowStacks,
  forceLoop,
  heatedMassesOf,
  heatingPower,
  hysteresisBothWays,
  parseTrace,
  peakForces,
  temperatureRise,
} from '../src/solver/index.ts';
import type {
  BuildCycle,
  CycleReading,
  CycleRequest,
  DrivenDamper,
  HysteresisRequest,
  HysteresisResult,
  Project,
  SolveHooks,
  TraceRequest,
  TraceResult,
} from './protocol.ts';

const SECONDS_A_MINUTE = 60;

/** @throws InputError as `dampingCyclesForBuild` and `temperatureRise` do; SolveStopped when the caller stops the run */
export function cycleForBuild(
  project: Project,
  buildId: string,
  { drive, ...options }: Pick<CycleRequest, 'drive' | 'theory'> & { readonly follow?: FollowStacks },
  hooks: SolveHooks,
): Exclude<BuildCycle, { status: 'failed' }> {
  const [run] = dampingCyclesForBuild(project, buildId, [drive], options, hooks);
  if (run.status !== 'finished') return { status: 'unfinished', reason: run.reason };
  return { status: 'finished', reading: readingOf(run, project, buildId) };
}

/** @throws InputError as `parseTrace` does */
export const driveOfTrace = ({ text, travel_m }: TraceRequest): TraceResult => ({
  drive: { kind: 'trace', ...parseTrace(text, travel_m) },
});

export const hysteresisOfLoops = ({ loops, speed_m_s }: HysteresisRequest): HysteresisResult => ({
  read: loops.map((loop) => hysteresisBothWays(loop, speed_m_s)),
});

function readingOf(run: DrivenDamper, project: Project, buildId: string): CycleReading {
  const loop = forceLoop(run);
  const power_W = heatingPower(run);
  return {
    theories: run.theories,
    // Copies, because the loop is part of longer series, which stay here.
    loop: {
      time_s: loop.time_s.slice(),
      position_m: loop.position_m.slice(),
      speed_m_s: loop.speed_m_s.slice(),
      force_N: loop.force_N.slice(),
    },
    peaks: peakForces(run),
    hysteresis: hysteresisBothWays(loop),
    energy: run.energy,
    heat_W: power_W,
    warming_K_min: SECONDS_A_MINUTE * temperatureRise(power_W, heatedMassesOf(project, buildId)),
    chambers: chamberExtremes(run),
    ...(run.settling && { settling: run.settling }),
    integration: run.integration,
  };
}
