import { describe, expect, it } from 'vitest';
import { guessColumns } from '../../../src/measured/mapping.ts';
import { asMeasurement, type MeasureSettings, measure, usualWindow } from '../../../src/measured/measure.ts';
import { median, outliersOf } from '../../../src/measured/outliers.ts';
import { peakPlaces, thinnedPlaces } from '../../../src/measured/reduce.ts';
import { suspicionsOf } from '../../../src/measured/suspicions.ts';
import { guessSettings, readTable } from '../../../src/measured/table.ts';
import { gasForceOf } from '../../../src/measured/take-off.ts';

function measured(text: string, change: Partial<MeasureSettings> = {}) {
  const table = readTable(text, guessSettings(text));
  const columns = guessColumns(table.headings);
  const mapping = { columns, speedSign: 'compression', forceSign: 'compression', positionSign: 'compression' } as const;
  const out = measure(table, {
    mapping,
    gas: 'kept',
    friction_N: 0,
    window_s: 0.05,
    keep: 'all',
    mostPoints: 400,
    ...change,
  });
  if (!out.ok) throw new Error(JSON.stringify(out.faults));
  return out.value;
}

/** A damper of 1000 N s/m with a gas force of 200 N and 20 N of friction, in SI. */
const force = (v: number): number => 1000 * v + 200 + 20 * Math.sign(v);
const SPEEDS = [-0.5, -0.4, -0.3, -0.2, -0.1, -0.05, 0.05, 0.1, 0.2, 0.3, 0.4, 0.5];
const pointsFile = (spoil: (v: number) => number = force): string =>
  `speed [m/s],force [N]\n${SPEEDS.map((v) => `${v},${spoil(v)}`).join('\n')}\n`;

describe('gas force and friction', () => {
  it('stay in the points unless they are taken off', () => {
    expect(measured(pointsFile())).toMatchObject({ steps: [], points: { force_N: SPEEDS.map(force) } });
  });

  it('are taken off by what is typed, and recorded', () => {
    const { points, steps } = measured(pointsFile(), { gas: 200, friction_N: 20 });
    expect(points.force_N).toEqual(SPEEDS.map((v) => expect.closeTo(1000 * v, 9)));
    expect(steps).toEqual([
      { kind: 'gas-force', force_N: 200, from: 'typed' },
      { kind: 'friction', force_N: 20, from: 'typed' },
    ]);
  });

  it('is found half way between the slowest points', () => {
    const { steps } = measured(pointsFile(), { gas: 'slowest-points' });
    expect(steps).toEqual([{ kind: 'gas-force', force_N: 200, from: 'slowest-points' }]);
    expect(gasForceOf([0.1, 0.2], [300, 400])).toBeUndefined();
  });

  it('is remembered where the bench took it off', () => {
    const about = { id: 'a', name: 'A', notes: '', sourceFile: 'a.csv', conditions: {} };
    expect(asMeasurement(measured(pointsFile()), about, true)).toMatchObject({ gasTakenOffByBench: true, steps: [] });
    expect(asMeasurement(measured(pointsFile()), about, false)).not.toHaveProperty('gasTakenOffByBench');
  });
});

describe('outliers', () => {
  const spoiled = (v: number): number => force(v) + (v === 0.3 ? 180 : 0) + Math.sin(40 * v) * 4;

  it('are flagged and kept', () => {
    const { outliers, points } = measured(pointsFile(spoiled));
    expect(outliers.map((at) => points.speed_m_s[at])).toEqual([0.3]);
    expect(points.speed_m_s).toEqual(SPEEDS);
  });

  it('are none in a straight line, in a bent one, and in the step of friction', () => {
    expect(outliersOf(SPEEDS, SPEEDS.map(force))).toEqual([]);
    expect(
      outliersOf(
        SPEEDS,
        SPEEDS.map((v) => force(v) + Math.sin(40 * v) * 4),
      ),
    ).toEqual([]);
  });

  it('are none at the ends of a bent curve with few points, and the one in its middle', () => {
    const speeds = [0.02, 0.05, 0.1, 0.15, 0.2, 0.3, 0.4, 0.5, 0.6, 0.8, 1, 1.2, 1.5, 1.8];
    const bent = (v: number): number => 400 * Math.tanh(v / 0.06) + 350 * v ** 1.6 + 5 * Math.sin(300 * v);
    expect(outliersOf(speeds, speeds.map(bent))).toEqual([]);
    const spoiltAt = speeds.indexOf(0.6);
    expect(
      outliersOf(
        speeds,
        speeds.map((v, i) => bent(v) + (i === spoiltAt ? 220 : 0)),
      ),
    ).toEqual([spoiltAt]);
  });

  it('are kept when the points are made fewer', () => {
    const many = Array.from({ length: 2000 }, (_, i) => (i - 1000) / 2000 + 1e-4);
    const file = (v: number): number => force(v) + Math.sin(4000 * v) + (Math.abs(v - 0.2501) < 1e-6 ? 300 : 0);
    const text = `speed [m/s],force [N]\n${many.map((v) => `${v},${file(v)}`).join('\n')}\n`;
    const { points, outliers, steps, rawCount } = measured(text, { mostPoints: 50 });
    expect(rawCount).toBe(2000);
    expect(points.speed_m_s.length).toBeLessThanOrEqual(50);
    expect(outliers.map((at) => points.speed_m_s[at])).toEqual([expect.closeTo(0.2501, 9)]);
    expect(steps).toEqual([{ kind: 'thinned', fromCount: 2000 }]);
  });

  it('go by the median, the mean of the middle two for an even count', () => {
    expect([median([3, 1, 2]), median([4, 1, 2, 100])]).toEqual([2, 3]);
  });
});

