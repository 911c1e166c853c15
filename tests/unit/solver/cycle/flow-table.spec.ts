import { describe, expect, it } from 'vitest';
import { CHECK_LAG, laggedCheck } from '../../../../src/solver/cycle/check-lag.ts';
import { bothWays, tabulateFlow } from '../../../../src/solver/cycle/flow-table.ts';
import { pchipTable } from '../../../../src/solver/numeric/hermite-table.ts';
import { bothFlow, lossFlow } from '../../../helpers/cycle-models.ts';

const BLEED = { a: 1e9, b: 2e14, cracks_Pa: 0 };
const VALVE = { a: 1e9, b: 2e12, cracks_Pa: 0.3e6 };
const flow = bothFlow(BLEED, VALVE);

describe('a flow table', () => {
  const table = tabulateFlow(flow, 2e7);
  const curve = pchipTable(table.drop_Pa, table.flow_m3_s);

  it('comes to its law within two parts in ten thousand, and five in a thousand at the crack itself', () => {
    const drops = [400, 5e3, 1e5, 2.9e5, 3e5, 3.01e5, 3.2e5, 1e6, 7e6, 2e7];
    for (const drop of drops) expect(Math.abs(curve.at(drop) / flow(drop) - 1)).toBeLessThan(5e-3);
    const smooth = drops.filter((drop) => Math.abs(drop - 3e5) > 2e4);
    for (const drop of smooth) expect(Math.abs(curve.at(drop) / flow(drop) - 1)).toBeLessThan(3e-4);
  });

  it('rises from nothing to its largest drop, and ends there', () => {
    expect([table.drop_Pa[0], table.flow_m3_s[0]]).toEqual([0, 0]);
    expect(table.drop_Pa.at(-1)).toBe(2e7);
    for (let i = 1; i < table.drop_Pa.length; i++) {
      expect(table.drop_Pa[i]).toBeGreaterThan(table.drop_Pa[i - 1]);
      expect(table.flow_m3_s[i]).toBeGreaterThanOrEqual(table.flow_m3_s[i - 1]);
    }
    expect(curve.at(2.001e7)).toBeNaN();
  });

  it('takes more points for less error, and few for a straight line', () => {
    expect(tabulateFlow(flow, 2e7, 1e-6).drop_Pa.length).toBeGreaterThan(table.drop_Pa.length);
    expect(table.drop_Pa.length).toBeLessThan(200);
    expect(tabulateFlow((drop) => 1e-10 * drop, 2e7).drop_Pa.length).toBeLessThan(40);
  });

  it('passes on what the valve throws', () => {
    expect(() =>
      tabulateFlow(() => {
        throw new RangeError('no such valve');
      }, 1),
    ).toThrow(RangeError);
  });

  it('joins two directions: outwards positive, inwards negative, nothing at rest', () => {
    const other = tabulateFlow((drop) => 1e-10 * drop, 1e7);
    const both = bothWays(table, other);
    expect(both.at(0)).toBe(0);
    expect(both.at(1e6) / flow(1e6)).toBeCloseTo(1, 3);
    expect(both.at(-1e6)).toBeCloseTo(-1e-4, 12);
    expect([both.first, both.last]).toEqual([-1e7, 2e7]);
  });
});

describe('a check that lags', () => {
  const law = lossFlow({ a: 1e8, b: 1e12, cracks_Pa: 1e4 });
  const table = tabulateFlow(law, 1e7);
  const check = laggedCheck(table);

  it('gives back its static flow once it has followed', () => {
    for (const drop of [5e3, 1.5e4, 1e5, 1e6, 9e6]) {
      const flow = (check?.target(drop) ?? 0) * (check?.open(drop) ?? 0);
      expect(Math.abs(flow - law(drop))).toBeLessThan(2e-3 * law(drop) + 1e-7);
    }
  });

  it('wants to be open by no more than wholly, and shut against its drop', () => {
    for (const drop of table.drop_Pa) expect(check?.target(drop)).toBeLessThanOrEqual(1 + 1e-12);
    expect([check?.target(0), check?.target(-1e5)]).toEqual([0, 0]);
    expect(check?.target(2e7)).toBeNaN();
  });

  it('lets oil back while it is open, as a jet: twice for four times the drop', () => {
    expect(check?.open(-1e6)).toBe(-(check?.open(1e6) ?? Number.NaN));
    expect((check?.open(4e6) ?? 0) / (check?.open(1e6) ?? 1)).toBeCloseTo(2, 2);
  });

  it('is not drawn finer than drops that anyone measures, however wide the valve', () => {
    const wide = tabulateFlow((drop) => 1e-3 * Math.sqrt(drop), 60e6);
    expect(wide.drop_Pa.filter((drop) => drop > 0 && drop < 1)).toEqual([]);
    const curve = bothWays(wide, wide);
    for (const drop of [200, 1e3, 1e5]) expect(curve.at(drop) / (1e-3 * Math.sqrt(drop))).toBeCloseTo(1, 2);
  });

  it('is none when nothing passes', () => {
    expect(laggedCheck(tabulateFlow(() => 0, 1e6))).toBeUndefined();
  });

  it('has a lag with a range around it and a source', () => {
    expect(CHECK_LAG.low).toBeLessThanOrEqual(CHECK_LAG.value);
    expect(CHECK_LAG.high).toBeGreaterThan(CHECK_LAG.value);
    // By hand: sqrt(2 * 1e-3 m * 2e-3 kg / 5 N).
    expect(Math.sqrt((2 * 1e-3 * 2e-3) / 5)).toBeCloseTo(0.9e-3, 4);
    expect(CHECK_LAG.source).toContain('common practice');
  });
});
