import { describe, expect, it } from 'vitest';
import { driveFor, fastest, peakSpeed, type SineDrive } from '../../../../src/solver/cycle/drive.ts';
import { InputError } from '../../../../src/units/fault.ts';

const SINE: SineDrive = { kind: 'sine', stroke_m: 0.06, frequency_Hz: 2, middle_m: 0.05, cycles: 3 };

const faultOf = (run: () => unknown) => {
  try {
    run();
  } catch (error) {
    if (error instanceof InputError) return error.fault;
  }
  return undefined;
};

describe('a sine stroke', () => {
  const drive = driveFor(SINE, 0.1);

  it('peaks at pi S f: 100 mm at 100 a minute is the classic 0.52 m/s (QC/T 491, from memory)', () => {
    expect(peakSpeed({ stroke_m: 0.1, frequency_Hz: 100 / 60 })).toBeCloseTo(0.5235988, 7);
    expect(drive.speed(1 / 8)).toBeCloseTo(peakSpeed(SINE), 12);
    expect(fastest(drive).compression).toBeCloseTo(peakSpeed(SINE), 12);
    expect(fastest(drive).rebound).toBeCloseTo(peakSpeed(SINE), 12);
  });

  it('starts at rest at the extended end, and compresses first', () => {
    expect(drive.position(0)).toBeCloseTo(0.02, 12);
    expect(drive.speed(0)).toBe(0);
    expect(drive.position(1 / 4)).toBeCloseTo(0.08, 12);
    expect(drive.speed(1 / 8)).toBeGreaterThan(0);
  });

  it('runs as often as asked, three times unless asked, and breaks where it turns', () => {
    expect([drive.start_s, drive.end_s, drive.period_s]).toEqual([0, 1.5, 0.5]);
    expect(drive.breaks_s).toEqual([0, 0.25, 0.5, 0.75, 1, 1.25, 1.5]);
    const { cycles: _, ...once } = SINE;
    expect(driveFor(once, 0.1).end_s).toBe(1.5);
  });

  it('may use the whole travel', () => {
    expect(driveFor({ ...SINE, stroke_m: 0.1 }, 0.1).position(0.25)).toBeCloseTo(0.1, 12);
  });

  it.each([
    [{ stroke_m: 0 }, 'cycle.drive.stroke'],
    [{ stroke_m: Number.NaN }, 'cycle.drive.stroke'],
    [{ frequency_Hz: -1 }, 'cycle.drive.frequency'],
    [{ cycles: 0 }, 'cycle.drive.cycles'],
    [{ cycles: 2.5 }, 'cycle.drive.cycles'],
    [{ stroke_m: 0.11 }, 'cycle.drive.travel'],
    [{ middle_m: 0.08 }, 'cycle.drive.travel'],
  ])('is refused with %j', (change, code) => {
    expect(faultOf(() => driveFor({ ...SINE, ...change }, 0.1))?.code).toBe(code);
  });
});

describe('a trace', () => {
  const trace = { kind: 'trace', time_s: [0, 0.1, 0.3, 0.4], position_m: [0.01, 0.03, 0.05, 0.02] } as const;

  it('goes through its points, turns at the highest, and its speed is its slope', () => {
    const drive = driveFor(trace, 0.1);
    expect(trace.time_s.map(drive.position)).toEqual([...trace.position_m]);
    expect(drive.speed(0.3)).toBe(0);
    const h = 1e-6;
    expect(drive.speed(0.2)).toBeCloseTo((drive.position(0.2 + h) - drive.position(0.2 - h)) / (2 * h), 6);
    expect([drive.start_s, drive.end_s, drive.period_s]).toEqual([0, 0.4, undefined]);
    expect(drive.breaks_s).toEqual([...trace.time_s]);
  });

  it('knows how fast it goes each way', () => {
    const { compression, rebound } = fastest(driveFor(trace, 0.1));
    expect(compression).toBeGreaterThan(0.2);
    expect(compression).toBeLessThan(0.4);
    expect(rebound).toBeGreaterThan(0.3);
  });

  it('may have a hundred thousand points', () => {
    const time_s = Array.from({ length: 100_000 }, (_, i) => i / 1000);
    const drive = driveFor({ kind: 'trace', time_s, position_m: time_s.map((t) => 0.05 + 0.03 * Math.sin(t)) }, 0.1);
    expect(fastest(drive).compression).toBeCloseTo(0.03, 4);
  });

  it('takes its end for the end, and a rounding beyond it too', () => {
    const drive = driveFor(trace, 0.1);
    expect(drive.position(0.4 + 1e-16)).toBe(0.02);
    expect(drive.position(-1e-17)).toBe(0.01);
  });

  it.each([
    [{ time_s: [0], position_m: [0] }, 'cycle.trace.short', 'trace.time_s'],
    [{ time_s: [0, 1, 2], position_m: [0, 0.1] }, 'cycle.trace.length', 'trace.position_m'],
    [{ time_s: [0, 1, 1], position_m: [0, 0.1, 0] }, 'cycle.trace.time', 'trace.time_s[2]'],
    [{ time_s: [0, 1], position_m: [0, Number.NaN] }, 'cycle.trace.number', 'trace.position_m[1]'],
    [{ time_s: [0, Number.POSITIVE_INFINITY], position_m: [0, 0] }, 'cycle.trace.number', 'trace.time_s[1]'],
    [{ time_s: [0, 1], position_m: [0, 0.2] }, 'cycle.trace.travel', 'trace.position_m[1]'],
  ])('is refused: %j', (change, code, path) => {
    expect(faultOf(() => driveFor({ kind: 'trace', ...change }, 0.1))).toMatchObject({ code, path });
  });
});
