import { describe, expect, it } from 'vitest';
import type { AdjusterId } from '../../../src/model/adjusters.ts';
import type { Project } from '../../../src/model/project.ts';
import { withSetting } from '../../../src/model/setting.ts';
import type { ForceCurve, PathFlows, Theory } from '../../../src/solver/index.ts';
import { changeBetween, demoCurve, loadDemo, pointAt, THEORIES } from '../../helpers/demo-curves.ts';

const FORK = loadDemo('larkspur-trail-fork.shimwright.json');
const CAR = loadDemo('wagtail-hill-climb-rear.shimwright.json');
const BIKE = loadDemo('dunnock-mountain-bike-rear.shimwright.json');

const curves = (project: Project, theory: Theory): ForceCurve[] =>
  project.builds.map(({ id }) => demoCurve(project, id, theory));

const bleedShare = ({ bleed_m3_s, ...others }: PathFlows): number =>
  bleed_m3_s / (bleed_m3_s + Object.values(others).reduce((sum: number, flow = 0) => sum + flow, 0));

/** Ranges in this file: common practice, no source; they keep the demos believable. */
describe.each([
  ['the fork cartridge', FORK, { slow: [30, 150], fast: [200, 800] }],
  ['the car twin-tube', CAR, { slow: [60, 500], fast: [400, 2500] }],
  ['the mountain-bike damper', BIKE, { slow: [150, 450], fast: [400, 2000] }],
] as const)('%s', (_, project, { slow, fast }) => {
  const stock = demoCurve(project, 'stock', 'large-deflection');

  it('keeps its oil whole as it came out, at half stroke and up to 2 m/s', () => {
    for (const point of stock.points) expect(point).toMatchObject({ airRelease: false });
  });

  it('lets most oil through the bleeds when slow', () => {
    // 0.05 m/s: out of the rebound chamber through the piston, out of the compression chamber through the base.
    expect(bleedShare(pointAt(stock, -0.05).flows)).toBeGreaterThan(0.6);
    const { base } = pointAt(stock, 0.05);
    expect(base && bleedShare(base.flows)).toBeGreaterThan(0.9);
  });

  it('has forces of its kind at 0.1 m/s and at 1 m/s', () => {
    for (const [speed, [low, high]] of [
      [0.1, slow],
      [1, fast],
    ] as const) {
      for (const v of [speed, -speed]) {
        const force_N = Math.sign(v) * pointAt(stock, v).dampingForce_N;
        expect(force_N).toBeGreaterThan(low);
        expect(force_N).toBeLessThan(high);
      }
    }
  });

  it('has pressure drops and lifts within plate theory at 1 m/s', () => {
    for (const v of [1, -1]) {
      const point = pointAt(stock, v);
      expect(point.pistonDrop_Pa).toBeLessThan(5e6);
      expect(point.seatOpening_m).toBeLessThan(1e-3);
      expect(point.life?.takesSet).toBe(false);
      const table = v > 0 ? stock.stacks.compression : stock.stacks.rebound;
      const { waves } = table;
      if (waves?.status === 'found') expect(point.shimPressure_Pa).toBeLessThan(waves.pressure_Pa);
      else expect(waves?.status).toBe('none');
    }
  });
});

describe('the revalves do what their notes say', () => {
  it.each(THEORIES)('less dive of the fork: slow compression up, hard hits and rebound as they were (%s)', (theory) => {
    const [stock, revalve] = curves(FORK, theory);
    const change = changeBetween(stock, revalve);
    for (const v of [0.05, 0.1]) expect(change(v)).toBeGreaterThan(0.4);
    for (const v of [0.5, 1, 1.5]) expect(Math.abs(change(v))).toBeLessThan(0.1);
    // The needle of the base lets oil back too, a trace beside the check.
    for (const v of [-0.1, -1]) expect(Math.abs(change(v))).toBeLessThan(1e-3);
  });

  it.each(THEORIES)('freer over bumps of the car: rebound down, slow compression up (%s)', (theory) => {
    const [stock, revalve] = curves(CAR, theory);
    const change = changeBetween(stock, revalve);
    for (const v of [-0.1, -0.2, -0.5, -1, -1.5]) expect(change(v)).toBeLessThan(-0.05);
    expect(change(0.05)).toBeGreaterThan(0.4);
    for (const v of [0.5, 1]) expect(Math.abs(change(v))).toBeLessThan(0.08);
  });

  it.each(THEORIES)(
    'held up on landings of the bike: compression up, more so when fast, rebound down (%s)',
    (theory) => {
      const [stock, revalve] = curves(BIKE, theory);
      const change = changeBetween(stock, revalve);
      expect(change(0.05)).toBeLessThan(0.08);
      expect(change(1)).toBeGreaterThan(change(0.1));
      expect(change(1.5)).toBeGreaterThan(0.1);
      for (const v of [-0.2, -1]) expect(change(v)).toBeLessThan(-0.05);
      // The poppet opens later.
      const poppet = (curve: ForceCurve) => pointAt(curve, 1.5).base?.flows.poppet_m3_s ?? Number.NaN;
      expect(poppet(stock)).toBeGreaterThan(poppet(revalve));
    },
  );
});

describe('the adjusters of the demos', () => {
  /** Where each acts: with it closed the force there is larger than with it open. */
  it.each<[string, Project, AdjusterId, number]>([
    ['fork', FORK, 'needle', -0.05],
    ['fork', FORK, 'base-needle', 0.1],
    ['car', CAR, 'rebound-spring', -0.2],
    ['bike', BIKE, 'needle', -0.05],
    ['bike', BIKE, 'base-needle', 0.1],
    ['bike', BIKE, 'poppet', 2],
  ])('of the %s: %s turned in and out changes the force', (_, project, id, speed) => {
    const forceAt = (clicks: number) => {
      const set = withSetting(project, 'stock', { clicks: { [id]: clicks } });
      return Math.abs(pointAt(demoCurve(set, 'stock', 'large-deflection'), speed).dampingForce_N);
    };
    expect(forceAt(1)).toBeGreaterThan(1.03 * forceAt(16));
  });
});

describe('the hydraulic stop of the fork', () => {
  it('presses in compression over the last 25 of 240 mm, and there alone', () => {
    const at = (stroke_mm: number) => demoCurve(FORK, 'stock', 'large-deflection', stroke_mm / 1000);
    expect(pointAt(at(120), 0.5).stopForce_N).toBe(0);
    expect(pointAt(at(214), 0.5).stopForce_N).toBe(0);
    expect(pointAt(at(235), 0.5).stopForce_N).toBeGreaterThan(50);
    expect(Math.abs(pointAt(at(235), -0.5).stopForce_N)).toBe(0);
  });
});
