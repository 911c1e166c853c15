import { describe, expect, it } from 'vitest';
import { SKETCHES, type SketchName } from '../../../../src/ui/sketches/catalogue.ts';
import { LETTER_RADIUS, layDimension } from '../../../../src/ui/sketches/lay-dimension.ts';
import { lettersOf, SKETCH_WIDTH, type Sketch } from '../../../../src/ui/sketches/sketch.ts';
import { text } from '../../../../src/ui/text/en.ts';

const NAMES = Object.keys(SKETCHES) as SketchName[];

describe.each(NAMES)('the sketch %s', (name) => {
  const sketch: Sketch = SKETCHES[name];
  const letters = sketch.dimensions.map((dimension) => layDimension(dimension).letter);

  it('has words, and each dimension of it once', () => {
    expect(text.sketches[name]).toMatch(/^Sketch of .+\.$/);
    const ids = sketch.dimensions.map(({ of }) => of);
    expect(new Set(ids).size).toBe(ids.length);
    for (const id of ids) expect(text.measures[id].what).toMatch(/\.$/);
  });

  it('keeps every letter within its frame and clear of the others', () => {
    for (const [x, y] of letters) {
      expect(x).toBeGreaterThanOrEqual(LETTER_RADIUS);
      expect(x).toBeLessThanOrEqual(SKETCH_WIDTH - LETTER_RADIUS);
      expect(y).toBeGreaterThanOrEqual(LETTER_RADIUS);
      expect(y).toBeLessThanOrEqual(sketch.height - LETTER_RADIUS);
    }
    for (const [i, a] of letters.entries())
      for (const b of letters.slice(i + 1))
        expect(Math.hypot(a[0] - b[0], a[1] - b[1])).toBeGreaterThanOrEqual(2 * LETTER_RADIUS);
  });
});

describe('letters', () => {
  it('go in the order of the dimensions, without those that look like figures', () => {
    const ids = [
      'bore',
      'rod',
      'travel',
      'endClearance',
      'heatedMass',
      'portCount',
      'portLength',
      'covered',
      'zoneInner',
    ];
    const dimensions = ids.map((of) => ({ of, letter: [0, 0], points: [1, 1] })) as unknown as Sketch['dimensions'];
    expect(Object.values(lettersOf({ dimensions }))).toEqual(['A', 'B', 'C', 'D', 'E', 'F', 'G', 'H', 'J']);
  });
});
