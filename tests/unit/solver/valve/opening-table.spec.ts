import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { solveLift } from '../../../../src/solver/stack/solve-lift.ts';
import type { ConvergedLift, StackInput } from '../../../../src/solver/types.ts';
import { openingTable } from '../../../../src/solver/valve/opening-table.ts';
import type { LiftSolver } from '../../../../src/solver/valve/stack-samples.ts';
import { LINEAR_STACK_INPUT, type LinearStack, linearStack } from '../../../helpers/linear-stack.ts';
import { pressureErrors } from '../../../helpers/table-error.ts';

const upTo = (pressure_Pa: number) => (point: ConvergedLift) => point.pressure_Pa >= pressure_Pa;

const tableOf = (law: LinearStack, enough: (point: ConvergedLift) => boolean, log: number[] = []) =>
  openingTable(linearStack(law, log), LINEAR_STACK_INPUT, 'small-deflection', enough);

const PRELOADED: LinearStack = { compliance_m_Pa: 0.5e-9, crackingPressure_Pa: 137e3 };

const SPRING_STEEL = { youngsModulus_Pa: 206e9, poissonsRatio: 0.3 };
/** A preloaded two-stage stack of our own, diameters and thicknesses in mm. */
const TWO_STAGE: StackInput = {
  ...LINEAR_STACK_INPUT,
  seat: { ...LINEAR_STACK_INPUT.seat, height_m: 0.1e-3 },
  shims: [
    [30, 0.2],
    [30, 0.2],
    [18, 0.1],
    [27, 0.15],
    [24, 0.15],
    [20, 0.2],
  ].map(([diameter, thickness]) => ({
    outerRadius_m: diameter / 2000,
    thickness_m: thickness / 1000,
    ...SPRING_STEEL,
  })),
};

