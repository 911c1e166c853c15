/** Laws that hold for every valve with a stack, from sizes of the trade to sizes nobody would make: an answer, or a reason. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { totalFlow } from '../../src/solver/damper/path-flows.ts';
import type { FluidState, ValveInput } from '../../src/solver/damper/types.ts';
import { annularGap } from '../../src/solver/restriction/annular-gap.ts';
import { closedPath } from '../../src/solver/restriction/closed.ts';
import {
  COEFFICIENT_TABLE,
  type CoefficientName,
  type Coefficients,
} from '../../src/solver/restriction/coefficients.ts';
import { drilledHole } from '../../src/solver/restriction/drilled-hole.ts';
import { needleGap } from '../../src/solver/restriction/needle.ts';
import { poppet } from '../../src/solver/restriction/poppet.ts';
import { roundHoles } from '../../src/solver/restriction/round-holes.ts';
import { series } from '../../src/solver/restriction/series.ts';
import { tableReaching, type ValveSetting, valveOn } from '../../src/solver/valve/explicit-valve.ts';
import { type LinearStack, linearStack } from '../helpers/linear-stack.ts';
import { MONOTUBE } from '../helpers/monotube.ts';

const unit = fc.double({ min: 0, max: 1, noNaN: true });
const log = (min: number, max: number) =>
  fc.double({ min: Math.log(min), max: Math.log(max), noNaN: true }).map(Math.exp);
const maybe = <T>(item: fc.Arbitrary<T>) => fc.option(item, { nil: undefined });

const holes = fc
  .record({ count: fc.integer({ min: 1, max: 12 }), diameter_m: log(2e-4, 2e-2), length_m: log(1e-4, 0.1) })
  .map(roundHoles);
const fluids: fc.Arbitrary<FluidState> = fc.record({
  density_kg_m3: log(600, 1200),
  dynamicViscosity_Pa_s: log(5e-4, 50),
});

/** Every coefficient within its band. */
const coefficientSets: fc.Arbitrary<Coefficients> = fc
  .tuple(unit, unit, unit, unit)
  .map(([jet, edge, long, momentum]) => {
    const within = (name: CoefficientName, share: number) =>
      COEFFICIENT_TABLE[name].low + share * (COEFFICIENT_TABLE[name].high - COEFFICIENT_TABLE[name].low);
    return {
      jetDischarge: within('jetDischarge', jet),
      sharpEdgeDischarge: within('sharpEdgeDischarge', edge),
      longOrificeFactor: within('longOrificeFactor', long),
      portMomentum: within('portMomentum', momentum),
      airReleasePressure_Pa: COEFFICIENT_TABLE.airReleasePressure_Pa.value,
    };
  });

const bodies: fc.Arbitrary<ValveInput> = fc
  .record({
    ports: holes,
    coveredFraction: maybe(fc.double({ min: 0.02, max: 1, noNaN: true })),
    notches: maybe(fc.record({ count: fc.integer({ min: 1, max: 8 }), width_m: log(1e-5, 4e-3) })),
    land_m: log(1e-6, 2e-3),
    zone_m: log(1e-4, 6e-3),
    thickness_m: log(5e-5, 4e-4),
  })
  .map(({ ports, coveredFraction, notches, land_m, zone_m, thickness_m }) => {
    const { stack } = MONOTUBE.compression;
    const outer = stack.pressureZone.outerRadius_m;
    return {
      ports: { ...ports, ...(coveredFraction && { coveredFraction }) },
      ...(notches && { notches }),
      stack: {
        ...stack,
        shims: [{ ...stack.shims[0], outerRadius_m: outer + land_m, thickness_m }],
        pressureZone: { innerRadius_m: outer - zone_m, outerRadius_m: outer },
        seat: { innerRadius_m: outer, outerRadius_m: outer + land_m, height_m: 0 },
      },
    };
  });

const beside = fc.record({
  bleed: maybe(holes),
  needle: maybe(
    fc.record({ coneAngle_rad: fc.double({ min: 0.1, max: 2.5, noNaN: true }), travel_m: log(1e-6, 2e-2) }),
  ),
  band: maybe(fc.record({ clearance_m: log(2e-6, 1e-3), length_m: log(1e-3, 5e-2), eccentricity: unit })),
  cone: maybe(
    fc.record({
      seatDiameter_m: log(2e-3, 2e-2),
      coneAngle_rad: fc.double({ min: 0.1, max: 2.5, noNaN: true }),
      rate_N_m: log(100, 1e6),
      preload_N: fc.oneof(fc.constant(0), log(0.01, 500)),
      travel_m: log(1e-5, 1e-2),
    }),
  ),
});

const settings: fc.Arbitrary<ValveSetting> = fc
  .record({ valve: bodies, beside, fluid: fluids, coefficients: coefficientSets })
  .map(({ valve, beside: { bleed, needle, band, cone }, fluid, coefficients }) => {
    const hole = bleed ? drilledHole(bleed, fluid, coefficients) : closedPath;
    const gap = bleed && needle && { holeDiameter_m: bleed.hydraulicDiameter_m, ...needle };
    return {
      valve,
      fluid,
      coefficients,
      bleed: gap ? series(hole, needleGap(gap, fluid, coefficients.sharpEdgeDischarge)) : hole,
      leakage: band ? annularGap({ outerDiameter_m: 44e-3, ...band }, fluid) : closedPath,
      ...(cone && { poppet: poppet(cone, fluid, coefficients) }),
    };
  });

const laws: fc.Arbitrary<LinearStack> = fc.record({
  compliance_m_Pa: log(1e-12, 1e-8),
  crackingPressure_Pa: fc.oneof(fc.constant(0), log(1e3, 1e7)),
  largestOpening_m: log(2e-5, 5e-3),
});

/** Drops at rising flows, as far as the valve answers; flows that do not add up and words that say nothing fail here. */
function dropsOf(law: LinearStack, setting: ValveSetting, largest: number): number[] {
  const on = valveOn(tableReaching(linearStack(law), [setting], 'small-deflection', largest), setting);
  return Array.from({ length: 25 }, (_, i) => largest * 10 ** (-6 + i / 4)).flatMap((Q) => {
    const point = on.atFlow(Q);
    if (point.status !== 'converged') {
      expect(point.status).toBe('beyond-table');
      expect(point.reason).toMatch(/ (MPa|L\/s)/);
      return [];
    }
    expect(Math.min(...Object.values(point.flows))).toBeGreaterThanOrEqual(0);
    expect(Math.abs(totalFlow(point.flows) / Q - 1)).toBeLessThan(1e-6);
    // Near the cracking pressure a drop tells a flow no better than its rounding does.
    const back = on.atDrop(point.drop_Pa);
    if (back.status !== 'converged') throw new Error(`no flow at the drop of one: ${back.reason}`);
    expect(Math.abs(totalFlow(back.flows) / Q - 1)).toBeLessThan(1e-3);
    return [point.drop_Pa];
  });
}

const isRising = (drops: readonly number[]): boolean =>
  drops.every((drop, i) => drop > 0 && (i === 0 || drop >= drops[i - 1] * (1 - 1e-9)));

describe('every valve', () => {
  it('answers each flow with paths that carry it and with ever more pressure, or says what it is known up to', () => {
    fc.assert(
      fc.property(settings, laws, log(1e-6, 5e-3), (setting, law, largest) => {
        expect(isRising(dropsOf(law, setting, largest))).toBe(true);
      }),
      { numRuns: 300 },
    );
  });
});
