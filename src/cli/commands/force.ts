/** `shimwright force`: force against shaft speed of one build, under one or several settings of the day. */
import { decodeProject } from '../../model/codec.ts';
import { EXIT, type Outcome, type Request } from '../command.ts';
import {
  type AskedPoint,
  airReleaseOf,
  cavitationOf,
  curvePoints,
  failureOf,
  fallbacksOf,
  gasCautionOf,
  rowOf,
} from '../curve-points.ts';
import { readDocument } from '../input.ts';
import { findBuild, headOf } from '../occasions.ts';
import { oilRemarks } from '../oil-reach.ts';
import { renderRows, whereOf } from '../render/rows.ts';
import { theoryColumns } from '../theories.ts';
import { forceColumns } from './force-columns.ts';
import { theoryOf } from './lift.ts';

export const BAND = 'band';
export const WITHOUT_GAS = 'without-gas';

export async function force({ file, values, width }: Request): Promise<Outcome> {
  const project = await readDocument(file, decodeProject);
  const build = findBuild(project, values);
  const wanted = { band: values.has(BAND), withoutGas: values.has(WITHOUT_GAS) };
  const points = curvePoints(project, build, values, { bands: wanted.band });
  const columns = [...forceColumns(project.damper, wanted), ...theoryColumns(project.damper.layout !== 'monotube')];
  const head = {
    format: 'shimwright/force',
    version: 1,
    theory: theoryOf(values),
    ...headOf(project, build, values),
  };
  return {
    exit: points.every(isWhole) ? EXIT.done : EXIT.failed,
    result: renderRows(points.map(rowOf), columns, head, { values, width }),
    talk: [
      ...points.flatMap((point) => [
        ...failureOf(point),
        ...airReleaseOf(point),
        ...cavitationOf(point),
        ...bandFailureOf(point),
      ]),
      ...gasCautionOf(points),
      ...oilRemarks(project, values),
      ...fallbacksOf(points),
    ],
  };
}

const isWhole = ({ point }: AskedPoint): boolean =>
  point.status === 'converged' && (point.band?.status ?? 'converged') === 'converged';

function bandFailureOf({ asked, point }: AskedPoint): string[] {
  if (point.status !== 'converged' || !point.band || point.band.status === 'converged') return [];
  return [`${whereOf(asked)}: no band: ${point.band.status}: ${point.band.reason}`];
}
