/** What `force`, `flow` and `pressures` have in common: the static curve of a build, told in rows and remarks. */
import { decodeProject } from '../model/codec.ts';
import type { Damper } from '../model/project.ts';
import { EXIT, type Outcome, type Request } from './command.ts';
import { type AskedPoint, curvePoints, failureOf, fallbacksOf, gasCautionOf } from './curve-points.ts';
import { readDocument } from './input.ts';
import { findBuild, headOf } from './occasions.ts';
import { oilRemarks } from './oil-reach.ts';
import { type Column, type Row, renderRows } from './render/rows.ts';
import { theoryOf } from './theories.ts';

export interface CurveTold<Item> {
  readonly format: string;
  /** How far each force may lie off is wanted too. */
  readonly bands?: boolean;
  readonly columnsOf: (damper: Damper) => readonly Column<Item>[];
  readonly rowsOf: (point: AskedPoint, damper: Damper) => readonly Row<Item>[];
  /** Behind the reason of a point that failed. */
  readonly remarksOf: (point: AskedPoint) => readonly string[];
}

export async function tellCurve<Item>({ file, values, width }: Request, told: CurveTold<Item>): Promise<Outcome> {
  const project = await readDocument(file, decodeProject);
  const build = findBuild(project, values);
  const points = curvePoints(project, build, values, told);
  const rows = points.flatMap((point) => told.rowsOf(point, project.damper));
  const head = { format: told.format, version: 1, theory: theoryOf(values), ...headOf(project, build, values) };
  return {
    exit: points.every(isWhole) ? EXIT.done : EXIT.failed,
    result: renderRows(rows, told.columnsOf(project.damper), head, { values, width }),
    talk: [
      ...points.flatMap((point) => [...failureOf(point), ...told.remarksOf(point)]),
      ...gasCautionOf(points),
      ...oilRemarks(project, values),
      ...fallbacksOf(points),
    ],
  };
}

/** With its band, where one was wanted. */
const isWhole = ({ point }: AskedPoint): boolean =>
  point.status === 'converged' && (point.band?.status ?? 'converged') === 'converged';
