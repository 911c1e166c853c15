import { describe, expect, it } from 'vitest';
import type { ShimRow, Valving } from '../../../src/model/project.ts';
import { orderedStacks } from '../../../src/sheet/assembly-order.ts';
import { curveDrawing, niceStep } from '../../../src/sheet/curve-drawing.ts';
import type { SheetNode } from '../../../src/sheet/node.ts';
import { stackDrawing } from '../../../src/sheet/stack-drawing.ts';
import { soundProject } from '../../helpers/documents.ts';
import { byTag, PLAIN_CURVE, textIn } from '../../helpers/sheets.ts';

function drawn(shims: ShimRow[], more: Partial<Valving> = {}): SheetNode {
  const { builds, damper } = soundProject();
  const valves = { ...builds[0].valves, pistonCompression: { clampDiameter_mm: 12, seatHeight_mm: 0, shims, ...more } };
  const [stack] = orderedStacks({ ...builds[0], valves }, damper);
  return stackDrawing(stack, damper.valves.pistonCompression, 'Stack', 'metric');
}

/** Of the shims alone, by the fill that only they have: right edge, top and height [mm on paper]. */
const shimCuts = (figure: SheetNode) =>
  byTag(figure, 'rect')
    .filter(({ attributes }) => attributes.fill === '#dfe5e5')
    .map(({ attributes: { x, y, width, height } }) => ({
      right: Number(x) + Number(width),
      top: Number(y),
      height: Number(height),
    }));

describe('the drawing of a stack', () => {
  it('has both cuts of every single shim, one upon the other, at the scales that it states', () => {
    const figure = drawn([
      { outerDiameter_mm: 24, thickness_mm: 0.2, count: 2 },
      { outerDiameter_mm: 16, thickness_mm: 0.1 },
    ]);
    const cuts = shimCuts(figure);
    expect(cuts).toHaveLength(6);
    const [, diameters, heights] = /diameters (\d+) : 1, heights (\d+) : 1/.exec(textIn(figure))?.map(Number) ?? [];
    const right = cuts.filter((_, i) => i % 2 === 1);
    for (const [i, thickness_mm] of [0.2, 0.2, 0.1].entries())
      expect(right[i].height).toBeCloseTo(thickness_mm * heights, 2);
    expect(right[0].top - right[1].top).toBeCloseTo(0.2 * heights, 2);
    // From the rim of 24 to that of 16: 4 mm of radius.
    expect(right[0].right - right[2].right).toBeCloseTo(4 * diameters, 2);
  });

  it('labels every row with its numbers, none on another', () => {
    const shims = Array.from({ length: 14 }, (_, i) => ({ outerDiameter_mm: 30 - i, thickness_mm: 0.1 }));
    const labels = byTag(drawn(shims), 'text');
    expect(labels.map(textIn)).toEqual(expect.arrayContaining(['1   30 × 0.1', '14   17 × 0.1']));
    const heights = labels.map(({ attributes }) => Number(attributes.y)).sort((a, b) => a - b);
    for (const [i, y] of heights.entries()) if (i > 0) expect(y - heights[i - 1]).toBeGreaterThanOrEqual(3.4);
  });

  it('lays the face shim on a seat above the hub', () => {
    const shims = [{ outerDiameter_mm: 24, thickness_mm: 0.2 }];
    const [plain, raised] = [drawn(shims), drawn(shims, { seatHeight_mm: 0.1 })];
    const scale = (figure: SheetNode) => Number(/heights (\d+)/.exec(textIn(figure))?.[1]);
    const gap = (figure: SheetNode) => {
      const clampSide = Math.max(
        ...byTag(figure, 'rect').map(({ attributes: { y, height } }) => Number(y) + Number(height)),
      );
      const [cut] = shimCuts(figure);
      return (clampSide - cut.top - cut.height) / scale(figure);
    };
    const body = (figure: SheetNode) => 8 / scale(figure);
    expect(gap(plain) - body(plain)).toBeCloseTo(0, 3);
    expect(gap(raised) - body(raised)).toBeCloseTo(0.1, 3);
  });
});

describe('the picture of the curve', () => {
  it('has a line each way for build and baseline, and none where nothing is solved', () => {
    const lines = (node: SheetNode | undefined) => (node ? byTag(node, 'polyline') : []);
    expect(lines(curveDrawing(PLAIN_CURVE, PLAIN_CURVE, 'x', 'metric'))).toHaveLength(4);
    expect(lines(curveDrawing(PLAIN_CURVE, undefined, 'x', 'metric'))).toHaveLength(2);
    expect(curveDrawing({ status: 'failed', reason: 'r' }, undefined, 'x', 'metric')).toBeUndefined();
  });

  it('breaks a line at a speed that did not solve', () => {
    const holed = { ...PLAIN_CURVE, force_N: [-1100, -600, null, -150, -125, 125, 150, 250, 600, 1100] };
    const figure = curveDrawing(holed, undefined, 'x', 'metric');
    const lengths = (figure ? byTag(figure, 'polyline') : []).map(
      ({ attributes }) => String(attributes.points).split(' ').length,
    );
    expect(lengths).toEqual([2, 2, 5]);
  });

  it('steps its axes by 1, 2 or 5 times a power of ten', () => {
    expect([niceStep(2200, 6), niceStep(0.9, 5), niceStep(6, 6), niceStep(43, 5)]).toEqual([500, 0.2, 1, 10]);
  });
});
