/** The effects as a Markdown table: a row a change, a column a speed and direction, the largest of each column in bold. */
import type { CaseEffects, ChangeEffects, Effect } from './effects.ts';

/** How many of a column are in bold. */
const IN_BOLD = 6;
/** A smaller share of the damping force is never in bold, and a row without a larger one is told in a line. */
const SMALLEST_SHARE = 0.01;

export const tablesOf = (cases: readonly CaseEffects[]): string =>
  cases.map((effects) => `## ${effects.title}\n\n${tableOf(effects)}`).join('\n\n');

export function tableOf({ speeds_m_s, damping_N, changes }: CaseEffects): string {
  const share = (change: ChangeEffects, column: number) => largest(change, column) / damping_N[column];
  const most = (change: ChangeEffects) => Math.max(...speeds_m_s.map((_, column) => share(change, column)));
  const bold = speeds_m_s.map((_, column) => boldFrom(changes.map((change) => share(change, column))));
  const sorted = [...changes].sort((p, q) => most(q) - most(p));
  const cell = (change: ChangeEffects, column: number) => {
    const text = cellOf(change, column, share(change, column));
    return share(change, column) >= bold[column] ? `**${text}**` : text;
  };
  const small = sorted.filter((change) => most(change) < SMALLEST_SHARE && !hasFailed(change));
  return [
    row(['change', ...speeds_m_s.map(headOf)]),
    row(['---', ...speeds_m_s.map(() => '---')]),
    row(['damping force, N', ...damping_N.map((N) => digits(N))]),
    ...sorted
      .filter((change) => !small.includes(change))
      .map((change) => row([change.label, ...speeds_m_s.map((_, column) => cell(change, column))])),
    '',
    `Below ${SMALLEST_SHARE * 100} % everywhere: ${small.map(({ label }) => label).join('; ') || 'nothing'}.`,
  ].join('\n');
}

const row = (cells: readonly string[]): string => `| ${cells.join(' | ')} |`;

const headOf = (speed: number): string => `${Math.abs(speed)} m/s ${speed > 0 ? 'compression' : 'rebound'}`;

/** Largest change of a column, whichever way [N]; 0 where there is no telling. */
function largest({ lower, upper }: ChangeEffects, column: number): number {
  const known = [lower[column], upper[column]].filter((effect) => typeof effect === 'number');
  return Math.max(0, ...known.map(Math.abs));
}

const hasFailed = ({ lower, upper }: ChangeEffects): boolean =>
  [...lower, ...upper].some((effect) => typeof effect === 'object');

const boldFrom = (shares: readonly number[]): number =>
  Math.max([...shares].sort((p, q) => q - p)[IN_BOLD - 1] ?? 0, SMALLEST_SHARE);

function cellOf({ lower, upper }: ChangeEffects, column: number, share: number): string {
  const sides = [lower[column], upper[column]].map(side);
  return sides.every((text) => text === '0') ? '0' : `${sides.join(' / ')} (${digits(100 * share, 2)} %)`;
}

function side(effect: Effect | undefined): string {
  if (effect === undefined) return '–';
  if (typeof effect !== 'number') return effect.reason;
  const text = digits(Math.abs(effect));
  if (Number(text) === 0) return '0';
  return `${effect < 0 ? '−' : '+'}${text}`;
}

/** So many digits, not more than one of them behind the point. */
function digits(value: number, count = 3): string {
  return String(Number(Number(value.toPrecision(count)).toFixed(1)));
}
