/** A wanted curve in a file: speeds and forces, one pair a line, under a header that names the columns with their units. */
import { UsageError } from './command.ts';

const HEADER = 'shaftSpeed_m_s,force_N';
const SEPARATOR = /[,;\t]/;

/** @throws UsageError naming the line */
export function parseForceSpeed(text: string, name: string): { shaftSpeed_m_s: number; force_N: number }[] {
  const lines = text
    .split(/\r?\n/)
    .map((line, i) => ({ cells: line.split(SEPARATOR).map((cell) => cell.trim()), number: i + 1, line }))
    .filter(({ line }) => line.trim() !== '');
  const [header, ...rows] = lines;
  if (header?.cells.join(',') !== HEADER)
    throw new UsageError(
      `${name}: got the header ${JSON.stringify(header?.line ?? '')}, wanted ${HEADER}, or the id or name of an aim of the project`,
    );
  return rows.map(({ cells, number }) => {
    const [shaftSpeed_m_s, force_N] = cells.map((cell) => (cell === '' ? Number.NaN : Number(cell)));
    if (cells.length === 2 && Number.isFinite(shaftSpeed_m_s) && Number.isFinite(force_N))
      return { shaftSpeed_m_s, force_N };
    throw new UsageError(
      `${name}: line ${number}: got ${JSON.stringify(cells.join(','))}, wanted a speed in m/s and a force in N`,
    );
  });
}
