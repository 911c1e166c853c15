/** Telling a written list of shims from a number, when something is pasted on the table. */

/** Several entries, or one with a sign for "by" between two numbers. */
export const looksLikeList = (pasted: string): boolean =>
  /\d[^\n]*\n[^\n]*\d/.test(pasted.trim()) || /[\d.]\s*(mm|in|thou)?\s*[x×*]\s*[\d.(]/i.test(pasted);
