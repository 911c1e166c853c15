import { describe, expect, it } from 'vitest';
import { buildColour, buildDash } from '../../../../src/ui/app/palette.ts';
import { colourDistance, VISIONS } from '../../../helpers/colour-vision.ts';

/** A baseline and five others. */
const BUILDS = [0, 1, 2, 3, 4, 5];
const dashAt = (at: number): string => buildDash(at - 1, at === 0);
const pairs = BUILDS.flatMap((a) => BUILDS.filter((b) => b > a).map((b) => [a, b] as const));

/** Marks of one period of a dash, longest first [px]; a whole line is one mark without an end. */
const marks = (dash: string): number[] =>
  dash === 'solid'
    ? [Number.POSITIVE_INFINITY]
    : dash
        .split(',')
        .filter((_, at) => at % 2 === 0)
        .map(Number.parseFloat)
        .sort((a, b) => b - a);

/** Told apart at a glance: another number of marks in a period, or marks of which one is well longer. */
function lookApart(a: string, b: string): boolean {
  const [one, other] = [marks(a), marks(b)];
  if (one.length !== other.length) return true;
  if (one[0] === other[0]) return false;
  const [short, long] = [one[0], other[0]].sort((x, y) => x - y);
  return long >= 1.8 * short;
}

describe('the yardstick', () => {
  it('is that of the publications', () => {
    // White and black are 100 apart in L*, by definition; a grey stays what it is in every vision.
    expect(colourDistance('#ffffff', '#000000')).toBeCloseTo(100, 6);
    // sRGB red has L* 53.24, a* 80.09, b* 67.20 (from memory, D65): its distance from black.
    expect(colourDistance('#ff0000', '#000000')).toBeCloseTo(Math.hypot(53.24, 80.09, 67.2), 0);
    for (const vision of Object.values(VISIONS)) {
      for (const row of vision) expect(row.reduce((sum, each) => sum + each, 0)).toBeCloseTo(1, 5);
      expect(colourDistance('#808080', '#ffffff', vision)).toBeCloseTo(colourDistance('#808080', '#ffffff'), 3);
    }
    // Without the cones of long waves, red and an olive come close; all cones see them far apart.
    expect(colourDistance('#bd4405', '#7a6100', VISIONS.protanopia)).toBeLessThan(5);
    expect(colourDistance('#bd4405', '#7a6100')).toBeGreaterThan(40);
  });
});

describe.each(Object.keys(VISIONS))('with %s', (name) => {
  it.each([
    ['light', false],
    ['dark', true],
  ] as const)('the lines of two builds are told apart by ink or by dash (%s)', (_, dark) => {
    for (const [a, b] of pairs) {
      const distance = colourDistance(buildColour(a, dark), buildColour(b, dark), VISIONS[name]);
      const isTold = distance >= 20 || lookApart(dashAt(a), dashAt(b));
      expect({ a, b, isTold }).toEqual({ a, b, isTold: true });
    }
  });
});

it.each(['protanopia', 'deuteranopia', 'tritanopia'])(
  'baseline and first revalve are far apart by ink alone with %s',
  (name) => {
    for (const dark of [false, true])
      expect(colourDistance(buildColour(0, dark), buildColour(1, dark), VISIONS[name])).toBeGreaterThan(40);
  },
);

describe('dashes', () => {
  it('alone tell a baseline and five builds apart, whichever of the builds is the baseline', () => {
    for (const [a, b] of pairs) expect([a, b, lookApart(dashAt(a), dashAt(b))]).toEqual([a, b, true]);
    for (const at of BUILDS) expect([at, lookApart(buildDash(at, false), dashAt(0))]).toEqual([at, true]);
  });
});
