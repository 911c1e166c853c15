import { describe, expect, it } from 'vitest';
import { levelWords } from '../../../../src/ui/charts/level-words.ts';
import { MARGIN } from '../../../../src/ui/charts/plot-layout.ts';

const frame = { width: 400, height: 300 };
/** Pixels from the top edge of the board. */
const scales = { y: (value: number) => value };
const gas = (value: number) => levelWords([{ id: 'gas', value, label: 'gas 12 bar' }], scales, frame)[0];

describe('words of a level', () => {
  it('stand on their line', () => {
    const words = gas(150);
    expect(words.lineY).toBe(150);
    expect(words.y).toBeLessThan(150);
    expect(words.box.bottom).toBeLessThan(150);
  });

  it('give way to the word of the direction in the upper left corner', () => {
    const words = gas(MARGIN.t + 10);
    expect(words.box.top).toBeGreaterThan(words.lineY);
    const [limit] = levelWords([{ id: 'limit', value: MARGIN.t + 10, label: 'limit' }], scales, frame);
    expect(limit.y).toBeLessThan(limit.lineY);
    expect(limit.x).toBeGreaterThan(150);
  });
});
