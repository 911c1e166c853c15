/**
 * A case from its three texts to what a person reads: who says what, what came out, and whether that is near enough. A
 * case that cannot be read or whose evaluator throws is reported as such; nothing a case does ends the run of the others.
 */
import type { Evaluation } from './evaluator.ts';
import { failed } from './evaluator.ts';
import { judge, type QuantityVerdict } from './judge.ts';
import { type Expected, type ProofCase, parseCase, parseExpected, type Tolerance } from './proof-case.ts';
import { evaluateCase } from './registry.ts';

/** The files of one folder as they are stored; what is missing is absent. */
export interface CaseTexts {
  /** `<field>/<id>`, as the folders are named. */
  readonly folder: string;
  readonly case?: string;
  readonly expected?: string;
  readonly source?: string;
}

export interface ReportedQuantity extends QuantityVerdict {
  /** Name of its tolerance in the case. */
  readonly tolerance: string;
  /** Deviation as a share of what is allowed, above 1 outside; infinite when nothing usable was computed. */
  readonly share: number;
  readonly note?: string;
}

export interface JudgedCase extends Pick<ProofCase, 'title' | 'kind'> {
  readonly status: 'judged';
  readonly folder: string;
  readonly source: string;
  readonly tolerances: Readonly<Record<string, Tolerance>>;
  readonly passed: boolean;
  /** Why nothing was computed; every quantity then counts as outside. */
  readonly failure?: string;
  readonly quantities: readonly ReportedQuantity[];
}

export interface UnreadableCase {
  readonly status: 'unreadable';
  readonly folder: string;
  readonly reason: string;
}

export type CaseReport = JudgedCase | UnreadableCase;

type Evaluate = (stored: ProofCase) => Evaluation;

/** Reads, computes and judges one case. @param evaluate what computes it; a test may plant another. */
export function reportOn(texts: CaseTexts, evaluate: Evaluate = evaluateCase): CaseReport {
  const { folder } = texts;
  let read: ReadCase;
  try {
    read = readTexts(texts);
  } catch (error) {
    return { status: 'unreadable', folder, reason: messageOf(error) };
  }
  const { stored, expected, source } = read;
  const { passed, failure, quantities } = judge(evaluateSafely(stored, evaluate), expected);
  return {
    status: 'judged',
    folder,
    title: stored.title,
    kind: stored.kind,
    source,
    tolerances: expected.tolerances,
    passed: passed && failure === undefined,
    ...(failure !== undefined && { failure }),
    quantities: quantities.map((verdict) => {
      const { tolerance, note } = expected.quantities[verdict.name];
      return { ...verdict, tolerance, share: shareOf(verdict), ...(note !== undefined && { note }) };
    }),
  };
}

function shareOf({ deviation, allowed }: QuantityVerdict): number {
  return Number.isFinite(deviation) ? deviation / allowed : Number.POSITIVE_INFINITY;
}

interface ReadCase {
  readonly stored: ProofCase;
  readonly expected: Expected;
  readonly source: string;
}

function readTexts({ folder, case: caseText, expected: expectedText, source }: CaseTexts): ReadCase {
  if (caseText === undefined) throw new Error('case.json is missing');
  if (expectedText === undefined) throw new Error('expected.json is missing');
  if (source === undefined) throw new Error('SOURCE.md is missing');
  const stored = parseCase(JSON.parse(caseText));
  if (folder !== `${stored.field}/${stored.id}`) {
    throw new Error(`the folder is ${folder}, the case says ${stored.field}/${stored.id}`);
  }
  return { stored, expected: parseExpected(JSON.parse(expectedText)), source };
}

function evaluateSafely(stored: ProofCase, evaluate: Evaluate): Evaluation {
  try {
    return evaluate(stored);
  } catch (error) {
    return failed(messageOf(error));
  }
}

const messageOf = (error: unknown): string => (error instanceof Error ? error.message : String(error));
