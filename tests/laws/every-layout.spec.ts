/** Laws of whole dampers over time, of every layout, from the sizes of the damper alone. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { SineDrive } from '../../src/solver/cycle/drive.ts';
import { type DampingCycleOptions, dampingCycle } from '../../src/solver/cycle/from-damper.ts';
import { peakForces } from '../../src/solver/cycle/read-cycle.ts';
import type { CycleRun } from '../../src/solver/cycle/types.ts';
import { forceCurveWith } from '../../src/solver/damper/force-curve.ts';
import type { DamperInput, HydraulicStopInput, StackTable } from '../../src/solver/damper/types.ts';
import { relativeVolume } from '../../src/solver/fluid/bulk-modulus.ts';
import type { StackInput } from '../../src/solver/types.ts';
import { anyDamper, anyMonotube, anyStack, between } from '../helpers/any-damper.ts';
import { type LinearStack, linearStacks } from '../helpers/linear-stack.ts';
import { BASE } from '../helpers/with-base.ts';

const P_RELEASE = 101325;
const THEORY = { theory: 'small-deflection' } as const;
/** Without air, and so stiff that gas and flows are those of the static damper. */
const STIFF = { bulkModulus_Pa: 1e11, airFraction: 0, airExponent: 1 };

/** Passes its oil nearly without a drop, yet not so easily that pressures on both sides differ by rounding alone. */
const WIDE = { ...BASE, bleed: { count: 10, diameter_m: 10e-3, length_m: 1e-3 } };

const area = (d: number) => (Math.PI / 4) * d * d;

/** As it stands at mid-stroke; the stroke takes `share` of the gas of the extended damper. */
function withRoom(damper: DamperInput, share: number): DamperInput {
  const { rodDiameter_m, legDiameter_m = rodDiameter_m, travel_m, gas } = damper;
  const extended_m3 = (area(legDiameter_m) * travel_m) / share;
  return { ...damper, gas: { ...gas, volume_m3: extended_m3 * (1 - share / 2) } };
}

const anyStop: fc.Arbitrary<Omit<HydraulicStopInput, 'plungerDiameter_m'> | undefined> = fc.option(
  fc.record({
    end: fc.constantFrom('compression', 'rebound'),
    length_m: between(5e-3, 40e-3),
    clearance_m: between(0.1e-3, 0.5e-3),
  }),
  { nil: undefined },
);

/** Dampers with all that costs energy: stop, breakaway, viscous friction, friction of a floating piston, clearance of the piston. */
const anyWhole: fc.Arbitrary<DamperInput> = fc
  .record({
    damper: anyDamper,
    share: between(0.05, 0.9),
    stop: anyStop,
    breakaway_N: between(0, 150),
    viscous_N_s_m: between(0, 100),
    endClearance_m: between(2e-3, 20e-3),
  })
  .map(({ damper, share, stop, breakaway_N, viscous_N_s_m, endClearance_m }) => {
    const { boreDiameter_m, rodDiameter_m, friction } = damper;
    const plungerDiameter_m = (boreDiameter_m + rodDiameter_m) / 2;
    return withRoom(
      {
        ...damper,
        endClearance_m,
        friction: { ...friction, breakaway_N, stribeckSpeed_m_s: 0.05, viscous_N_s_m },
        ...(stop && { hydraulicStop: { ...stop, plungerDiameter_m } }),
      },
      share,
    );
  });

const anySine = fc.record({ stroke_m: between(5e-3, 60e-3), frequency_Hz: between(0.2, 12) });

interface Driven {
  readonly damper: DamperInput;
  readonly stack: LinearStack;
  readonly sine: Pick<SineDrive, 'stroke_m' | 'frequency_Hz'>;
  readonly options?: Partial<DampingCycleOptions>;
}

/** Undefined where a valve is asked for more than it is known for. */
function driven({ damper, stack, sine, options }: Driven): CycleRun | undefined {
  const drive: SineDrive = { kind: 'sine', ...sine, middle_m: damper.travel_m / 2, cycles: 2 };
  const follow = () => ({ ...linearStacks(stack), judge: (_: StackInput, table: StackTable) => table });
  const run = dampingCycle(damper, drive, { ...THEORY, follow, ...options });
  if (run.status === 'finished') return run;
  expect(run.status, run.reason).toBe('beyond-table');
  return undefined;
}

/** Runs a law over many dampers; most of them must have a run to look at. */
function holds(law: (run: CycleRun, damper: DamperInput) => void, options?: Partial<DampingCycleOptions>): void {
  let [asked, seen] = [0, 0];
  fc.assert(
    fc.property(anyWhole, anyStack, anySine, (damper, stack, sine) => {
      asked++;
      const run = driven({ damper, stack, sine, options: { oil: AERATED, ...options } });
      if (!run) return;
      seen++;
      law(run, damper);
    }),
    { numRuns: 40, endOnFailure: true },
  );
  expect(seen).toBeGreaterThan(asked / 2);
}

const FINE = { pressureTolerance_Pa: 10 };
const AERATED = { bulkModulus_Pa: 1.4e9, airFraction: 0.01, airExponent: 1.2 };

