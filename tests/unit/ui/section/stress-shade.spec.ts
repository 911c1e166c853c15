import { describe, expect, it } from 'vitest';
import type { ShimOutline } from '../../../../src/ui/section/geometry.ts';
import { peakOf, shadeColour, shadeStops, shareOf, stressScale } from '../../../../src/ui/section/stress-shade.ts';

const MPa = 1e6;
const along = Float64Array.of(600 * MPa, 300 * MPa, 0);
const outline: ShimOutline = {
  ...{ row: 0, shim: 0, outerRadius_mm: 15, thickness_mm: 0.2, top: [] },
  bottom: [3, 6, 10, 15].map((r) => ({ r, z: 0 })),
};

describe('the scale of the shades', () => {
  it('ends at the greatest yield strength, and marks the least', () => {
    const scale = stressScale({ equivalent_Pa: [along], yield_Pa: [1200 * MPa, 900 * MPa, null] });
    expect(scale).toEqual({ top_Pa: 1200 * MPa, limit_Pa: 900 * MPa, most_Pa: 600 * MPa });
  });

  it('ends at the next round number where no limit is known', () => {
    const scale = (most: number) => stressScale({ equivalent_Pa: [Float64Array.of(most * MPa)], yield_Pa: [null] });
    expect([130, 200, 480, 700].map((most) => scale(most).top_Pa / MPa)).toEqual([200, 200, 500, 1000]);
    expect(scale(130)).not.toHaveProperty('limit_Pa');
  });

  it('goes no deeper than its end', () => {
    const scale = stressScale({ equivalent_Pa: [along], yield_Pa: [400 * MPa] });
    expect([0, 100, 400, 600].map((stress) => shareOf(stress * MPa, scale))).toEqual([0, 0.25, 1, 1]);
  });
});

describe('the shade of a shim', () => {
  const scale = stressScale({ equivalent_Pa: [along], yield_Pa: [1200 * MPa] });

  it('stands at the nodes, and what the clamp holds has none', () => {
    expect(shadeStops(outline, along, scale)).toEqual([
      { r: 6, share: 0 },
      { r: 6, share: 0.5 },
      { r: 10, share: 0.25 },
      { r: 15, share: 0 },
    ]);
  });

  it('begins at the bore of a free ring', () => {
    const ring = { ...outline, bottom: outline.bottom.slice(1) };
    expect(shadeStops(ring, along, scale).map(({ r }) => r)).toEqual([6, 10, 15]);
  });

  it('goes from the pale over the middle to the deep end', () => {
    expect(shadeColour(0)).toBe('color-mix(in srgb, var(--stress-mid) 0.0%, var(--stress-low))');
    expect(shadeColour(0.25)).toBe('color-mix(in srgb, var(--stress-mid) 50.0%, var(--stress-low))');
    expect(shadeColour(0.75)).toBe('color-mix(in srgb, var(--stress-high) 50.0%, var(--stress-mid))');
    expect(shadeColour(1)).toBe('color-mix(in srgb, var(--stress-high) 100.0%, var(--stress-mid))');
  });

  it('knows where it is deepest', () => {
    expect(peakOf(outline, along)).toEqual({ stress_Pa: 600 * MPa, r: 6 });
    expect(peakOf(outline, Float64Array.of(1, 5, 2))).toEqual({ stress_Pa: 5, r: 10 });
  });
});
