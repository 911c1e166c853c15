/** Shapes whose level lines are known by hand: cones, and w = w0 + w1 cos nθ. */
import { describe, expect, it } from 'vitest';
import { type LevelLine, levelLines, regionAbove } from '../../../../src/ui/plan-view/level-lines.ts';
import type { RingGrid } from '../../../../src/ui/plan-view/ring-grid.ts';

const ANGLES = 96;
const gridOf = (radii: readonly number[], value: (r: number, theta: number) => number, angles = ANGLES): RingGrid => ({
  radii,
  angles,
  values: Float64Array.from(
    radii.flatMap((r) => Array.from({ length: angles }, (_, j) => value(r, (2 * Math.PI * j) / angles))),
  ),
});
const RADII = [6, 8, 10, 12, 15];

/** Area inside closed outlines, those within others taken off again, by triangles from the centre [mm²]. */
function areaOf(lines: readonly LevelLine[]): number {
  const areas = lines.map(({ points }) => {
    const xy = points.map(({ r, theta }) => [r * Math.cos(theta), r * Math.sin(theta)]);
    const twice = xy.reduce((sum, [x, y], i) => {
      const [nextX, nextY] = xy[(i + 1) % xy.length];
      return sum + x * nextY - nextX * y;
    }, 0);
    return Math.abs(twice) / 2;
  });
  const outer = Math.max(0, ...areas);
  return outer - (areas.reduce((sum, area) => sum + area, 0) - outer);
}

describe('lines of one level', () => {
  it('on a cone are circles: w = r is 11 halfway between the rings of 10 and 12', () => {
    const lines = levelLines(
      gridOf(RADII, (r) => r),
      11,
    );
    expect(lines).toHaveLength(1);
    expect(lines[0].closed).toBe(true);
    expect(lines[0].points).toHaveLength(ANGLES);
    for (const { r } of lines[0].points) expect(r).toBeCloseTo(11, 12);
  });

  it('of w = r + cos 4θ stand where r = level − cos 4θ, one wavy line round the circle', () => {
    const [line, ...others] = levelLines(
      gridOf([6, 7, 8, 9, 10, 11, 12], (r, theta) => r + Math.cos(4 * theta), 4 * 48),
      9.5,
    );
    expect(others).toEqual([]);
    expect(line.closed).toBe(true);
    for (const { r, theta } of line.points) expect(Math.abs(r - (9.5 - Math.cos(4 * theta)))).toBeLessThan(0.003);
    expect(Math.min(...line.points.map(({ r }) => r))).toBeCloseTo(8.5, 6);
    expect(Math.max(...line.points.map(({ r }) => r))).toBeCloseTo(10.5, 6);
  });

  it('of a wave that ends at the rim are one open line a crest, with both ends on the rim', () => {
    // 0.1 (r − 6) (1 + cos 3θ) is 1.5 at the rim of 15 where cos 3θ = 2/3, and nowhere at the troughs.
    const lines = levelLines(
      gridOf(RADII, (r, theta) => 0.1 * (r - 6) * (1 + Math.cos(3 * theta)), 3 * 48),
      1.5,
    );
    expect(lines).toHaveLength(3);
    for (const { points, closed } of lines) {
      expect(closed).toBe(false);
      for (const end of [points[0], points[points.length - 1]]) {
        expect(end.r).toBeCloseTo(15, 12);
        expect(Math.cos(3 * end.theta)).toBeCloseTo(2 / 3, 2);
      }
    }
  });

  it('there are none of a level that no place has, nor on what is flat', () => {
    expect(
      levelLines(
        gridOf(RADII, (r) => r),
        20,
      ),
    ).toEqual([]);
    expect(
      levelLines(
        gridOf(RADII, () => 1),
        1,
      ),
    ).toEqual([]);
  });

  it('at a saddle go by the mean of the cell: round the low corners where it is above the level, else round the high ones', () => {
    // 1 0 1 0 on the inner ring, 0 1 0 1 on the outer: every cell is a saddle of mean 0.5. A line round a corner passes the
    // edge that leads outwards from it, 0.4 of the way from an inner corner, at the angle of that corner.
    const saddle = { radii: [1, 2], angles: 4, values: Float64Array.of(1, 0, 1, 0, 0, 1, 0, 1) };
    const aroundInner = (level: number): number[] =>
      levelLines(saddle, level)
        .map(({ points }) => points[1])
        .filter(({ r }) => Math.abs(r - 1.4) < 1e-12)
        .map(({ theta }) => Math.round((theta * 180) / Math.PI))
        .sort((one, other) => one - other);
    expect(levelLines(saddle, 0.4)).toHaveLength(4);
    expect(aroundInner(0.4)).toEqual([90, 270]);
    expect(aroundInner(0.6)).toEqual([0, 180]);
  });
});

describe('the region above a level', () => {
  it('of a cone is the ring out to the rim: π (15² − 11²) mm²', () => {
    const outlines = regionAbove(
      gridOf(RADII, (r) => r),
      11,
    );
    expect(outlines.every(({ closed }) => closed)).toBe(true);
    expect(outlines).toHaveLength(2);
    // A polygon of 96 sides has sin(2π/96)/(2π/96) of the circle.
    const share = Math.sin((2 * Math.PI) / ANGLES) / ((2 * Math.PI) / ANGLES);
    expect(areaOf(outlines)).toBeCloseTo(Math.PI * (225 - 121) * share, 6);
  });

  it('is the whole shim below the least value, and nothing above the greatest', () => {
    const outlines = regionAbove(
      gridOf(RADII, (r) => r),
      1,
    );
    const radii = outlines.map(({ points }) => points[0].r).sort((a, b) => a - b);
    expect(radii).toEqual([6, 15]);
    expect(
      regionAbove(
        gridOf(RADII, (r) => r),
        16,
      ),
    ).toEqual([]);
  });

  it('of a wave that reaches it at the crests alone is one piece a crest, closed along the rim', () => {
    const outlines = regionAbove(
      gridOf(RADII, (r, theta) => 0.1 * (r - 6) * (1 + Math.cos(3 * theta)), 3 * 48),
      1.5,
    );
    expect(outlines).toHaveLength(3);
    for (const { points, closed } of outlines) {
      expect(closed).toBe(true);
      expect(points.filter(({ r }) => Math.abs(r - 15) < 1e-12).length).toBeGreaterThan(4);
    }
  });
});