/** Source: geometry; content of all chambers, gas and voids taken off, at one sample. */
function contentAt({ series }: CycleRun, damper: DamperInput, k: number): number {
  const { boreDiameter_m, rodDiameter_m, legDiameter_m = rodDiameter_m, travel_m: L, endClearance_m: e, gas } = damper;
  const [A_p, A_r, A_g] = [area(boreDiameter_m), area(rodDiameter_m), area(legDiameter_m)];
  const x = series.position_m[k];
  const p_gas = series.gasPressure_Pa[k];
  const gas_m3 = gas.volume_m3 * (gas.absolutePressure_Pa / p_gas) ** (1 / gas.polytropicExponent);
  const extended_m3 = gas.volume_m3 + A_g * damper.stroke_m;
  const room = { compression: A_p * (L - x + e), rebound: (A_p - A_r) * (x + e) };
  const content = (name: 'compression' | 'rebound') =>
    (room[name] - series.void_m3[name][k]) / relativeVolume(AERATED, series.pressure_Pa[name][k]);
  const atGas = (name: 'compression' | 'reservoir', room_m3: number) =>
    (room_m3 - gas_m3 - series.void_m3[name][k]) / relativeVolume(AERATED, series.pressure_Pa[name][k]);
  return damper.base
    ? content('rebound') + content('compression') + atGas('reservoir', A_p * L + extended_m3 - (A_g - A_r) * x)
    : content('rebound') + atGas('compression', room.compression + extended_m3);
}

describe('every layout over time', () => {
  it('keeps its oil: content, voids and gas fill what bore, rod and stroke leave, at every moment', () => {
    holds((run, damper) => {
      const start = contentAt(run, damper, 0);
      for (let k = 0; k < run.series.time_s.length; k += 11) {
        expect(Math.abs(contentAt(run, damper, k) / start - 1)).toBeLessThan(1e-8);
      }
    });
  });

  it('keeps its energy, and every part of it is a number', () => {
    holds(({ energy, series }, { boreDiameter_m }) => {
      const { balanceError_J, work_J: _, stored_J: __, ...losses } = energy;
      for (const loss of Object.values(losses)) expect(loss).toBeGreaterThanOrEqual(0);
      const stroke_m = Math.max(...series.position_m) - Math.min(...series.position_m);
      const spent_J = Object.values(losses).reduce((sum, loss) => sum + Math.abs(loss), 0);
      // What the tolerance is worth on the bore, out and back.
      const tolerance_J = 2 * FINE.pressureTolerance_Pa * area(boreDiameter_m) * stroke_m;
      expect(Math.abs(balanceError_J)).toBeLessThan(3e-4 * spent_J + tolerance_J);
    }, FINE);
  });

  it('holds every chamber at air release or above, has voids there alone, and gives numbers only', () => {
    holds(({ series }) => {
      for (const name of ['compression', 'rebound']) {
        for (const [k, p] of series.pressure_Pa[name].entries()) {
          if (series.void_m3[name][k] > 0) expect(p).toBe(P_RELEASE);
        }
      }
      expect(Math.min(...series.pressure_Pa.rebound)).toBeGreaterThanOrEqual(P_RELEASE);
      for (const values of [series.force_N, series.stopForce_N, ...Object.values(series.flow_m3_s)])
        expect(values.every(Number.isFinite)).toBe(true);
    });
  });

  it('comes down to its static force at the peak of a slow stroke, both ways', () => {
    let seen = 0;
    fc.assert(
      fc.property(anyWhole, anyStack, (damper, stack) => {
        const sine = { stroke_m: 40e-3, frequency_Hz: 0.3 };
        const v = Math.PI * 40e-3 * 0.3;
        const { points } = forceCurveWith(linearStacks(stack), damper, [v, -v], THEORY);
        const [up, down] = points.filter((point) => point.status === 'converged');
        if (!up || !down || up.airRelease || down.airRelease) return;
        const run = driven({ damper, stack, sine, options: { oil: STIFF, checkLag_s: 0 } });
        if (!run) return;
        seen++;
        const { compression, rebound } = peakForces(run);
        const range = up.force_N - down.force_N;
        expect(Math.abs(compression.force_N - up.force_N)).toBeLessThan(0.01 * range);
        expect(Math.abs(rebound.force_N - down.force_N)).toBeLessThan(0.01 * range);
      }),
      { numRuns: 40, endOnFailure: true },
    );
    expect(seen).toBeGreaterThan(15);
  });

  it('with a base valve that stands wide open is a monotube', () => {
    let seen = 0;
    fc.assert(
      fc.property(anyMonotube, anyStack, anySine, (tube, stack, sine) => {
        // A reservoir holds oil of its own, which the gas must outweigh.
        const gas = { ...tube.gas, separatorFriction_Pa: 0 };
        const damper = withRoom({ ...tube, gas, rodDiameter_m: 0.4 * tube.boreDiameter_m }, 0.3);
        const options = { checkLag_s: 0, oil: { ...STIFF, bulkModulus_Pa: 1e10 } };
        const alone = driven({ damper, stack, sine, options });
        if (!alone) return;
        const range = Math.max(...alone.series.force_N) - Math.min(...alone.series.force_N);
        for (const layout of ['monotube-reservoir', 'twin-tube', 'cartridge'] as const) {
          const based = driven({ damper: { ...damper, layout, base: WIDE }, stack, sine, options });
          if (!based) return;
          for (const [k, force] of based.series.force_N.entries()) {
            expect(Math.abs(force - alone.series.force_N[k])).toBeLessThan(0.01 * range);
          }
        }
        seen++;
      }),
      { numRuns: 15, endOnFailure: true },
    );
    expect(seen).toBeGreaterThan(7);
  });
});
