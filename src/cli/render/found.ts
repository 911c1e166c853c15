/** The ranked list of a search: a table for people, or JSON. */
import { formatShimList } from '../../model/format-shim-list.ts';
import type { ShimRow, ValvePlace } from '../../model/project.ts';
import { rankFound } from '../../model/rank-found.ts';
import type { FoundStacks, StackPlace } from '../../solver/index.ts';
import type { Form } from '../command.ts';
import { bar } from '../quantities.ts';
import type { SearchLine } from '../search-lines.ts';
import { fold } from './fold.ts';
import { json } from './json.ts';
import { type Heading, textTable } from './text-table.ts';

const listed = (rows: readonly ShimRow[]): string => formatShimList(rows).replaceAll('\n', ', ');

/** @param count of answers */
export function renderFound(lines: readonly SearchLine[], count: number, { values, width }: Form): string {
  const best = rankFound(lines, count);
  const [{ study, starts }] = lines;
  const ran = [...new Set(lines.map(({ start }) => start))].sort((a, b) => a - b);
  if (values.has('json')) return json({ format: 'shimwright/search', version: 1, study, starts, ran, answers: best });
  const header: Heading[] = [
    'no.',
    ['RMS', 'N'],
    ['RMS', '%'],
    ['worst', 'N'],
    ['at', 'm/s'],
    'shims changed',
    'life reserve',
    'yield reserve',
    ['gas margin', 'bar'],
  ];
  const table = textTable(header, best.map(cells), { width });
  return `${table}\n${best.map((found, i) => stacks(found, i, width)).join('')}`;
}

const cells = ({ judgement, changes }: FoundStacks, i: number) => [
  i + 1,
  judgement.rms_N,
  judgement.rmsShare * 100,
  judgement.worst.difference_N,
  judgement.worst.shaftSpeed_m_s,
  changes,
  judgement.fatigueReserve ?? null,
  judgement.yieldReserve ?? null,
  bar(judgement.gasMargin_Pa),
];

const STACK_OF: Readonly<Record<ValvePlace, StackPlace>> = {
  pistonCompression: 'compression',
  pistonRebound: 'rebound',
  baseCompression: 'base',
};

/** One paragraph a stack, within the screen. */
const stacks = ({ shims, judgement: { theories } }: FoundStacks, i: number, width: number): string =>
  Object.entries(shims)
    .map(([place, rows]) => {
      const stack = STACK_OF[place as ValvePlace];
      const theory = theories?.[stack];
      const words = `${stack}: ${listed(rows)}${theory ? `; by ${theory}` : ''}`;
      const number = `${i + 1}  `;
      return `${number}${fold(words, width - number.length).join(`\n${' '.repeat(number.length)}`)}\n`;
    })
    .join('');
