/**
 * `shimwright compare`: how much firmer builds are than the baseline, at the same speed and setting; above 0 where a build resists the
 * motion more, in either direction. A share is of the force without that of the gas, which no valving changes.
 */
import { decodeProject } from '../../model/codec.ts';
import type { Build, Project } from '../../model/project.ts';
import type { ForcePoint } from '../../solver/index.ts';
import { tidy } from '../../units/convert.ts';
import { EXIT, type Outcome, type Request, UsageError, type Values } from '../command.ts';
import {
  type AskedPoint,
  airReleaseOf,
  cavitationOf,
  curvePoints,
  failureOf,
  fallbacksOf,
  gasCautionOf,
} from '../curve-points.ts';
import { readDocument } from '../input.ts';
import { BUILD, findBuild, headOf } from '../occasions.ts';
import { oilRemarks } from '../oil-reach.ts';
import { type Column, type Row, renderRows } from '../render/rows.ts';
import { pistonTheory, type TheoriesOfCurve, theoryOf } from '../theories.ts';

interface Side extends Pick<TheoriesOfCurve, 'theories'> {
  readonly point: ForcePoint;
}

interface Pair {
  readonly own: Side;
  readonly baseline: Side;
}

/** Against the motion, without the gas [N]. */
const resistance = ({ point: { force_N, gasForce_N, shaftSpeed_m_s } }: Side): number =>
  Math.sign(shaftSpeed_m_s) * (force_N - gasForce_N);

const firmer = ({ own, baseline }: Pair): number => resistance(own) - resistance(baseline);

const theoryOfSide = ({ point, theories }: Side) => pistonTheory(theories, point.shaftSpeed_m_s);

const COLUMNS: readonly Column<Pair>[] = [
  { key: 'baselineForce_N', heading: ['baseline', 'N'], read: ({ baseline }) => baseline.point.force_N },
  { key: 'force_N', heading: ['force', 'N'], read: ({ own }) => own.point.force_N },
  { key: 'firmer_N', heading: ['firmer', 'N'], read: (pair) => tidy(firmer(pair)) },
  { key: 'firmer_percent', heading: ['firmer', '%'], read: shareOf },
  { key: 'baselineTheory', heading: 'baseline theory', read: ({ baseline }) => theoryOfSide(baseline) },
  { key: 'theory', heading: 'theory', read: ({ own }) => theoryOfSide(own) },
];

/** None where the baseline resists nothing, as at rest. */
function shareOf(pair: Pair): number | null {
  const whole = resistance(pair.baseline);
  return whole > 0 ? tidy((100 * firmer(pair)) / whole) : null;
}

/** @throws UsageError where only the baseline is left */
function comparedWith(project: Project, baseline: Build, values: Values): Build[] {
  const wanted = values.has(BUILD) ? [findBuild(project, values)] : project.builds;
  const others = wanted.filter(({ id }) => id !== baseline.id);
  if (others.length > 0) return others;
  throw new UsageError(`compare needs a build beside the baseline, which is ${baseline.id} (${baseline.name})`);
}

/** Every point says of which build it is. */
const pointsOf = (project: Project, build: Build, values: Values): AskedPoint[] =>
  curvePoints(project, build, values).map((point) => ({
    ...point,
    asked: [...point.asked, { key: 'build', heading: 'build', value: build.id, words: `build ${build.id}` }],
  }));

function rowOf({ asked, point, theories }: AskedPoint, baseline: AskedPoint): Row<Pair> {
  if (point.status !== 'converged') return { asked, status: point.status };
  if (baseline.point.status !== 'converged') return { asked, status: baseline.point.status };
  return {
    ...{ asked, status: point.status },
    item: { own: { point, theories }, baseline: { point: baseline.point, theories: baseline.theories } },
  };
}

export async function compare({ file, values, width }: Request): Promise<Outcome> {
  const project = await readDocument(file, decodeProject);
  const baseline = findBuild(project, new Map());
  const before = pointsOf(project, baseline, values);
  const curves = comparedWith(project, baseline, values).map((build) => pointsOf(project, build, values));
  const rows = before.flatMap((point, i) => curves.map((curve) => rowOf(curve[i], point)));
  const { build, ...where } = headOf(project, baseline, values);
  const head = { format: 'shimwright/compare', version: 1, theory: theoryOf(values), ...where, baseline: build };
  const points = [...before, ...curves.flat()];
  return {
    exit: rows.every(({ item }) => item) ? EXIT.done : EXIT.failed,
    result: renderRows(rows, COLUMNS, head, { values, width }),
    talk: [
      ...points.flatMap((point) => [...failureOf(point), ...airReleaseOf(point), ...cavitationOf(point)]),
      ...gasCautionOf(points),
      ...oilRemarks(project, values),
      ...fallbacksOf(points),
    ],
  };
}
