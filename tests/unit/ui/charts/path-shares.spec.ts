import { describe, expect, it } from 'vitest';
import { sharesOf } from '../../../../src/ui/charts/path-shares.ts';

describe('shares of the paths of a valve', () => {
  it('count oil, whichever way it goes', () => {
    const shares = sharesOf({ ports_m3_s: -3, bleed_m3_s: -1, leakage_m3_s: 4 });
    expect(shares).toEqual({ ports: 0.375, bleed: 0.125, leakage: 0.5, poppet: 0, check: 0 });
  });

  it('count the paths of a base valve too', () => {
    const shares = sharesOf({ ports_m3_s: 0, bleed_m3_s: 1, leakage_m3_s: 0, check_m3_s: 3 });
    expect([shares.bleed, shares.check]).toEqual([0.25, 0.75]);
  });

  it('are none where nothing moves, and none of a valve that is not there', () => {
    expect(sharesOf({ ports_m3_s: 0, bleed_m3_s: 0, leakage_m3_s: 0 })).toEqual({});
    expect(sharesOf(undefined)).toEqual({});
  });
});
