/** A study by hand: two tolerances of ten, at two speeds each way. */

import type { Study } from '../../../../src/ui/tolerance/scatter-study.ts';
import type { ShareEstimate, ToleranceReading, ToleranceSamples } from '../../../../workers/protocol.ts';

const estimate = (value: number, by = 0.1) => ({ value, low: value - by, high: value + by });
export const share = (first: number, total = first, by = 0.1): ShareEstimate => ({
  first: estimate(first, by),
  total: estimate(total, by),
});

export const NAMES = ['thickness', 'seat', 'bleed'] as const;

const spread = (p5: number, p50: number, p95: number) => ({ p5, p50, p95, deviation: 1, shares: [], without: 0 });

/** Rising in speed: -1, -0.5, 0.5 and 1 m/s. */
export const READING: ToleranceReading = {
  names: NAMES,
  spreads: [
    spread(-130, -100, -90),
    spread(-60, -50, -45),
    spread(40, 50, 60),
    { ...spread(80, 100, 140), without: 3 },
  ],
  shares: [
    [share(0.5), share(0.3), share(0)],
    [share(0.5), share(0.3), share(0)],
    [share(0.2), share(0.7), share(0)],
    [share(0.6), share(0.3), share(0)],
  ],
  overRange: {
    compression: [share(0.55), share(0.4), share(0)],
    rebound: [share(0.5), share(0.3), share(0)],
  },
};

export const piece = (from: number, refusals: readonly string[] = []): ToleranceSamples => ({
  speeds_m_s: [-1, -0.5, 0.5, 1],
  drawn_N: [-101, -51, 51, 101],
  parts: ['thickness', 'seat'],
  theories: { compression: 'large-deflection', rebound: 'large-deflection' },
  refusals,
  samples: { a: [[from]], b: [], ab: [] },
});

export const study = (part: Partial<Study> = {}): Study => ({
  key: 'k',
  buildId: 'a',
  pieces: new Map([[0, piece(0)]]),
  read: { reading: READING, samples: 4 },
  ...part,
});