describe('openingTable', () => {
  it('finds the cracking pressure and stays on the seat below it', () => {
    const { crackingPressure_Pa, opening } = tableOf(PRELOADED, upTo(1e6));
    expect(crackingPressure_Pa / 137e3).toBeCloseTo(1, 6);
    expect(opening(136.9e3)).toBe(0);
    expect(opening(140e3)).toBeGreaterThan(0);
  });

  it('finds where a waved shim opens at its crests, while its troughs still press, from its opening', () => {
    const crest_Pa = 137e3;
    const partly: LiftSolver = (stack, pressures, theory) => {
      const { points } = linearStack({ ...PRELOADED, crackingPressure_Pa: crest_Pa })(stack, pressures, theory);
      // The troughs leave the seat at three times the pressure of the crests.
      const seatForce_N = (p: number) => 20 * Math.max(0, 1 - p / (3 * crest_Pa));
      return {
        theory,
        points: points.map((p) => (p.status === 'converged' ? { ...p, seatForce_N: seatForce_N(p.pressure_Pa) } : p)),
      };
    };
    const { crackingPressure_Pa } = openingTable(partly, LINEAR_STACK_INPUT, 'port-periodic', upTo(1e6));
    expect(Math.abs(crackingPressure_Pa / crest_Pa - 1)).toBeLessThan(0.003);
  });

  it('opens at once without preload, and at rest where the seat lies below the shim', () => {
    const free = tableOf({ compliance_m_Pa: 0.5e-9, crackingPressure_Pa: 0 }, upTo(1e6));
    expect(free.crackingPressure_Pa).toBe(0);
    expect(free.opening(1e3)).toBeCloseTo(0.5e-6, 12);
    const clear = tableOf({ compliance_m_Pa: 0.5e-9, crackingPressure_Pa: -50e3 }, upTo(1e6));
    expect(clear.opening(0)).toBeCloseTo(25e-6, 12);
  });

  it('never opens a stack that stays on its seat to the end', () => {
    const rigid = tableOf({ compliance_m_Pa: 1e-9, crackingPressure_Pa: 1e12 }, () => false);
    expect(rigid.crackingPressure_Pa).toBe(Number.POSITIVE_INFINITY);
    expect(rigid.opening(3e7)).toBe(0);
    expect(rigid.end).toMatchObject({
      status: 'beyond-table',
      reason: expect.stringContaining('30 MPa across the shims'),
    });
  });

  it('follows the law between its points, through the backing plate too', () => {
    const law = { ...PRELOADED, largestOpening_m: 0.3e-3 };
    const { opening } = tableOf(law, upTo(3e6));
    for (let p = 0; p <= 3e6; p += 5e3) {
      const wanted = Math.min(0.5e-9 * Math.max(p - 137e3, 0), 0.3e-3);
      expect(Math.abs(opening(p) - wanted)).toBeLessThan(0.02 * 0.3e-3);
    }
  });

  it.each(['small-deflection', 'large-deflection'] as const)(
    'keeps to a solved two-stage stack to a hundredth (%s)',
    (theory) => {
      const solve = (pressures: readonly number[]) =>
        solveLift(TWO_STAGE, pressures, { theory, landPressure: 'falling' });
      const { opening, crackingPressure_Pa } = openingTable((_, p) => solve(p), TWO_STAGE, theory, upTo(2e6));
      const pressures = Array.from({ length: 80 }, (_, i) => (2e6 * (i + 1)) / 80);
      for (const point of solve(pressures).points) {
        expect(point.status).toBe('converged');
        const { pressure_Pa, seatOpening_m } = point as ConvergedLift;
        expect(Math.abs(opening(pressure_Pa) - seatOpening_m)).toBeLessThan(0.01 * seatOpening_m + 1e-8);
      }
      const around = solve([crackingPressure_Pa * 0.995, crackingPressure_Pa * 1.005]).points as ConvergedLift[];
      expect(around[0].seatForce_N).toBeGreaterThan(0);
      expect(around[1].seatForce_N).toBeLessThan(1e-6);
      expect(around[1].seatOpening_m).toBeGreaterThan(0);
    },
  );

  it('finds a kink wherever it is: a stage that is reached, waves that begin', () => {
    const laws = fc.record({
      kink_Pa: fc.double({ min: 170e3, max: 2.9e6, noNaN: true }),
      softer: fc.constantFrom(0.3, 0.5, 2, 3),
      crackingPressure_Pa: fc.double({ min: 20e3, max: 150e3, noNaN: true }),
    });
    fc.assert(
      fc.property(laws, ({ kink_Pa, softer, crackingPressure_Pa }) => {
        const base = linearStack({ compliance_m_Pa: 0.3e-9, crackingPressure_Pa });
        const kinked: LiftSolver = (stack, pressures, theory) => {
          const beyond = (p: number) => 0.3e-9 * (softer - 1) * Math.max(0, p - kink_Pa);
          const points = base(stack, pressures, theory).points as readonly ConvergedLift[];
          return {
            theory,
            points: points.map((each) => ({ ...each, seatOpening_m: each.seatOpening_m + beyond(each.pressure_Pa) })),
          };
        };
        const { opening } = openingTable(kinked, LINEAR_STACK_INPUT, 'large-deflection', upTo(3e6));
        const dense = Array.from(
          { length: 200 },
          (_, i) => crackingPressure_Pa * (3e6 / crackingPressure_Pa) ** (i / 199),
        );
        const points = kinked(LINEAR_STACK_INPUT, dense, 'large-deflection').points as readonly ConvergedLift[];
        expect(Math.max(...pressureErrors(opening, points.slice(1)))).toBeLessThan(0.01);
      }),
      { numRuns: 60 },
    );
  });

  it.each(['large-deflection', 'port-periodic'] as const)(
    'keeps to a stack whose second stage comes late (%s)',
    (theory) => {
      const shims = [
        [30, 0.15],
        [30, 0.15],
        [30, 0.15],
        [17, 0.1],
        [29, 0.25],
        [25, 0.25],
        [23, 0.15],
        [15, 0.3],
      ].map(([diameter, thickness]) => ({
        outerRadius_m: diameter / 2000,
        thickness_m: thickness / 1000,
        ...SPRING_STEEL,
      }));
      const stack = { ...LINEAR_STACK_INPUT, seat: { ...LINEAR_STACK_INPUT.seat, height_m: 0.05e-3 }, shims };
      const solve = (pressures: readonly number[]) => solveLift(stack, pressures, { theory, landPressure: 'falling' });
      const { opening, table } = openingTable((_, p) => solve(p), stack, theory, upTo(1.5e6));
      expect(table.points.length).toBeLessThanOrEqual(28);
      const points = solve(Array.from({ length: 60 }, (_, i) => (1.5e6 * (i + 1)) / 60))
        .points as readonly ConvergedLift[];
      expect(Math.max(...pressureErrors(opening, points))).toBeLessThan(0.01);
    },
  );

  it('ends soon after the flow that is wanted', () => {
    const wanted_Pa = 1.1e6;
    const { table } = tableOf(PRELOADED, upTo(wanted_Pa));
    expect(table.pressure_Pa.at(-1)).toBeGreaterThanOrEqual(wanted_Pa);
    expect(table.pressure_Pa.at(-1)).toBeLessThan(1.4 * wanted_Pa);
  });

  it('costs few points and few solves beside them where the law has but one kink', () => {
    const log: number[] = [];
    const { table } = tableOf({ ...PRELOADED, largestOpening_m: 0.3e-3 }, upTo(3e6), log);
    expect(table.points.length).toBeLessThanOrEqual(24);
    expect(log.length).toBeLessThanOrEqual(table.points.length + 4);
    expect(new Set(log).size).toBe(log.length);
  });

  it('ends before a pressure that does not solve, keeps the failure and says why', () => {
    const { table, end } = tableOf({ ...PRELOADED, failsAbove_Pa: 2.2e6 }, upTo(2.5e6));
    expect(end).toMatchObject({ status: 'not-converged', reason: expect.stringContaining('asked to fail') });
    expect(table.failures[0]).toMatchObject({ status: 'not-converged', reason: 'asked to fail' });
    expect(table.pressure_Pa.at(-1)).toBeGreaterThan(1.5e6);
    expect(table.pressure_Pa.at(-1)).toBeLessThanOrEqual(2.2e6);
  });

  it('reaches a flow that lies just below a failure', () => {
    const { end, table } = tableOf({ ...PRELOADED, failsAbove_Pa: 2.2e6 }, upTo(1.6e6));
    expect(end.status).toBe('reached');
    expect(table.failures).toEqual([]);
  });

  it('is empty when not even rest solves', () => {
    const { table, end } = tableOf({ ...PRELOADED, failsAbove_Pa: -1 }, upTo(1e6));
    expect(table.points).toEqual([]);
    expect(end.status).toBe('not-converged');
  });

  /** Lifts by 5 nm/Pa, of which the hub rises by a share. */
  const liftingTable = (shareOfHub: number) => {
    const solve = linearStack(PRELOADED);
    const lifting: LiftSolver = (stack, pressures, theory) => {
      const { points } = solve(stack, pressures, theory);
      const lift = (p: number) => ({ faceEdgeLift_m: 5e-9 * p, hubRise_m: shareOfHub * 5e-9 * p });
      return { theory, points: points.map((point) => ({ ...(point as ConvergedLift), ...lift(point.pressure_Pa) })) };
    };
    return openingTable(lifting, LINEAR_STACK_INPUT, 'small-deflection', () => false);
  };

  it('goes on where the face shim rises with its floating hub and does not bend', () => {
    const { end, table } = liftingTable(1);
    expect(end).toMatchObject({ reason: expect.stringContaining('does not pass') });
    expect(table.pressure_Pa.at(-1)).toBe(3e7);
  });

  it('ends where the face shim bends beyond what a thin plate can', () => {
    const { end, table } = liftingTable(0);
    expect(end).toMatchObject({ status: 'beyond-table', reason: expect.stringContaining('free width') });
    expect(table.pressure_Pa.at(-1)).toBeLessThan(3e6);
  });

  it('rises wherever the stack rises', () => {
    const laws = fc.record({
      compliance_m_Pa: fc.double({ min: 1e-11, max: 5e-9, noNaN: true }),
      crackingPressure_Pa: fc.double({ min: 0, max: 5e6, noNaN: true }),
      largestOpening_m: fc.double({ min: 1e-5, max: 1e-2, noNaN: true }),
    });
    fc.assert(
      fc.property(laws, (law) => {
        const { opening, table } = tableOf(law, upTo(1e7));
        const top = table.pressure_Pa.at(-1) as number;
        const curve = Array.from({ length: 300 }, (_, i) => opening((top * i) / 299));
        for (let i = 1; i < curve.length; i++) expect(curve[i]).toBeGreaterThanOrEqual(curve[i - 1] - 1e-15);
        expect(curve[299]).toBeCloseTo(
          Math.min(law.compliance_m_Pa * (top - law.crackingPressure_Pa), law.largestOpening_m),
          12,
        );
      }),
      { numRuns: 50 },
    );
  });
});
