/** What is timed. The figures to reach stand beside the cases. */
import { readFileSync } from 'node:fs';
import { decodeAny, decodeProject } from '../../src/model/codec.ts';
import type { StackFile } from '../../src/model/project.ts';
import {
  type ForceCurve,
  forceCurveForBuild,
  type LiftResult,
  solveLift,
  stackFromFile,
  type Theory,
} from '../../src/solver/index.ts';
import type { BenchCase } from './bench-case.ts';

const read = (path: string): string => readFileSync(new URL(`../../${path}`, import.meta.url), 'utf8');

/** Twelve pressures up to 0.6 MPa. */
const PRESSURES_PA = Array.from({ length: 12 }, (_, index) => (index + 1) * 5e4);

const SPEEDS_M_S = Array.from({ length: 41 }, (_, index) => (index - 20) / 20);

function exampleStack() {
  const decoded = decodeAny(read('docs/examples/two-stage.json'));
  if (!decoded.ok) throw new Error('the example stack does not hold');
  return stackFromFile(decoded.document as StackFile);
}

function demoProject() {
  const decoded = decodeProject(read('src/demo/larkspur-trail-rear.shimwright.json'));
  if (!decoded.ok) throw new Error('the demo project does not hold');
  return decoded.document;
}

/** Lift of a seven-shim two-stage stack at twelve pressures; to reach: 5 ms median for ten shims, large deflection. */
const lift = (theory: Theory): BenchCase => ({
  name: `lift-two-stage-${theory}`,
  prepare() {
    const stack = exampleStack();
    return () => solveLift(stack, PRESSURES_PA, { theory });
  },
  check(result) {
    const lifts = (result as LiftResult).points.map((point) =>
      point.status === 'converged' ? point.faceEdgeLift_m : Number.NaN,
    );
    const rising = lifts.every((value, index) => index === 0 || value > lifts[index - 1]);
    if (lifts.length !== PRESSURES_PA.length || !rising)
      throw new Error(`lift-two-stage-${theory}: the lift does not rise`);
  },
});

/** Force of both builds of the demo at 41 speeds; to reach, with drawing, in the browser: 50 ms p95. */
const force = (theory: Theory): BenchCase => ({
  name: `force-demo-${theory}`,
  prepare() {
    const project = demoProject();
    return () => project.builds.map(({ id }) => forceCurveForBuild(project, id, { speeds_m_s: SPEEDS_M_S, theory }));
  },
  check(result) {
    const points = (result as ForceCurve[]).flatMap((curve) => curve.points);
    const failed = points.filter(({ status }) => status !== 'converged').length;
    if (points.length !== 2 * SPEEDS_M_S.length || failed > 0)
      throw new Error(`force-demo-${theory}: ${failed} points did not solve`);
  },
});

const THEORIES: readonly Theory[] = ['small-deflection', 'large-deflection'];

export const BENCH_CASES: readonly BenchCase[] = [...THEORIES.map(lift), ...THEORIES.map(force)];