/** A sine stroke of 25 mm either way at 2 Hz; the damper is 1000 N s/m: peak speed 2 pi f X = 0.31416 m/s. */
function strokeFile(samples: number): string {
  const rows = Array.from({ length: samples }, (_, i) => {
    const t = (i * 1.5) / samples;
    const v = 0.025 * 4 * Math.PI * Math.cos(4 * Math.PI * t);
    return `${t.toFixed(6)};${(25 * Math.sin(4 * Math.PI * t)).toFixed(5)};${(1000 * v).toFixed(3)}`;
  });
  return `time [s];position [mm];force [N]\n${rows.join('\n')}\n`;
}

it('is refused with fewer than three points, which make no curve', () => {
  const spare = (rows: number) =>
    pointsFile()
      .split('\n')
      .slice(0, rows + 1)
      .join('\n');
  expect(() => measured(spare(2))).toThrow('measured.short');
  expect(measured(spare(3)).rawCount).toBe(3);
});

describe('a stroke over time', () => {
  it('gives the speed, and says what the window takes off its peak', () => {
    const { kind, points, steps } = measured(strokeFile(600), { window_s: 0.05 });
    expect(kind).toBe('force-position-time');
    const peak = Math.max(...points.speed_m_s.map(Math.abs));
    // 1 - x^2/10 with x = w T = 4 pi 0.025 takes 0.98 % off.
    expect(peak).toBeCloseTo(0.31416 * (1 - 0.0098), 3);
    expect(steps).toContainEqual({
      kind: 'speed-from-position',
      window_s: 0.05,
      peakLoss_percent: expect.closeTo(0.97, 1),
      leftOut: 20,
    });
  });

  it('is refused where no window fits into the run', () => {
    const table = readTable(strokeFile(600), guessSettings(strokeFile(600)));
    const columns = guessColumns(table.headings);
    const mapping = {
      columns,
      speedSign: 'compression',
      forceSign: 'compression',
      positionSign: 'compression',
    } as const;
    const out = measure(table, { mapping, gas: 'kept', friction_N: 0, window_s: 5, keep: 'all', mostPoints: 400 });
    expect(out).toMatchObject({ ok: false, faults: [{ code: 'measured.window', got: '5 s' }] });
  });

  it('comes down to one point a half cycle', () => {
    const { points, steps, rawCount } = measured(strokeFile(600), { window_s: 0.02, keep: 'peaks' });
    expect(rawCount).toBe(600);
    expect(steps.map(({ kind }) => kind)).toEqual(['speed-from-position', 'peak-points']);
    const signs = points.speed_m_s.map(Math.sign);
    expect(signs).toEqual([1, -1, 1, -1, 1, -1, 1]);
    for (const [i, v] of points.speed_m_s.entries()) expect(points.force_N[i]).toBeCloseTo(1000 * v, -1);
  });

  it('is measured with eleven samples a window unless told otherwise', () => {
    expect(usualWindow([0, 0.01, 0.02, 0.03])).toBe(0.1);
  });

  it('finds each half cycle once and leaves the rest at the ends out', () => {
    expect(peakPlaces([0.001, 0.2, 0.5, 0.3, -0.1, -0.6, -0.2, 0.004])).toEqual([2, 5]);
  });

  it('is thinned evenly with its ends', () => {
    expect(thinnedPlaces(9, 3)).toEqual([0, 4, 8]);
    expect(thinnedPlaces(2, 5)).toEqual([0, 1]);
  });
});

/** Each error that a person can make with a column, and what gives it away. */
describe('traps', () => {
  const forces = SPEEDS.map(force);

  it('suspect nothing in what is right', () => {
    expect(suspicionsOf(SPEEDS, forces)).toEqual([]);
  });

  it.each([
    ['the sign of the force the wrong way round', SPEEDS, forces.map((F) => -F), ['drives']],
    ['the sign of the speed the wrong way round', SPEEDS.map((v) => -v), forces, ['drives']],
    ['mm/s read as m/s', SPEEDS.map((v) => v * 1000), forces, ['too-fast']],
    ['in/s read as m/s', SPEEDS.map((v) => v / 0.0254), forces, ['too-fast']],
    ['m/s read as mm/s', SPEEDS.map((v) => v / 1000), forces, ['too-slow']],
    ['N read as kN', SPEEDS, forces.map((F) => F * 1000), ['too-strong']],
    ['kN read as N', SPEEDS, forces.map((F) => F / 1000), ['too-weak']],
    ['magnitudes read as signed', SPEEDS.map(Math.abs), forces.map(Math.abs), ['one-direction']],
  ])('give away %s', (_, speeds, values, wanted) => {
    expect(suspicionsOf(speeds, values)).toEqual(wanted);
  });
});
