/** What the build was computed to do, beside room for what is measured. */
import type { Family } from '../units/format.ts';
import { curveDrawing } from './curve-drawing.ts';
import { forceAt, type SheetCurve, type SheetInput, type SheetTheories, TABLE_SPEEDS_M_S } from './input.ts';
import { el, type SheetNode } from './node.ts';
import { type Cell, facts, hint, section, table } from './parts.ts';
import { bare, both, unitName } from './quantities.ts';
import { sheetWords } from './text/en.ts';

const words = sheetWords.curve;

const PLACES = ['compression', 'rebound', 'base'] as const;

/** One name where all stacks have the same, else each with its stack. */
function theoriesInWords(theories: SheetTheories): string {
  const used = PLACES.flatMap((place) => {
    const theory = theories[place];
    return theory ? [{ place, name: words.theories[theory] }] : [];
  });
  const [{ name: first }] = used;
  if (used.every(({ name }) => name === first)) return first;
  return used.map(({ place, name }) => `${name} (${words.stacks[place]})`).join(', ');
}

const theoryOf = (curve: SheetCurve, what: string): SheetNode[] =>
  curve.status === 'solved' ? [hint(words.by(what, theoriesInWords(curve.theories)))] : [];

function troubleOf(curve: SheetCurve, what: string): SheetNode[] {
  const fault = (said: string): SheetNode => el('p', { class: 'fault' }, said);
  if (curve.status === 'solving') return [el('p', { class: 'hint', role: 'status' }, words.solving)];
  if (curve.status === 'failed') return [fault(words.failed(what, curve.reason))];
  return curve.reasons.length > 0 ? [fault(words.partly(what, curve.reasons.join('; ')))] : [];
}

function forceCell(curve: SheetCurve, speed_m_s: number, family: Family): string {
  if (curve.status === 'solving') return '…';
  const force_N = forceAt(curve, speed_m_s);
  return force_N === undefined ? words.unsolved : bare('force', Math.abs(force_N), family);
}

const WAYS = [
  { sign: 1, name: words.compression },
  { sign: -1, name: words.rebound },
] as const;

/** Pushes the shaft where its sign says: the gas can hold it out against a slow rebound. */
function signed(curve: SheetCurve, speed_m_s: number, family: Family): string {
  const force_N = forceAt(curve, speed_m_s);
  const cell = forceCell(curve, speed_m_s, family);
  return force_N !== undefined && force_N * speed_m_s < 0 ? `(+) ${cell}` : cell;
}

/** One row a speed: computed of each, and a box to write what was measured into, both ways. */
export function forceTable({ curves, build, baseline, family }: SheetInput): SheetNode {
  const unit = unitName('force', family);
  const told = build.id === baseline.id ? [curves.build] : [curves.build, curves.baseline];
  const names = [words.build, words.baseline];
  const columns = [
    { head: unitName('speed', family), isNumber: true },
    ...WAYS.flatMap(({ name }) => [
      ...told.map((_, i) => ({ head: `${name}, ${names[i]}, ${unit}`, isNumber: true })),
      { head: `${name}, ${words.measured}`, isNumber: false },
    ]),
  ];
  const rows = TABLE_SPEEDS_M_S.map((speed): Cell[] => [
    bare('speed', speed, family),
    ...WAYS.flatMap(({ sign }): Cell[] => [
      ...told.map((curve) => signed(curve, sign * speed, family)),
      { write: true },
    ]),
  ]);
  return el('div', { class: 'scroll', tabindex: 0, role: 'group', 'aria-label': words.title }, table(columns, rows));
}

export function curveSection(input: SheetInput): SheetNode {
  const { project, build, baseline, curves, family } = input;
  const isBaseline = build.id === baseline.id;
  const label = isBaseline ? words.alone(build.name) : words.label(build.name, baseline.name);
  const picture = curveDrawing(curves.build, isBaseline ? undefined : curves.baseline, label, family);
  const beside = el(
    'div',
    {},
    facts(words.measuredFields.map((field) => ({ label: field }))),
    hint(words.at(both('temperature', project.fluid.temperature_degC, family))),
    ...theoryOf(curves.build, words.build),
    ...(isBaseline ? [] : theoryOf(curves.baseline, words.baseline)),
    hint(sheetWords.estimate),
    ...troubleOf(curves.build, words.build),
    ...(isBaseline ? [] : troubleOf(curves.baseline, words.baseline)),
  );
  return section(
    'curve',
    words.title,
    '',
    el('div', { class: 'pair' }, ...(picture ? [picture] : []), beside),
    forceTable(input),
  );
}
