import { describe, expect, it } from 'vitest';
import type { ValveBody } from '../../../../src/model/project.ts';
import { portShapes } from '../../../../src/ui/plan-view/port-shapes.ts';

const body = (ports: ValveBody['ports']): ValveBody => ({
  ports,
  pressureZone: { innerDiameter_mm: 18, outerDiameter_mm: 30 },
  seat: { innerDiameter_mm: 30, outerDiameter_mm: 32 },
});

describe('ports under the shims', () => {
  it('that open part of the ring are sectors of it: four over 0.6 reach 27 degrees to each side of their middle', () => {
    const ports = portShapes(body({ count: 4, diameter_mm: 5, length_mm: 10, coveredFraction: 0.6 }));
    expect(ports).toHaveLength(4);
    for (const [k, port] of ports.entries()) {
      if (port.kind !== 'sector') throw new Error('not a sector');
      const angles = port.outline.map(({ theta }) => (theta * 180) / Math.PI);
      expect(Math.min(...angles)).toBeCloseTo(90 * k - 27, 9);
      expect(Math.max(...angles)).toBeCloseTo(90 * k + 27, 9);
      expect(new Set(port.outline.map(({ r }) => r))).toEqual(new Set([15, 9]));
    }
  });

  it('below a groove are holes in the middle of the ring, of their diameter or area', () => {
    const round = portShapes(body({ count: 3, diameter_mm: 5, length_mm: 10 }));
    expect(round.map((port) => port.kind === 'hole' && port.radius_mm)).toEqual([2.5, 2.5, 2.5]);
    expect(round.map((port) => port.kind === 'hole' && port.middle.r)).toEqual([12, 12, 12]);
    // π · 2² is 12.566.
    const [byArea] = portShapes(body({ count: 3, area_mm2: 12.566, length_mm: 10, coveredFraction: 1 }));
    expect(byArea.kind === 'hole' && byArea.radius_mm).toBeCloseTo(2, 3);
  });

  it('a hole larger than the ring or its share of it is drawn as large as there is room', () => {
    const [wide] = portShapes(body({ count: 2, area_mm2: 400, length_mm: 10 }));
    expect(wide.kind === 'hole' && wide.radius_mm).toBe(3);
    // Sixteen in a circle of radius 12 stand 2 · 12 · sin 11.25° = 4.682 apart.
    const [crowded] = portShapes(body({ count: 16, area_mm2: 400, length_mm: 10 }));
    expect(crowded.kind === 'hole' && crowded.radius_mm).toBeCloseTo(2.341, 3);
  });
});
