import { describe, expect, it } from 'vitest';
import type { Build } from '../../../../src/model/project.ts';
import { sweepRows } from '../../../../src/ui/export/sweep-table.ts';
import type { SweepCurve } from '../../../../src/ui/sweeps/sweep-curves.ts';

const curve = (name: string, part: Partial<SweepCurve>): SweepCurve => ({
  build: { id: name, name } as Build,
  way: 1,
  at: [],
  force_N: [],
  stale: false,
  ...part,
});

describe('sweepRows', () => {
  it('has a row a place of any curve, in the units asked for, and an empty cell where there is no force', () => {
    const curves = [
      curve('one', { at: [0, 20], force_N: [100, null] }),
      curve('two', { way: -1, at: [10], force_N: [-44.482216], stale: true }),
    ];
    const [head, ...rows] = sweepRows('Oil temperature, °F', curves, (at) => at * 2, { family: 'imperial' });
    expect(head).toEqual([
      'Oil temperature, °F',
      'one: Force, compression, lbf',
      'two (as last solved): Force, rebound, lbf',
    ]);
    expect(rows.map(([at]) => at)).toEqual([0, 20, 40]);
    expect(rows[2]).toEqual([40, undefined, undefined]);
    // One pound-force is 4.4482216 N (from memory, by definition of the pound and standard gravity).
    expect(rows[1][2]).toBeCloseTo(-10, 6);
  });

  it('is empty where nothing is solved', () => {
    expect(sweepRows('Clicks', [curve('one', {})], (at) => at, { family: 'metric' })).toEqual([]);
  });
});
