import { describe, expect, it } from 'vitest';
import { streamsOf } from '../../../../src/ui/section/streams.ts';
import { strokeShare } from '../../../../src/ui/section/stroke-play.ts';

const flows = { ports_m3_s: 6e-4, bleed_m3_s: 2e-4, leakage_m3_s: 2e-4 };

describe('the streams of a valve', () => {
  it('share out what passes, and have the speeds of their jets', () => {
    const jets = [
      { path: 'ports' as const, flow_m3_s: 6e-4, speed_m_s: 5 },
      { path: 'shims' as const, flow_m3_s: 4.5e-4, speed_m_s: 20 },
      { path: 'notches' as const, flow_m3_s: 1.5e-4, speed_m_s: 25 },
      { path: 'bleed' as const, flow_m3_s: 2e-4, speed_m_s: 30 },
    ];
    const told = streamsOf({ flows, jets }).map(({ name, share, speed_m_s }) => [name, +share.toFixed(9), speed_m_s]);
    expect(told).toEqual([
      ['ports', 0.6, 5],
      ['shims', 0.45, 20],
      ['notches', 0.15, 25],
      ['bleed', 0.2, 30],
      ['leakage', 0.2, undefined],
    ]);
  });

  it('leave out what carries nothing', () => {
    expect(streamsOf({ flows: { ports_m3_s: 0, bleed_m3_s: 1e-4, leakage_m3_s: 0 } })).toEqual([
      { name: 'bleed', flow_m3_s: 1e-4, share: 1 },
    ]);
    expect(streamsOf({ flows: { ports_m3_s: 0, bleed_m3_s: 0, leakage_m3_s: 0 } })).toEqual([]);
  });
});

describe('the stroke played', () => {
  it('goes as a sine from rest to its peak and back in four seconds', () => {
    expect(strokeShare(0)).toBe(0);
    expect(strokeShare(2000)).toBe(1);
    // sin 30° at a sixth of the stroke.
    expect(strokeShare(4000 / 6)).toBeCloseTo(0.5, 12);
    expect(strokeShare(4000)).toBeCloseTo(0, 12);
    expect(strokeShare(6000)).toBeCloseTo(1, 12);
  });
});
