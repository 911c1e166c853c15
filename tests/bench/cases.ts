/** What is timed. The figures to reach stand beside the cases. */
import { demoProject } from '../../scripts/lib/demo-project.ts';
import {
  dampingCyclesForBuild,
  type ForceCurve,
  forceCurveForBuild,
  type LiftPoint,
  type LiftResult,
  type StackInput,
  solveLift,
  type Theory,
} from '../../src/solver/index.ts';
import type { BenchCase } from './bench-case.ts';
import { distinctStacks, judge } from './judged-stacks.ts';
import { searchPlanted } from './planted-search.ts';
import { wavedCases } from './waved-cases.ts';

/** The ten shims of reference case stack/fem-two-stage-large, diameter × thickness in mm. */
const TWO_STAGE_MM = [
  [30, 0.15],
  [30, 0.15],
  [30, 0.15],
  [16, 0.1],
  [28, 0.15],
  [26, 0.15],
  [24, 0.2],
  [22, 0.2],
  [20, 0.2],
  [18, 0.25],
] as const;

const TWO_STAGE: StackInput = {
  clampRadius_m: 6e-3,
  pressureZone: { innerRadius_m: 8.25e-3, outerRadius_m: 13.8e-3 },
  shims: TWO_STAGE_MM.map(([diameter, thickness]) => ({
    outerRadius_m: diameter / 2e3,
    thickness_m: thickness / 1e3,
    youngsModulus_Pa: 206e9,
    poissonsRatio: 0.3,
  })),
};

/** The range of the reference case, twelve pressures evenly spaced in their logarithm. */
const PRESSURES_PA = Array.from({ length: 12 }, (_, i) => 4e4 * 70 ** (i / 11));
/** Edge lift of that stack at 2.8 MPa by independent continuum elements, see the reference case [m]. */
const LIFT_AT_END_M = 0.7175143e-3;
/** The same at 0.04 MPa [m]. */
const LIFT_AT_START_M = 0.06366271e-3;

const SPEEDS_M_S = Array.from({ length: 40 }, (_, i) => ((i + 1) * 2) / 40).flatMap((v) => [v, -v]);

/** To reach: 5 ms median. */
const liftCurve: BenchCase = {
  name: 'liftCurve',
  items: 1,
  prepare: () => () => solveLift(TWO_STAGE, PRESSURES_PA, { theory: 'large-deflection' }),
  check(result) {
    const lifts = (result as LiftResult).points.map((point) =>
      point.status === 'converged' ? point.faceEdgeLift_m : Number.NaN,
    );
    const last = lifts[lifts.length - 1];
    if (!(Math.abs(last / LIFT_AT_END_M - 1) < 0.015))
      throw new Error(`liftCurve: lift ${last} m, wanted ${LIFT_AT_END_M}`);
    if (!lifts.every((lift, i) => i === 0 || lift > lifts[i - 1])) throw new Error('liftCurve: the lift does not rise');
  },
};

/** One build of the demo, both directions, 40 speeds each; to reach: 16 ms median. */
const forceCurve: BenchCase = {
  name: 'forceCurve',
  items: 1,
  prepare() {
    const project = demoProject('larkspur-trail-rear');
    const request = { speeds_m_s: SPEEDS_M_S, theory: 'large-deflection' as const };
    return () => forceCurveForBuild(project, project.baselineBuild, request);
  },
  check(result) {
    const { points } = result as ForceCurve;
    const failed = points.filter(({ status }) => status !== 'converged').length;
    if (points.length !== SPEEDS_M_S.length || failed > 0)
      throw new Error(`forceCurve: ${failed} points did not solve`);
  },
};

/** Ten strokes of three chambers, stacks and valve tables included; to reach: well under a second. */
const cycle: BenchCase = {
  name: 'cycle',
  items: 10,
  prepare() {
    const project = demoProject('larkspur-trail-fork');
    const drive = { kind: 'sine', stroke_m: 0.06, frequency_Hz: 2, middle_m: 0.12, cycles: 10 } as const;
    return () => dampingCyclesForBuild(project, project.baselineBuild, [drive], { theory: 'large-deflection' });
  },
  check(result) {
    const [run] = result as ReturnType<typeof dampingCyclesForBuild>;
    if (run.status !== 'finished') throw new Error(`cycle: ${run.reason}`);
    const { work_J, balanceError_J } = run.energy;
    if (!(Math.abs(balanceError_J) < 1e-5 * work_J))
      throw new Error(`cycle: ${balanceError_J} J are not accounted for`);
  },
};

const STACKS = 60;

/** Distinct stacks judged on one core; to reach: 150 a second with large deflection, 1,000 with small. */
const search = (name: string, theory: Theory): BenchCase => ({
  name,
  items: STACKS,
  prepare() {
    const stacks = distinctStacks(STACKS, 20260611);
    return () => judge(stacks, theory);
  },
  check(result) {
    const judged = result as LiftPoint[][];
    const failed = judged.flat().filter(({ status }) => status !== 'converged').length;
    if (judged.length !== STACKS || failed > 0) throw new Error(`${name}: ${failed} points did not solve`);
    const openings = judged.map((points) =>
      points.map((p) => (p.status === 'converged' ? p.seatOpening_m : Number.NaN)),
    );
    const falls = openings.filter((curve) => curve.some((h, i) => i > 0 && h < curve[i - 1] - 1e-9)).length;
    if (falls > 0) throw new Error(`${name}: the opening of ${falls} stacks falls with the pressure`);
  },
});

export const BENCH_CASES: readonly BenchCase[] = [
  liftCurve,
  forceCurve,
  cycle,
  search('searchLarge', 'large-deflection'),
  search('searchSmall', 'small-deflection'),
  searchPlanted,
  ...wavedCases(TWO_STAGE, PRESSURES_PA, LIFT_AT_START_M),
];
