import { describe, expect, it } from 'vitest';
import { migrate, type Step } from '../../../src/model/migrate/chain.ts';
import { PROJECT_STEPS, STACK_STEPS } from '../../../src/model/migrate/steps.ts';
import { PROJECT_VERSION } from '../../../src/model/project-schema.ts';
import { STACK_VERSION } from '../../../src/model/stack-schema.ts';

const renamed: Step = ({ a, ...rest }) => ({ ...rest, b: a });
const doubled: Step = ({ b, ...rest }) => ({ ...rest, b: Number(b) * 2 });

describe('migrate', () => {
  it('goes one version at a time from where the document stands, and writes the version down', () => {
    const old = { version: 1, a: 3, other: 'kept' };
    expect(migrate(old, 1, [renamed, doubled])).toEqual({ version: 3, b: 6, other: 'kept' });
    expect(migrate({ version: 2, b: 3 }, 2, [renamed, doubled])).toEqual({ version: 3, b: 6 });
    expect(old).toEqual({ version: 1, a: 3, other: 'kept' });
  });

  it("leaves a document of today's version as it is", () => {
    const document = { version: 3, b: 1 };
    expect(migrate(document, 3, [renamed, doubled])).toBe(document);
  });

  it('has a step for every past version of both formats', () => {
    expect(PROJECT_STEPS).toHaveLength(PROJECT_VERSION - 1);
    expect(STACK_STEPS).toHaveLength(STACK_VERSION - 1);
  });
});
