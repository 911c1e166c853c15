/** The results as a person would attach them to a message: one line a quantity for a spreadsheet, or the whole as JSON. */
import { version } from '../../../package.json';
import type { CaseReport, JudgedCase, ReportedQuantity } from '../../../workers/proof-client.ts';
import { fieldOf } from './proof-model.ts';

/** Where and when the cases were run. */
export interface ProofOccasion {
  /** ISO 8601. */
  readonly finished: string;
  readonly browser: string;
  /** Cases there are; more than the reports when the run was stopped or broke off. */
  readonly cases: number;
}

const HEADER = [
  'case',
  'field',
  'kind',
  'title',
  'quantity',
  'unit',
  'expected',
  'computed',
  'deviation',
  'kind of tolerance',
  'tolerance',
  'deviation allowed',
  'share of tolerance',
  'result',
  'reason of tolerance',
  'note',
] as const;

type Cell = string | number | undefined;

/** Comma-separated values after RFC 4180. A number that is none is an empty field. */
export const proofCsv = (reports: readonly CaseReport[]): string =>
  [HEADER, ...reports.flatMap(rowsOf)].map((row) => `${row.map(written).join(',')}\r\n`).join('');

function written(cell: Cell): string {
  if (cell === undefined || (typeof cell === 'number' && !Number.isFinite(cell))) return '';
  const text = String(cell);
  return /[",\r\n]/.test(text) ? `"${text.replaceAll('"', '""')}"` : text;
}

function rowsOf(report: CaseReport): Cell[][] {
  if (report.status === 'judged') return report.quantities.map((quantity) => rowOf(report, quantity));
  const row: Cell[] = HEADER.map(() => undefined);
  row[0] = report.folder;
  row[1] = fieldOf(report);
  row[HEADER.indexOf('result')] = 'unreadable';
  row[HEADER.indexOf('note')] = report.reason;
  return [row];
}

function rowOf(report: JudgedCase, quantity: ReportedQuantity): Cell[] {
  const { name, unit, expected, computed, deviation, allowed, share, passed, note } = quantity;
  const tolerance = report.tolerances[quantity.tolerance];
  const isAbsolute = 'absolute' in tolerance;
  return [
    report.folder,
    fieldOf(report),
    report.kind,
    report.title,
    name,
    unit,
    expected,
    computed,
    deviation,
    isAbsolute ? 'absolute' : 'relative',
    isAbsolute ? tolerance.absolute : tolerance.relative,
    allowed,
    share,
    passed ? 'within' : 'outside',
    tolerance.reason,
    report.failure ?? note,
  ];
}

/** Numbers that are none are null. */
export const proofJson = (reports: readonly CaseReport[], { finished, browser, cases }: ProofOccasion): string =>
  `${JSON.stringify(
    {
      format: 'shimwright/proof',
      version: 1,
      program: version,
      finished,
      browser,
      casesInAll: cases,
      casesRun: reports.length,
      results: reports,
    },
    null,
    2,
  )}\n`;
