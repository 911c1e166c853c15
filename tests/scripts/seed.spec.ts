import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { seedFrom } from '../helpers/seed.ts';

describe('the seed of the random cases', () => {
  it('is the one of this run', () => expect(fc.readConfigureGlobal().seed).toBe(seedFrom(process.env)));
  it('comes from FC_SEED', () => expect(seedFrom({ CI: '1', FC_SEED: '42' })).toBe(42));
  it('is fixed where nobody names one', () => expect(seedFrom({})).toBe(seedFrom({ FC_SEED: '' })));
  it('must be named in CI', () => expect(() => seedFrom({ CI: '1' })).toThrow(/FC_SEED is not set/));
  it('must be a number', () => expect(() => seedFrom({ FC_SEED: 'luck' })).toThrow(/got luck, wanted a whole number/));
});
