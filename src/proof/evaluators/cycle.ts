/**
 * Whole runs over time of elements whose answer is known: energy per cycle, lag of dashpot and spring in series, stiffness of a closed
 * chamber, peak speed.
 *
 * symbol  unit     meaning
 * X       m        amplitude of the sine stroke
 * w       1/s      angular frequency
 * c, c2   N s/m    linear and quadratic damping, c2 in N s2/m2
 * k       N/m      stiffness of the chamber
 * A, V, K m2,m3,Pa swept area, volume, bulk modulus
 */
import { z } from '../../model/zod.ts';
import { driveFor } from '../../solver/cycle/drive.ts';
import { forceLoop, peakForces } from '../../solver/cycle/read-cycle.ts';
import { runCycle } from '../../solver/cycle/run-cycle.ts';
import type { CycleModel, CycleRun, FailedCycle } from '../../solver/cycle/types.ts';
import { smoothFrictionForce } from '../../solver/damper/friction.ts';
import { elementModel } from '../cycle-elements.ts';
import { type Evaluation, evaluated, evaluateRows, evaluator, failed } from '../evaluator.ts';

/** So stiff that the oil does not count. */
const STIFF_PA = 1e11;
const AREA_M2 = 1e-3;
/** A valve beside friction that alone should count. */
const NEXT_TO_NOTHING_N_S_M = 1e-4;

const rowSchema = z.discriminatedUnion('law', [
  z.strictObject({ label: z.string(), law: z.literal('linear'), damping_N_s_m: z.number().positive() }),
  z.strictObject({
    label: z.string(),
    law: z.literal('quadratic'),
    damping_N_s2_m2: z.number().positive(),
    creeping_N_s_m: z.number().positive(),
  }),
  z.strictObject({ label: z.string(), law: z.literal('coulomb'), friction_N: z.number().positive() }),
]);

const energySchema = z.strictObject({
  amplitude_mm: z.number().positive(),
  frequency_Hz: z.number().positive(),
  rows: z.array(rowSchema),
});

type EnergyRow = z.infer<typeof rowSchema>;

/** `energy` [J] of one cycle of each element, by the work at the shaft. */
export const cycleEnergy = evaluator(energySchema, ({ amplitude_mm, frequency_Hz, rows }) =>
  evaluateRows(rows, (row) => {
    const X = amplitude_mm / 1000;
    const model = energyElement(row, X, 2 * Math.PI * frequency_Hz * X);
    return withRun(runSine(model, X, frequency_Hz, 1), (run) => evaluated({ energy: run.energy.work_J }));
  }),
);

function energyElement(row: EnergyRow, X: number, peak_m_s: number): CycleModel {
  if (row.law === 'linear') return dashpot(row.damping_N_s_m, 0, X, peak_m_s);
  if (row.law === 'quadratic') return dashpot(row.creeping_N_s_m, row.damping_N_s2_m2, X, peak_m_s);
  const law = { sliding_N: row.friction_N, breakaway_N: row.friction_N, stribeckSpeed_m_s: 1, viscous_N_s_m: 0 };
  const model = dashpot(NEXT_TO_NOTHING_N_S_M, 0, X, peak_m_s);
  return { ...model, friction: (v) => smoothFrictionForce(law, v, 1e-4) };
}

/** F = c v + c2 v |v|, by a valve with dp = F/A at Q = A v. */
function dashpot(c: number, c2: number, X: number, peak_m_s: number): CycleModel {
  const A = AREA_M2;
  return elementModel({
    area_m2: A,
    volume_m3: 2e-4,
    bulkModulus_Pa: STIFF_PA,
    flow: (dp) => (2 * A * A * dp) / (c + Math.sqrt(c * c + 4 * c2 * A * dp)),
    largestDrop_Pa: (1.1 * (c + c2 * peak_m_s) * peak_m_s) / A,
    travel_m: 2 * X,
  });
}

const lagSchema = z.strictObject({
  damping_N_s_m: z.number().positive(),
  stiffness_N_m: z.number().positive(),
  rows: z.array(z.strictObject({ label: z.string(), frequency_Hz: z.number().positive() })),
});

