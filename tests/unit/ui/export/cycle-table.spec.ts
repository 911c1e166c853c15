import { expect, it } from 'vitest';
import { cycleRows, type NamedLoop } from '../../../../src/ui/export/cycle-table.ts';
import { columns } from './points.ts';

const loop = (...force_N: number[]): NamedLoop['loop'] => ({
  time_s: Float64Array.from(force_N, (_, i) => 0.5 * i),
  position_m: Float64Array.from(force_N, (_, i) => 0.0254 * (i + 1)),
  speed_m_s: Float64Array.from(force_N, () => 0.254),
  force_N: Float64Array.from(force_N),
});

it('four columns a build, in the units of the family; shorter loops end in empty cells', () => {
  const loops = [
    { name: 'Stock', loop: loop(1, 2) },
    { name: 'Custom', loop: loop(-4.4482216152605) },
  ];
  expect(columns(cycleRows(loops, { family: 'metric' }))['Stock: Force, N']).toEqual([1, 2]);
  expect(columns(cycleRows(loops, { family: 'metric' }))['Stock: Time, s']).toEqual([0, 0.5]);
  const imperial = columns(cycleRows(loops, { family: 'imperial' }));
  expect(imperial['Stock: Stroke from full extension, in'][1]).toBeCloseTo(2, 12);
  expect(imperial['Custom: Shaft speed, in/s'][0]).toBeCloseTo(10, 12);
  expect(imperial['Custom: Force, lbf'][0]).toBeCloseTo(-1, 12);
  expect(imperial['Custom: Force, lbf'][1]).toBeUndefined();
});

it('no loop is no table', () => expect(cycleRows([], { family: 'metric' })).toEqual([]));
