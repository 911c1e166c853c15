/** The oil of the calculation by hand against the worked checks of docs/theory-hydraulics.md and docs/theory-dampers.md. */
import { describe, expect, it } from 'vitest';
import { checkByHand } from '../../../scripts/lib/hand-calculation/check.ts';
import { curtainDrop, flowAt, type Hole, needleDrop, type Oil } from '../../../scripts/lib/hand-calculation/flow.ts';
import { leakFlow } from '../../../scripts/lib/hand-calculation/leak.ts';
import { poppetFlow } from '../../../scripts/lib/hand-calculation/poppet.ts';
import { newSheet, stepValue } from '../../../scripts/lib/hand-calculation/sheet.ts';
import { opensAt, valveByHand } from '../../../scripts/lib/hand-calculation/valve.ts';

const oilOf = (density: number, dynamic: number): Oil => ({ density, nu: dynamic / density });
const hole = (count: number, d_mm: number, L_mm: number, area_mm2 = (Math.PI / 4) * d_mm ** 2): Hole => ({
  count,
  area: area_mm2 * 1e-6,
  diameter: d_mm * 1e-3,
  length: L_mm * 1e-3,
});

describe('by hand', () => {
  it('a curtain passes what the worked opening does, and less over half of the circumference', () => {
    const [oil, land] = [oilOf(844, 0.0127), { r1: 13.8e-3, r2: 14.2e-3 }];
    const { a, b } = curtainDrop(land, 0.15e-3, 1, oil);
    expect(a / 2.7166e8).toBeCloseTo(1, 3);
    expect(b / 5.0912e12).toBeCloseTo(1, 3);
    expect(flowAt(0.4e6, a, b)).toBeCloseTo(0.2549e-3, 7);
    const half = curtainDrop(land, 0.15e-3, 1, oil, 0.5);
    expect(flowAt(0.8e6, half.a, half.b)).toBeCloseTo(0.1853e-3, 7);
  });

  it('a needle leaves the worked area', () => {
    const sheet = newSheet();
    needleDrop(
      'needle',
      { holeDiameter: 3e-3, halfAngle: Math.PI / 12, travel: 1e-3 },
      1e-6,
      oilOf(860, 0.0129),
      sheet,
    );
    expect(stepValue(sheet, 'A needle')).toBeCloseTo(2.236e-6, 9);
  });

  it('a poppet opens at the worked pressure and is held by 0.98 MPa at a quarter of a millimetre', () => {
    const sizes = { seatDiameter: 6e-3, halfAngle: Math.PI / 4, rate: 20e3, preload: 20, travel: 1e-3 };
    const oil = oilOf(860, 0.0129);
    expect(poppetFlow(sizes, 0.7073e6, oil, newSheet())).toBe(0);
    expect(poppetFlow(sizes, 0.7075e6, oil, newSheet())).toBeGreaterThan(0);
    const sheet = newSheet();
    const Q = poppetFlow(sizes, 0.98e6, oil, sheet);
    expect(stepValue(sheet, 'x poppet')).toBeCloseTo(0.25e-3, 6);
    expect(Q).toBeLessThan(0.095e-3);
    expect(Q).toBeGreaterThan(0.09e-3);
  });

  it('a clearance leaks and drags what the worked gaps do', () => {
    const concentric = { bore: 40e-3, clearance: 0.05e-3, length: 10e-3, eccentricity: 0 };
    const jet = (54 / 35) * 430 * (1.01346e-5 / (Math.PI * 39.95e-3 * 0.05e-3)) ** 2;
    expect(leakFlow(concentric, 1e6 + jet, 0, oilOf(860, 0.0129), newSheet())).toBeCloseTo(1.01346e-5, 9);
    const sheet = newSheet();
    const worked = { bore: 44e-3, clearance: 0.05e-3, length: 10e-3, eccentricity: 0.5 };
    const whole = leakFlow(worked, 877934, 0.01, oilOf(844, 0.0127), sheet);
    expect(stepValue(sheet, 'Q drag')).toBeCloseTo(0.03452e-6, 11);
    expect(whole).toBeCloseTo(13.66593e-6, 9);
  });

  it('a check plate lifts as worked beside a bleed that takes next to nothing', () => {
    const plate = {
      bleed: { hole: hole(1, 0.05, 0.3) },
      ports: hole(6, 3.5, 6, 10),
      land: { r1: 8e-3, r2: 12e-3 },
      rate: 2e3,
      preload: 3,
      travel: 0.8e-3,
    };
    const { dp, sheet } = checkByHand(plate, 0.0692e-3, oilOf(860, 0.0129));
    const through = stepValue(sheet, 'Q_c');
    expect(through / 0.0692e-3).toBeCloseTo(1, 3);
    expect(stepValue(sheet, 'x') / 0.5e-3).toBeCloseTo(1, 2);
    expect(stepValue(sheet, 'p') / 12.906e3).toBeCloseTo(1, 2);
    expect(dp / 14.16e3).toBeCloseTo(1, 2);
    expect(() => checkByHand(plate, 1e-8, oilOf(860, 0.0129))).toThrow('formula holds from 10 on');
  });
});

describe('a valve by hand', () => {
  const oil = oilOf(844, 0.0127);
  /** The stand-in stack of the worked point of the damper: h = 0.5 nm/Pa (P − 0.1 MPa). */
  const worked = {
    bleed: { hole: hole(1, 1.6, 4.8) },
    ports: { ...hole(4, 4.5, 12, 22) },
    phi: 1,
    land: { r1: 13.8e-3, r2: 14.2e-3 },
    kappa: 0.5e-9,
    seat: 0.05e-3,
    pressed: 0,
  };

  it('meets the worked point, but for the push of the port jets', () => {
    expect(opensAt(worked)).toBeCloseTo(0.1e6, 3);
    const { dp, sheet } = valveByHand(worked, 0.2549e-3 + 4.848e-5, 0.2218, oil);
    expect(stepValue(sheet, 'h')).toBeCloseTo(0.15e-3, 6);
    expect(stepValue(sheet, 'P') / 0.4e6).toBeCloseTo(1, 2);
    expect(dp / 0.4065e6).toBeCloseTo(1, 2);
  });

  it('stays closed below where it opens, the more so under a coil spring', () => {
    expect(stepValue(valveByHand(worked, 1e-5, 0, oil).sheet, 'h')).toBe(0);
    const pressed = { ...worked, pressed: 0.05e-3 };
    expect(opensAt(pressed)).toBeCloseTo(0.2e6, 3);
    const open = (valve: typeof worked) => stepValue(valveByHand(valve, 2.9e-5, 0, oil).sheet, 'h') > 0;
    expect([open(worked), open(pressed)]).toEqual([true, false]);
  });

  it('rises on its float between its stops by what the spring gives', () => {
    const float = { travel: 0.2e-3, rate: 2e4, preload: 15, area: 200e-6 };
    const floating = { ...worked, seat: 0, float };
    const z = (Q: number) => {
      const { sheet } = valveByHand(floating, Q, 0, oil);
      return { z: stepValue(sheet, 'z'), spring: (stepValue(sheet, 'P') * float.area - 15) / 2e4 };
    };
    expect(z(2.2e-5).z).toBe(0);
    const middle = z(8e-5);
    expect(middle.z).toBeGreaterThan(0);
    expect(middle.z / middle.spring).toBeCloseTo(1, 9);
    expect(z(6e-4).z).toBe(0.2e-3);
  });
});
