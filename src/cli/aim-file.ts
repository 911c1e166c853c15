/** A wanted curve in a file: a table of speed and force, read as the files of a test bench are. */
import { guessColumns } from '../measured/mapping.ts';
import { normalise } from '../measured/normalise.ts';
import { guessSettings, readTable } from '../measured/table.ts';
import { UsageError } from './command.ts';
import { faultLines } from './input.ts';

interface AimPoint {
  readonly shaftSpeed_m_s: number;
  readonly force_N: number;
}

const WANTED =
  'wanted columns of speed and force under a line that names them with their units: shaftSpeed_m_s,force_N';

/** @throws UsageError with every fault, each at its line and column */
export function parseForceSpeed(text: string, name: string): AimPoint[] {
  const table = readTable(text, guessSettings(text));
  const columns = guessColumns(table.headings);
  const read = normalise(table, {
    columns,
    ...{ speedSign: 'compression', forceSign: 'compression', positionSign: 'compression' },
  });
  if (!read.ok) throw new UsageError([...faultLines(name, read.faults), `${name}: ${WANTED}`].join('\n'));
  const { speed_m_s, force_N } = read.value;
  if (!speed_m_s || speed_m_s.length === 0) throw new UsageError(`${name}: got no point; ${WANTED}`);
  const points = speed_m_s.map((shaftSpeed_m_s, i) => ({ shaftSpeed_m_s, force_N: force_N[i] }));
  return rising(points, name);
}

/** As the aims of a project stand: at rest nothing is wanted, and one force at each speed. */
function rising(points: AimPoint[], name: string): AimPoint[] {
  const sorted = points.sort((a, b) => a.shaftSpeed_m_s - b.shaftSpeed_m_s);
  const wrong = sorted.find(({ shaftSpeed_m_s: v }, i) => v === 0 || v === sorted[i - 1]?.shaftSpeed_m_s);
  if (!wrong) return sorted;
  const got = wrong.shaftSpeed_m_s === 0 ? '0 m/s' : `${wrong.shaftSpeed_m_s} m/s twice`;
  throw new UsageError(`${name}: got ${got}, wanted shaft speeds that are not 0, each once`);
}
