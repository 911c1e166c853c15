/** Every reference case: computed, held against its source, and shown to fail when its source says something else. */
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { afterAll, describe, expect, it } from 'vitest';
import { loadGenerator, loadReferenceCases, REFERENCE_FOLDER } from '../../scripts/lib/reference-cases.ts';
import { referenceIndex } from '../../scripts/lib/reference-index.ts';
import type { Evaluation } from '../../src/proof/evaluator.ts';
import { allowedDeviation, judge, type QuantityVerdict } from '../../src/proof/judge.ts';
import type { Expected } from '../../src/proof/proof-case.ts';
import { evaluateCase } from '../../src/proof/registry.ts';

const cases = loadReferenceCases();
const evaluations = new Map<string, Evaluation>();
const worst = new Map<string, { share: number; line: string }>();

/** Each case is computed once and judged many times. */
function evaluationOf(folder: string): Evaluation {
  const known = evaluations.get(folder);
  if (known) return known;
  const stored = cases.find((candidate) => candidate.folder === folder);
  if (!stored) throw new Error(`no case ${folder}`);
  const evaluation = evaluateCase(stored.case);
  evaluations.set(folder, evaluation);
  return evaluation;
}

describe('reference cases', () => {
  it('cover plates, stacks, oil, gas, hydraulics and cycles', () => {
    expect(new Set(cases.map((stored) => stored.case.field))).toEqual(
      new Set(['plate', 'stack', 'fluid', 'gas', 'hydraulics', 'cycle']),
    );
  });

  describe.each(cases)('$folder', ({ folder, case: { id, field, kind }, expected, source, generator }) => {
    it('is stored under its own name, with a source', () => {
      expect(folder).toBe(`${field}/${id}`);
      expect(source.length).toBeGreaterThan(100);
      if (generator) expect(kind).toBe('own');
    });

    it('agrees with its source', () => {
      const verdict = judge(evaluationOf(folder), expected);
      note(field, folder, verdict.quantities);
      expect(verdict.failure).toBeUndefined();
      expect(verdict.quantities.filter(({ passed }) => !passed)).toEqual([]);
    });

    it('fails when any expected value is moved by five tolerances, up or down', () => {
      for (const name of Object.keys(expected.quantities)) {
        for (const direction of [5, -5]) {
          const failing = judge(evaluationOf(folder), moved(expected, name, direction)).quantities;
          expect(failing.filter(({ passed }) => !passed).map((verdict) => verdict.name)).toEqual([name]);
        }
      }
    });
  });

  it.each(cases.filter(({ generator }) => generator))(
    '$folder has the numbers that its generator derives',
    async ({ case: { input }, expected, generator }) => {
      const derived = (await loadGenerator(generator as string))(input);
      for (const [name, { value, tolerance }] of Object.entries(expected.quantities)) {
        // The generator must be a much better judge than the tolerance it supports.
        expect(Math.abs(derived[name] - value), name).toBeLessThan(
          allowedDeviation(expected.tolerances[tolerance], value) / 5,
        );
      }
    },
  );

  it('are listed in reference-cases/README.md as they stand: npm run reference:index writes it', () => {
    expect(readFileSync(join(REFERENCE_FOLDER, 'README.md'), 'utf8')).toBe(referenceIndex(cases));
  });

  afterAll(() => {
    const lines = [...worst].map(([group, { line }]) => `  ${group}: ${line}`);
    process.stdout.write(`\nWorst deviation of each group of reference cases\n${lines.join('\n')}\n`);
  });
});

function moved(expected: Expected, name: string, tolerances: number): Expected {
  const quantity = expected.quantities[name];
  const shift = tolerances * allowedDeviation(expected.tolerances[quantity.tolerance], quantity.value);
  return {
    ...expected,
    quantities: { ...expected.quantities, [name]: { ...quantity, value: quantity.value + shift } },
  };
}

/** Groups are the fields, with the continuum elements apart. */
function note(field: string, folder: string, verdicts: readonly QuantityVerdict[]): void {
  const group = folder.includes('/fem-') ? `${field}, continuum elements` : field;
  for (const { name, deviation, allowed, expected } of verdicts) {
    const share = deviation / allowed;
    if (share <= (worst.get(group)?.share ?? -1)) continue;
    const relative = ((100 * deviation) / Math.abs(expected)).toPrecision(2);
    worst.set(group, {
      share,
      line: `${relative} % (${Math.ceil(100 * share)} % of the tolerance): ${folder}, ${name}`,
    });
  }
}
