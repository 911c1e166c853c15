import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { ValveInput } from '../../../../src/solver/damper/types.ts';
import { DEFAULT_COEFFICIENTS } from '../../../../src/solver/restriction/coefficients.ts';
import { curtain } from '../../../../src/solver/restriction/curtain.ts';
import { drilledHole } from '../../../../src/solver/restriction/drilled-hole.ts';
import { stackPath } from '../../../../src/solver/valve/stack-path.ts';
import { MONOTUBE } from '../../../helpers/monotube.ts';

const { fluid, compression: valve } = MONOTUBE;
const RHO = fluid.density_kg_m3;
const PORTS_M2 = 88e-6;
const ZONE_M2 = Math.PI * (13.8e-3 ** 2 - 8.25e-3 ** 2);
const OPENING_M = 0.15e-3;

const covering = (coveredFraction: number): ValveInput => ({ ...valve, ports: { ...valve.ports, coveredFraction } });
const path = (portMomentum: number, input: ValveInput = valve) =>
  stackPath(input, fluid, { ...DEFAULT_COEFFICIENTS, portMomentum });
const relative = (got: number, wanted: number) => Math.abs(got / wanted - 1);
const value = (solved: { status: string }) => (solved as unknown as { value: number }).value;

describe('the path under the shims', () => {
  it('is the curtain at the mean pressure itself where ports open all round and their jets do not count', () => {
    const land = { ...valve.stack.seat, gap_m: OPENING_M };
    for (const input of [valve, covering(1)]) {
      const { shimDrop_Pa, curtain_m3_s, portDrop_Pa } = path(0, input).at(4e5, OPENING_M);
      expect(shimDrop_Pa).toBe(4e5);
      expect(curtain_m3_s).toBe(value(curtain(land, fluid, DEFAULT_COEFFICIENTS.jetDischarge).flow(4e5)));
      expect(portDrop_Pa).toBe(value(drilledHole(valve.ports, fluid, DEFAULT_COEFFICIENTS).drop(curtain_m3_s)));
    }
  });

  it('needs twice the pressure across the shims when ports cover half of the circumference', () => {
    // Source: own arithmetic. Mean 0.4 MPa is 0.8 MPa on the covered half; 0.8e6 = 2 a Q + 4 b Q2 with a 2.716566e8, b 5.0911506e12.
    const { shimDrop_Pa, curtain_m3_s } = path(0, covering(0.5)).at(4e5, OPENING_M);
    expect(shimDrop_Pa).toBe(8e5);
    expect(relative(curtain_m3_s, 1.853102906e-4)).toBeLessThan(1e-6);
  });

  it('is pressed on by the jets of its ports: 809 Pa of 0.4 MPa by half of their momentum', () => {
    // Source: own arithmetic, 0.4e6 = a Q + (b + c) Q2 with c = 0.5 * 844 / (88e-6 * 384.460e-6) = 1.247321e10.
    const { shimDrop_Pa, curtain_m3_s } = path(0.5).at(4e5, OPENING_M);
    expect(relative(curtain_m3_s, 2.546046767651983e-4)).toBeLessThan(1e-9);
    expect(relative(4e5 - shimDrop_Pa, 808.557820458619)).toBeLessThan(1e-9);
  });

  it('closes the balance of momentum between the port exits and the shim', () => {
    // Source: momentum theorem; the oil comes in along the axis through the ports and leaves across it.
    for (const [k, phi] of [
      [1, 1],
      [0.5, 0.6],
      [0.3, 0.3],
    ]) {
      const { shimDrop_Pa, curtain_m3_s: Q } = path(k, covering(phi)).at(4e5, OPENING_M);
      const force = phi * ZONE_M2 * shimDrop_Pa + (k * RHO * Q * Q) / PORTS_M2;
      expect(relative(force, 4e5 * ZONE_M2)).toBeLessThan(1e-9);
    }
  });

  it('gets no more than the dynamic head from ports as wide as their share of the zone', () => {
    // Source: own arithmetic. 88 mm2 of ports fill a share 0.2289 of the zone; with k = 1 the head would count twice.
    const phi = PORTS_M2 / ZONE_M2;
    const { shimDrop_Pa, curtain_m3_s: Q } = path(1, covering(phi)).at(4e5, OPENING_M);
    expect(relative(4e5 / phi - shimDrop_Pa, (RHO / 2) * (Q / PORTS_M2) ** 2)).toBeLessThan(1e-9);
    expect(path(0.5, covering(phi)).at(4e5, OPENING_M)).toEqual(path(1, covering(phi)).at(4e5, OPENING_M));
  });

  it('counts the jets of ports in front of notches too', () => {
    const notched = { ...valve, notches: { count: 3, width_m: 1.5e-3 } };
    for (const h of [0, OPENING_M]) {
      const flow = path(1, notched).at(4e5, h);
      const Q = flow.curtain_m3_s + flow.notches_m3_s;
      expect(relative(ZONE_M2 * flow.shimDrop_Pa + (RHO * Q * Q) / PORTS_M2, 4e5 * ZONE_M2)).toBeLessThan(1e-9);
      expect(flow.notches_m3_s).toBeGreaterThan(0);
      const without = path(0, notched).at(flow.shimDrop_Pa, h);
      expect(relative(flow.notches_m3_s, without.notches_m3_s)).toBeLessThan(1e-12);
    }
  });

  it('lets nothing through while the stack is shut, whatever presses', () => {
    expect(path(0.5, covering(0.4)).at(1e5, 0)).toMatchObject({ shimDrop_Pa: 2.5e5, portDrop_Pa: 0, curtain_m3_s: 0 });
  });

  it('passes more and takes more the further the pressure opens it, whatever share is covered', () => {
    const unit = (min: number) => fc.double({ min, max: 1, noNaN: true });
    const pressure = fc.double({ min: Math.log(1e3), max: Math.log(1e7), noNaN: true }).map(Math.exp);
    fc.assert(
      fc.property(unit(0.05), unit(0), pressure, unit(0.001), fc.nat(3), (phi, k, P, more, count) => {
        const notches = count > 0 ? { notches: { count, width_m: 1e-3 } } : {};
        const model = path(k, { ...covering(phi), ...notches });
        const opening = (pressure: number) => 4e-10 * pressure;
        const [low, high] = [P, P * (1 + more)].map((pressure) => model.at(pressure, opening(pressure)));
        expect(high.curtain_m3_s).toBeGreaterThan(low.curtain_m3_s);
        expect(high.shimDrop_Pa + high.portDrop_Pa).toBeGreaterThan(low.shimDrop_Pa + low.portDrop_Pa);
      }),
    );
  });

  it('keeps the balance of momentum however small its ports are beside its notches', () => {
    // The square of the flow would balance against a suction under the shims too: a second root, which is none.
    const [phi, A] = [0.6094, 0.1696e-6];
    const ports = { count: 4, area_m2: A, hydraulicDiameter_m: 0.4647e-3, length_m: 9.667e-3, coveredFraction: phi };
    const pressureZone = { innerRadius_m: 7.685e-3, outerRadius_m: 7.697e-3 };
    const seat = { innerRadius_m: 7.697e-3, outerRadius_m: 7.699e-3, height_m: 0 };
    const stack = { ...valve.stack, pressureZone, seat, shims: [{ ...valve.stack.shims[0], thickness_m: 0.1732e-3 }] };
    const thin = { density_kg_m3: 1117, dynamicViscosity_Pa_s: 0.3514e-3 };
    const notches = { count: 6, width_m: 2.512e-3 };
    const narrow = stackPath({ ...valve, ports, stack, notches }, thin, DEFAULT_COEFFICIENTS);
    for (let i = 0; i < 4000; i++) {
      const P = 0.02 * 1.0008 ** i;
      const { shimDrop_Pa, notches_m3_s: Q } = narrow.at(P, 0);
      expect(shimDrop_Pa).toBeGreaterThan(0);
      // Ports as wide as their share of the zone: their dynamic head.
      expect(relative(phi * (shimDrop_Pa + (1117 / 2) * (Q / (4 * A)) ** 2), P)).toBeLessThan(1e-9);
    }
  });

  it('has no flow where the opening is no number, rather than that of a closed one', () => {
    for (const notches of [{}, { notches: { count: 3, width_m: 1e-3 } }]) {
      expect(path(0.5, { ...valve, ...notches }).at(1e5, Number.NaN).curtain_m3_s).toBeNaN();
    }
  });
});
