/** Turns what zod found into the project's own faults. */
import type { InputFault } from '../units/fault.ts';
import { child, describe, type Place, unitOf } from './place.ts';
import type { z } from './zod.ts';

function codeOf(issue: z.core.$ZodIssue, got: unknown): string {
  if (got === undefined) return 'document.missing';
  if (typeof got === 'number') return Number.isFinite(got) ? rangeCode(issue) : 'document.not-finite';
  if (issue.code === 'invalid_value' || issue.code === 'invalid_union') return 'document.choice';
  return issue.code === 'invalid_type' ? 'document.type' : 'document.range';
}

function rangeCode(issue: z.core.$ZodIssue): string {
  if (issue.code === 'invalid_value') return 'document.choice';
  if (issue.code !== 'invalid_type') return 'document.range';
  return issue.expected === 'int' ? 'document.whole-number' : 'document.type';
}

function faultOf(issue: z.core.$ZodIssue, root: Place): InputFault {
  const { value, path } = child(root, ...(issue.path as (string | number)[]));
  const unit = unitOf(path);
  const known = typeof value === 'number' && unit !== undefined;
  return {
    code: codeOf(issue, value),
    path: path === '' ? 'document' : path,
    got: describe(value),
    wanted: issue.message,
    ...(known && { unit }),
  };
}

/** One fault a field: a size of -1 that is also no whole number is told once. */
export function shapeFaults(issues: readonly z.core.$ZodIssue[], document: unknown): InputFault[] {
  const faults = new Map<string, InputFault>();
  for (const issue of issues) {
    const fault = faultOf(issue, { value: document, path: '' });
    if (!faults.has(fault.path)) faults.set(fault.path, fault);
  }
  return [...faults.values()];
}
