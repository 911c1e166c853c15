/** What the proof shows, drawn from the reports of the run: totals, worst deviations, and the cases a person wants to see. */
import type { CaseKind, CaseReport, JudgedCase, ReportedQuantity, Tolerance } from '../../../workers/proof-client.ts';

export const fieldOf = ({ folder }: CaseReport): string => folder.split('/')[0];

export const isOutside = (report: CaseReport): boolean => report.status === 'unreadable' || !report.passed;

export const quantitiesOutside = (report: CaseReport): number =>
  report.status === 'judged' ? report.quantities.filter(({ passed }) => !passed).length : 0;

/** The quantity that uses most of its tolerance. */
export const worstOf = ({ quantities }: JudgedCase): ReportedQuantity =>
  quantities.reduce((worst, quantity) => (quantity.share > worst.share ? quantity : worst));

export interface Worst {
  readonly report: JudgedCase;
  readonly quantity: ReportedQuantity;
}

export interface Totals {
  readonly cases: number;
  readonly casesOutside: number;
  readonly unreadable: number;
  readonly quantities: number;
  readonly quantitiesOutside: number;
  /** Absent while no case could be judged. */
  readonly worst?: Worst;
}

export function totalsOf(reports: readonly CaseReport[]): Totals {
  const judged = reports.filter((report) => report.status === 'judged');
  const worsts = judged.map((report): Worst => ({ report, quantity: worstOf(report) }));
  return {
    cases: reports.length,
    casesOutside: reports.filter(isOutside).length,
    unreadable: reports.length - judged.length,
    quantities: judged.reduce((sum, { quantities }) => sum + quantities.length, 0),
    quantitiesOutside: judged.reduce((sum, report) => sum + quantitiesOutside(report), 0),
    ...(worsts.length > 0 && {
      worst: worsts.reduce((worst, next) => (next.quantity.share > worst.quantity.share ? next : worst)),
    }),
  };
}

export interface FieldGroup {
  readonly field: string;
  readonly reports: readonly CaseReport[];
}

/** By field, in the order in which the run reached them. */
export function groupByField(reports: readonly CaseReport[]): FieldGroup[] {
  const fields = [...new Set(reports.map(fieldOf))];
  return fields.map((field) => ({ field, reports: reports.filter((report) => fieldOf(report) === field) }));
}

export const ALL = 'all';

export interface Filter {
  readonly field: string;
  /** An unreadable case has no kind, and is shown under every one. */
  readonly kind: CaseKind | typeof ALL;
  readonly onlyOutside: boolean;
}

export const NO_FILTER: Filter = { field: ALL, kind: ALL, onlyOutside: false };

export const filterReports = (reports: readonly CaseReport[], { field, kind, onlyOutside }: Filter): CaseReport[] =>
  reports.filter(
    (report) =>
      (field === ALL || fieldOf(report) === field) &&
      (kind === ALL || report.status === 'unreadable' || report.kind === kind) &&
      (!onlyOutside || isOutside(report)),
  );

/** Kinds that occur, in the order given. */
export const kindsOf = (reports: readonly CaseReport[], order: readonly CaseKind[]): CaseKind[] =>
  order.filter((kind) => reports.some((report) => report.status === 'judged' && report.kind === kind));

export interface UsedTolerance {
  readonly name: string;
  readonly tolerance: Tolerance;
  readonly quantities: number;
}

/** Tolerances of a case as they stand in it, with how many quantities each is granted. */
export const tolerancesOf = ({ tolerances, quantities }: JudgedCase): UsedTolerance[] =>
  Object.entries(tolerances).map(([name, tolerance]) => ({
    name,
    tolerance,
    quantities: quantities.filter((quantity) => quantity.tolerance === name).length,
  }));

/** The distinct notes of a case, in order; a row refers to them by their place. */
export const notesOf = ({ quantities }: JudgedCase): string[] => [
  ...new Set(quantities.flatMap(({ note }) => (note === undefined ? [] : [note]))),
];

/** A source as plain text whose paragraphs wrap where the page wraps them; lists and tables keep their lines. */
export const reflow = (source: string): string => source.trim().replace(/(?<=\S)\n(?=[^\s\-*|#])/g, ' ');

/** `shim 1 clampStress` in words: `shim 1 clamp stress`; units such as `MPa` stay. */
export const readName = (name: string): string =>
  name.replace(/\b[a-z]{2,}(?:[A-Z][a-z]+)+\b/g, (word) =>
    word.replace(/[A-Z]/g, (letter) => ` ${letter.toLowerCase()}`),
  );
