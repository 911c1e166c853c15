import { describe, expect, it } from 'vitest';
import { parseCase, parseExpected } from '../../../src/proof/proof-case.ts';
import { evaluateCase } from '../../../src/proof/registry.ts';
import { InputError } from '../../../src/units/fault.ts';

const good = { id: 'a-case', field: 'plate', title: 'A case', kind: 'exact', evaluator: 'passage-friction', input: {} };
const reason = 'a reason that says something';

function expected(tolerance: object, value: number, named = 'digits') {
  return { tolerances: { digits: tolerance }, quantities: { lift: { value, unit: 'mm', tolerance: named } } };
}

function faultOf(run: () => unknown) {
  try {
    run();
  } catch (error) {
    if (error instanceof InputError) return error.fault;
    throw error;
  }
  throw new Error('nothing was refused');
}

describe('parseCase', () => {
  it('takes a complete case', () => expect(parseCase(good)).toEqual(good));

  it.each([
    ['id', { ...good, id: 'A case' }],
    ['field', { ...good, field: 'weather' }],
    ['kind', { ...good, kind: 'guess' }],
    ['title', { ...good, title: '' }],
    ['document', { ...good, extra: 1 }],
  ])('refuses a wrong %s', (path, document) => {
    expect(faultOf(() => parseCase(document))).toMatchObject({ code: 'proof.case.shape', path });
  });
});

describe('parseExpected', () => {
  it('takes a relative and an absolute tolerance', () => {
    expect(() => parseExpected(expected({ relative: 0.01, reason }, 2))).not.toThrow();
    expect(() => parseExpected(expected({ absolute: 0.01, reason }, 0))).not.toThrow();
  });

  it.each([
    ['no reason', expected({ relative: 0.01 }, 2)],
    ['an empty reason', expected({ relative: 0.01, reason: '' }, 2)],
    ['no width', expected({ relative: 0, reason }, 2)],
    ['a width that five of them would turn into another number', expected({ relative: 0.2, reason }, 2)],
    ['both kinds', expected({ relative: 0.01, absolute: 1, reason }, 2)],
    ['no quantity', { tolerances: { digits: { relative: 0.01, reason } }, quantities: {} }],
  ])('refuses a tolerance with %s', (_, document) => {
    expect(faultOf(() => parseExpected(document)).code).toBe('proof.expected.shape');
  });

  it('refuses a tolerance that is not there, and a relative one of nothing', () => {
    const unnamed = expected({ relative: 0.01, reason }, 2, 'other');
    const ofNothing = expected({ relative: 0.01, reason }, 0);
    for (const document of [unnamed, ofNothing]) {
      expect(faultOf(() => parseExpected(document))).toMatchObject({
        code: 'proof.expected.tolerance',
        path: 'quantities.lift',
      });
    }
  });
});

describe('evaluateCase', () => {
  it('refuses an evaluator that it does not know, a name of every object too', () => {
    for (const evaluator of ['crystal-ball', 'toString']) {
      const fault = faultOf(() => evaluateCase({ evaluator, input: {} }));
      expect(fault).toMatchObject({ code: 'proof.case.evaluator', path: 'evaluator', got: evaluator });
    }
  });

  it('names the field of an input that it cannot read', () => {
    const fault = faultOf(() => evaluateCase({ evaluator: 'passage-friction', input: { reynoldsNumbers: ['fast'] } }));
    expect(fault).toMatchObject({ code: 'proof.case.input', path: 'reynoldsNumbers.0' });
  });

  it('names the place of a fault inside a stack', () => {
    const input = { theory: 'small-deflection', pressures_MPa: [1], stack: { format: 'shimwright/stack', version: 1 } };
    expect(faultOf(() => evaluateCase({ evaluator: 'stack-lift', input })).path).toMatch(/^input\.stack\./);
  });

  it('hands on the failure of a solve, with the row that failed', () => {
    const rows = [{ label: 'floating', innerRadius: 0.5 }];
    const plate = { poissonsRatio: 0.3, elements: 8, inner: 'free', outer: 'free', load: 'pressure', rows };
    const evaluation = evaluateCase({ evaluator: 'small-deflection-plate', input: plate });
    expect(evaluation).toMatchObject({ status: 'failed', reason: expect.stringMatching(/^floating: /) });
  });
});
