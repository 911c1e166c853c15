import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { DEFAULT_COEFFICIENTS } from '../../../../src/solver/restriction/coefficients.ts';
import { poppet } from '../../../../src/solver/restriction/poppet.ts';
import {
  tableReaching,
  type ValvePoint,
  type ValveSetting,
  valveOn,
} from '../../../../src/solver/valve/explicit-valve.ts';
import { stackPath } from '../../../../src/solver/valve/stack-path.ts';
import type { LiftSolver } from '../../../../src/solver/valve/stack-samples.ts';
import { linearStack } from '../../../helpers/linear-stack.ts';
import { SETTING, STACK } from '../../../helpers/valve-setting.ts';

const { fluid, valve } = SETTING;

describe('the inversion of a valve', () => {
  it('gives at every flow what a search over its whole table gives', () => {
    const share = fc.double({ min: 0.1, max: 1, noNaN: true });
    const flow = fc.double({ min: Math.log(1e-8), max: Math.log(1e-3), noNaN: true }).map(Math.exp);
    const law = fc.record({
      compliance_m_Pa: fc.constantFrom(1e-11, 0.5e-9, 1e-7),
      crackingPressure_Pa: fc.constantFrom(0, 3e4, 1e6),
    });
    fc.assert(
      fc.property(share, flow, law, fc.nat(2), fc.boolean(), (coveredFraction, Q, stack, count, relieved) => {
        const cone = { seatDiameter_m: 5e-3, coneAngle_rad: 1.2, rate_N_m: 30e3, preload_N: 8, travel_m: 1e-3 };
        const poppets = relieved ? { poppet: poppet(cone, fluid, DEFAULT_COEFFICIENTS) } : {};
        const notches = count > 0 ? { notches: { count, width_m: 1e-3 } } : {};
        const ports = { ...valve.ports, coveredFraction };
        const changed: ValveSetting = { ...SETTING, ...poppets, valve: { ...valve, ...notches, ports } };
        const table = tableReaching(linearStack(stack), [changed], 'small-deflection', 1e-3);
        const on = valveOn(table, changed);
        const point = on.atFlow(Q);
        if (point.status !== 'converged') return expect(table.end.status).not.toBe('reached');
        // The same equations by plain bisection of the mean pressure on the zone.
        const path = stackPath(changed.valve, fluid, DEFAULT_COEFFICIENTS);
        let [low, high] = [0, table.table.pressure_Pa.at(-1) ?? 0];
        for (let step = 0; step < 100; step++) {
          const P = (low + high) / 2;
          const { curtain_m3_s, notches_m3_s, shimDrop_Pa, portDrop_Pa } = path.at(P, table.opening(P));
          const beside = [changed.bleed, changed.poppet].map((other) => other?.flow(shimDrop_Pa + portDrop_Pa));
          const beside_m3_s = beside.reduce((sum, solved) => sum + ((solved as { value: number })?.value ?? 0), 0);
          if (curtain_m3_s + notches_m3_s + beside_m3_s < Q) low = P;
          else high = P;
        }
        expect(Math.abs(point.shimPressure_Pa / high - 1)).toBeLessThan(1e-9);
        const back = on.atDrop(point.drop_Pa) as ValvePoint;
        expect(Math.abs(back.shimPressure_Pa / high - 1)).toBeLessThan(1e-9);
      }),
    );
  });

  it('ends where a stack closes under more pressure, and says that it would have several states', () => {
    const closing: LiftSolver = (input, pressures, theory) => {
      const { points } = linearStack(STACK)(input, pressures, theory);
      return {
        theory,
        points: points.map((p) =>
          p.status === 'converged' && p.pressure_Pa > 5e5 ? { ...p, seatOpening_m: 1e-5 } : p,
        ),
      };
    };
    const on = valveOn(tableReaching(closing, [SETTING], 'small-deflection', 1e-2), SETTING);
    expect(on.fallsFrom_Pa).toBeGreaterThan(3e5);
    expect(on.fallsFrom_Pa).toBeLessThan(1e6);
    expect(on.atFlow(1e-4)).toMatchObject({ status: 'converged' });
    expect(on.atFlow(5e-3)).toMatchObject({
      status: 'beyond-table',
      reason: expect.stringContaining('several states'),
    });
    expect(on.atDrop(2e6)).toMatchObject({ status: 'beyond-table', reason: expect.stringContaining('several states') });
    const rising = valveOn(tableReaching(linearStack(STACK), [SETTING], 'small-deflection', 1e-3), SETTING);
    expect(rising).not.toHaveProperty('fallsFrom_Pa');
  });
});