/** `tan phi` and `force over c w X` of each frequency, from the first harmonic of the force loop. */
export const maxwellLag = evaluator(lagSchema, ({ damping_N_s_m: c, stiffness_N_m: k, rows }) =>
  evaluateRows(rows, ({ frequency_Hz }) => {
    const [A, K, X] = [AREA_M2, 1.5e9, 1e-4];
    const w = 2 * Math.PI * frequency_Hz;
    const model = elementModel({
      area_m2: A,
      volume_m3: (K * A * A) / k,
      bulkModulus_Pa: K,
      flow: (dp) => (A * A * dp) / c,
      largestDrop_Pa: (4 * c * w * X) / A,
      travel_m: 2 * X,
    });
    return withRun(runSine(model, X, frequency_Hz, 0.01), (run) => {
      const { inPhase, ahead } = firstHarmonic(run, X);
      const amplitude = Math.hypot(inPhase, ahead) / (c * w * X);
      return evaluated({ 'tan phi': inPhase / ahead, amplitude });
    });
  }),
);

/** Force in phase with position and with speed [N]. */
function firstHarmonic(run: CycleRun, X: number): { inPhase: number; ahead: number } {
  const { position_m, speed_m_s, force_N } = forceLoop(run);
  const samples = force_N.length - 1;
  const peak = Math.max(...speed_m_s);
  let [inPhase, ahead] = [0, 0];
  for (let i = 0; i < samples; i++) {
    inPhase += (2 / samples) * force_N[i] * ((position_m[i] - X) / X);
    ahead += (2 / samples) * force_N[i] * (speed_m_s[i] / peak);
  }
  return { inPhase, ahead };
}

const stiffnessSchema = z.strictObject({
  bulkModulus_GPa: z.number().positive(),
  area_cm2: z.number().positive(),
  volume_cm3: z.number().positive(),
});

/** `stiffness` [N/m] of a closed chamber: rise of force over a stroke of a micrometre. */
export const chamberStiffness = evaluator(stiffnessSchema, ({ bulkModulus_GPa, area_cm2, volume_cm3 }) => {
  const X = 0.5e-6;
  const model = elementModel({
    area_m2: area_cm2 / 1e4,
    volume_m3: volume_cm3 / 1e6,
    bulkModulus_Pa: bulkModulus_GPa * 1e9,
    flow: () => 0,
    largestDrop_Pa: 1e6,
    travel_m: 2 * X,
  });
  return withRun(runSine(model, X, 1, 0.01), (run) => {
    const { force_N } = forceLoop(run);
    const half = (force_N.length - 1) / 2;
    return evaluated({ stiffness: (force_N[half] - force_N[0]) / (2 * X) });
  });
});

const peakSchema = z.strictObject({
  damping_N_s_m: z.number().positive(),
  stroke_mm: z.number().positive(),
  rows: z.array(z.strictObject({ label: z.string(), strokes_per_minute: z.number().positive() })),
});

/** `peak speed` [m/s] and `force` [N] over the gas at it, of a dashpot. */
export const peakSpeedRows = evaluator(peakSchema, ({ damping_N_s_m: c, stroke_mm, rows }) =>
  evaluateRows(rows, ({ strokes_per_minute }) => {
    const X = stroke_mm / 2000;
    const frequency_Hz = strokes_per_minute / 60;
    const model = dashpot(c, 0, X, 2 * Math.PI * frequency_Hz * X);
    return withRun(runSine(model, X, frequency_Hz, 1), (run) => {
      const { compression, rebound } = peakForces(run);
      return evaluated({ 'peak speed': compression.speed_m_s, force: (compression.force_N - rebound.force_N) / 2 });
    });
  }),
);

const runSine = (model: CycleModel, X: number, frequency_Hz: number, pressureTolerance_Pa: number) =>
  runCycle(model, driveFor({ kind: 'sine', stroke_m: 2 * X, frequency_Hz, middle_m: X }, model.travel_m), {
    pressureTolerance_Pa,
  });

const withRun = (run: CycleRun | FailedCycle, read: (run: CycleRun) => Evaluation): Evaluation =>
  run.status === 'finished' ? read(run) : failed(run.reason);
