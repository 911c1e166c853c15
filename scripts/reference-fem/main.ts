/** `npm run reference:fem`: makes reference cases with an independent finite-element program, or checks one. */
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import type { StackFile } from '../../src/model/project.ts';
import { validateStackFile } from '../../src/model/validate.ts';
import { parseExpected } from '../../src/proof/proof-case.ts';
import type { AxisymmetricTheory } from '../../src/solver/types.ts';
import { formatFault } from '../../src/units/fault.ts';
import { REFERENCE_FOLDER } from '../lib/reference-cases.ts';
import { addCase } from './add-case.ts';
import { caseFiles } from './case-files.ts';
import { worstDeviations } from './check-case.ts';
import { type CheckRequest, type MakeRequest, readOptions, USAGE, UsageError } from './options.ts';
import { namedQuantities } from './quantities.ts';
import { readResults } from './read-results.ts';
import { runCcx } from './run-ccx.ts';
import { type ModelOptions, writeModel } from './write-model.ts';

const readJson = (path: string): unknown => JSON.parse(readFileSync(path, 'utf8'));

function checkedStack(document: unknown): StackFile {
  const checked = validateStackFile(document);
  if (checked.ok) return checked.document;
  throw new Error(checked.faults.map(formatFault).join('\n'));
}

function solve(stack: StackFile, options: ModelOptions) {
  const model = writeModel(stack, options);
  console.error(`${stack.name}, ${options.theory}: running CalculiX, which may take some minutes`);
  const { printFile, version } = runCcx(model.deck);
  return { model, version, results: readResults(printFile, model) };
}

function make({ file, id, title, theories, ...rest }: MakeRequest): void {
  const stack = checkedStack(readJson(file));
  for (const theory of theories) {
    const options = { ...rest, theory };
    const name = `${id}-${theory === 'small-deflection' ? 'small' : 'large'}`;
    const files = caseFiles({ id: name, title, stack, options, ...solve(stack, options) });
    console.error(`added ${addCase(REFERENCE_FOLDER, name, files)}; now run: npm run reference:index`);
  }
}

function check({ folder, ...numbers }: CheckRequest): void {
  const { input } = readJson(join(folder, 'case.json')) as {
    input: { theory: AxisymmetricTheory; pressures_MPa: number[]; stack: unknown };
  };
  const expected = parseExpected(readJson(join(folder, 'expected.json')));
  const stack = checkedStack(input.stack);
  const { results } = solve(stack, { ...numbers, theory: input.theory, pressures_MPa: input.pressures_MPa });
  const has = { seat: stack.seat !== undefined, plate: stack.backingPlate !== undefined };
  for (const { kind, name, share, allowed } of worstDeviations(namedQuantities(results, has), expected)) {
    const percent = (value: number): string => `${(100 * value).toFixed(2)} %`;
    console.log(`${kind}: worst ${percent(share)} of ${percent(allowed)} allowed, ${name}`);
    if (share > allowed) process.exitCode = 1;
  }
}

try {
  const request = readOptions(process.argv.slice(2));
  if (request.kind === 'check') check(request);
  else make(request);
} catch (error) {
  const misuse = error instanceof UsageError;
  console.error(misuse ? `${error.message}\n\n${USAGE}` : (error as Error).message);
  process.exitCode = misuse ? 2 : 1;
}
