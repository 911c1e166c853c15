/** What goes over the wire between the page and the worker that runs the reference cases. Types only. */
import type { CaseReport } from '../src/proof/report.ts';

/** Called once a case, in the order of the folders; `total` is how many there are. The worker waits for its return. */
export type OnReport = (report: CaseReport, total: number) => void;

/** What the worker exposes. */
export interface ProofApi {
  /** First call of a page; `lifeline` names a lock that the worker holds for as long as it lives. */
  hello(lifeline: string): Promise<void>;
  /** Runs every case once and says how many there were. */
  run(onReport: OnReport): Promise<number>;
}

export type { CaseKind, Tolerance } from '../src/proof/proof-case.ts';
export type { CaseReport, JudgedCase, ReportedQuantity, UnreadableCase } from '../src/proof/report.ts';
