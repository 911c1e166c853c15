/** The command line of `npm run reference:fem`. */
import { parseArgs } from 'node:util';
import type { AxisymmetricTheory } from '../../src/solver/types.ts';

export const USAGE = `Makes reference cases by axisymmetric continuum elements with contact (needs CalculiX, command "ccx").

  npm run reference:fem -- STACK.json --id NAME --title TEXT --pressures-MPa 0.1,0.2,0.4
  npm run reference:fem -- --check reference-cases/stack/NAME

The first form adds reference-cases/stack/NAME-small and NAME-large, the second runs a case again and compares.
  --theory small-deflection|large-deflection   only one of the two
  --element-size-mm 0.2                        longest element along the radius
  --penalty-MPa-mm 3e6                         stiffness of the contacts`;

export const THEORIES = ['small-deflection', 'large-deflection'] as const satisfies readonly AxisymmetricTheory[];

interface Numbers {
  readonly elementSize_mm: number;
  readonly penalty_MPa_mm: number;
}

export interface MakeRequest extends Numbers {
  readonly kind: 'make';
  readonly file: string;
  readonly id: string;
  readonly title: string;
  readonly pressures_MPa: readonly number[];
  readonly theories: readonly AxisymmetricTheory[];
}

export interface CheckRequest extends Numbers {
  readonly kind: 'check';
  readonly folder: string;
}

const OPTIONS = {
  check: { type: 'string' },
  id: { type: 'string' },
  title: { type: 'string' },
  'pressures-MPa': { type: 'string' },
  theory: { type: 'string' },
  'element-size-mm': { type: 'string' },
  'penalty-MPa-mm': { type: 'string' },
} as const;

export class UsageError extends Error {}

/** @throws UsageError saying which word is missing or wrong */
export function readOptions(words: readonly string[]): MakeRequest | CheckRequest {
  const { values, positionals } = parsed(words);
  const numbers: Numbers = {
    elementSize_mm: positive('element-size-mm', values['element-size-mm'] ?? '0.2'),
    penalty_MPa_mm: positive('penalty-MPa-mm', values['penalty-MPa-mm'] ?? '3e6'),
  };
  if (values.check !== undefined) return { kind: 'check', folder: values.check, ...numbers };
  const [file] = positionals;
  if (file === undefined || positionals.length > 1) throw new UsageError('one stack file is wanted');
  const id = needed('id', values.id);
  if (!/^[a-z0-9-]+$/.test(id)) throw new UsageError(`--id: got "${id}", wanted small letters, digits and hyphens`);
  const pressures = needed('pressures-MPa', values['pressures-MPa']).split(',');
  return {
    kind: 'make',
    file,
    id,
    title: needed('title', values.title),
    pressures_MPa: pressures.map((text) => positive('pressures-MPa', text)),
    theories: values.theory === undefined ? THEORIES : [theoryOf(values.theory)],
    ...numbers,
  };
}

function parsed(words: readonly string[]) {
  try {
    return parseArgs({ args: [...words], options: OPTIONS, allowPositionals: true });
  } catch (error) {
    throw new UsageError((error as Error).message);
  }
}

function needed(name: string, value: string | undefined): string {
  if (value) return value;
  throw new UsageError(`--${name} is missing`);
}

function positive(name: string, text: string): number {
  const value = Number(text);
  if (text.trim() !== '' && Number.isFinite(value) && value > 0) return value;
  throw new UsageError(`--${name}: got "${text}", wanted a number above 0`);
}

function theoryOf(text: string): AxisymmetricTheory {
  const theory = THEORIES.find((known) => known === text);
  if (theory) return theory;
  throw new UsageError(`--theory: got "${text}", wanted ${THEORIES.join(' or ')}`);
}
