import { describe, expect, it } from 'vitest';
import { stepsOf } from '../../../../src/ui/record/steps.ts';

describe('the steps', () => {
  it('follow the layout: a fork is drained through its cap after its spring, a monotube has no base valve', () => {
    const order = stepsOf({ layout: 'cartridge' });
    expect(order.slice(2, 6)).toEqual(['gas', 'head', 'springs', 'oil']);
    expect(order).toContain('baseStack');
    const monotube = stepsOf({ layout: 'monotube' });
    expect(monotube.slice(2, 6)).toEqual(['gas', 'springs', 'head', 'oil']);
    expect(monotube).not.toContain('baseStack');
    expect(monotube).not.toContain('refillCheck');
  });
});
