/** Undo and redo as plain data: whole documents, newest past last; unchanged parts are shared between them. */

/** How many steps can be taken back. */
export const HISTORY_LIMIT = 300;

export interface Step<T> {
  readonly document: T;
  /** What the edit after this document did, for the tooltip of undo. */
  readonly label: string;
}

export interface History<T> {
  readonly past: readonly Step<T>[];
  readonly present: T;
  readonly future: readonly Step<T>[];
  /** Edits with the same key, one after the other, are one step: typing a number is one edit. */
  readonly mergeKey?: string;
}

export const startHistory = <T>(present: T): History<T> => ({ past: [], present, future: [] });

export function record<T>(history: History<T>, next: T, label: string, mergeKey?: string): History<T> {
  if (next === history.present) return history;
  if (mergeKey !== undefined && mergeKey === history.mergeKey) return { ...history, present: next, future: [] };
  const past = [...history.past, { document: history.present, label }].slice(-HISTORY_LIMIT);
  return { past, present: next, future: [], mergeKey };
}

export function undo<T>(history: History<T>): History<T> {
  const last = history.past.at(-1);
  if (!last) return history;
  const future = [{ document: history.present, label: last.label }, ...history.future];
  return { past: history.past.slice(0, -1), present: last.document, future };
}

export function redo<T>(history: History<T>): History<T> {
  const [next, ...future] = history.future;
  if (!next) return history;
  return {
    past: [...history.past, { document: history.present, label: next.label }],
    present: next.document,
    future,
  };
}

/** The same history with every document changed in the same way. */
export function mapDocuments<T>(history: History<T>, change: (document: T) => T): History<T> {
  const each = (step: Step<T>): Step<T> => ({ ...step, document: change(step.document) });
  return {
    ...history,
    past: history.past.map(each),
    present: change(history.present),
    future: history.future.map(each),
  };
}
