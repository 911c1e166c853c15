import { describe, expect, it } from 'vitest';
import { sweptPositions } from '../../../../src/ui/sweeps/swept-positions.ts';

const stop = (end: 'compression' | 'rebound', length_mm: number) => ({
  end,
  length_mm,
  plungerDiameter_mm: 16,
  clearance_mm: 0.25,
});

describe('the places of a sweep over the stroke', () => {
  it('reach from one end of the travel to the other in even steps', () => {
    expect(sweptPositions({ travel_mm: 64 })).toEqual(Array.from({ length: 17 }, (_, i) => 4 * i));
  });

  it.each([
    ['compression', 215, 240],
    ['rebound', 0, 25],
  ] as const)('lie closer where the plunger of a stop in %s is in its cup', (end, from, to) => {
    const places = sweptPositions({ travel_mm: 240, hydraulicStop: stop(end, 25) });
    expect(places).toEqual([...places].sort((a, b) => a - b));
    expect([places[0], places.at(-1)]).toEqual([0, 240]);
    expect(places.filter((place) => place >= from && place <= to).length).toBeGreaterThanOrEqual(11);
    expect(places).toContain(from);
  });

  it('stay within the travel where the stop is longer', () => {
    const places = sweptPositions({ travel_mm: 20, hydraulicStop: stop('compression', 25) });
    expect([places[0], places.at(-1)]).toEqual([0, 20]);
  });
});
