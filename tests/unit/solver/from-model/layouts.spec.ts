import { describe, expect, it } from 'vitest';
import { damperFromProject } from '../../../../src/solver/from-model.ts';
import { soundCartridge } from '../../../helpers/documents.ts';

const DAMPER = damperFromProject(soundCartridge(), 'as-found');
const relative = (got: number, wanted: number) => Math.abs(got / wanted - 1);

// Source of the numbers: own arithmetic with the sizes of the fixture.
describe('a cartridge of a document', () => {
  it('carries its sizes over in SI', () => {
    expect(DAMPER).toMatchObject({
      layout: 'cartridge',
      legDiameter_m: 0.043,
      endClearance_m: 0.012,
      stroke_m: 0.125,
      friction: { sliding_N: 20, breakaway_N: 35, stribeckSpeed_m_s: 0.02, viscous_N_s_m: 15 },
      pistonBand: { clearance_m: 0.02e-3, length_m: 0.008, eccentricity: 0.5 },
      hydraulicStop: { end: 'compression', length_m: 0.03, plungerDiameter_m: 0.018, clearance_m: 0.3e-3 },
      compression: { ports: { count: 4, coveredFraction: 0.8 } },
    });
    expect(DAMPER.rebound.ports).not.toHaveProperty('coveredFraction');
  });

  it('carries the base valve over, with what beside it passes', () => {
    const { base } = DAMPER;
    expect(base?.compression.stack.shims).toHaveLength(4);
    expect(base?.compression.stack.seat).toMatchObject({ innerRadius_m: 0.009, outerRadius_m: 0.0095 });
    expect(base?.refill).toMatchObject({
      ports: { count: 6, hydraulicDiameter_m: 0.0035 },
      seat: { innerRadius_m: 0.007, outerRadius_m: 0.011 },
      rate_N_m: 500,
      preload_N: 1,
      travel_m: 0.0015,
    });
    expect(base?.bleed?.needle?.travel_m).toBeCloseTo(0.8e-3, 12);
  });

  it('turns clicks from closed into preload: travel of a click times rate comes off', () => {
    // 60 - 3 x 0.1 x 8 = 57.6 N; 40 - 6 x 0.05 x 20 = 34 N.
    expect(DAMPER.base?.poppet).toMatchObject({ seatDiameter_m: 0.005, rate_N_m: 8000, travel_m: 0.0015 });
    expect(DAMPER.base?.poppet?.preload_N).toBeCloseTo(57.6, 9);
    expect(DAMPER.base?.poppet?.coneAngle_rad).toBeCloseTo(Math.PI / 3, 12);
    expect(DAMPER.rebound.stack.coilSpring?.preload_N).toBeCloseTo(34, 9);
  });

  it('has its air at mid-stroke by the oil level, or by the oil poured in, and a floating piston that holds a pressure', () => {
    // 171.634 - 60 + 363.050 mL extended, 181.525 mL less at half of 250 mm; 101 325 Pa (474.683/293.158)^1.3.
    expect(relative(DAMPER.gas.volume_m3, 293.158211e-6)).toBeLessThan(1e-6);
    expect(relative(DAMPER.gas.absolutePressure_Pa, 189587.2568)).toBeLessThan(1e-6);
    expect(relative(DAMPER.gas.separatorFriction_Pa, 16976.527)).toBeLessThan(1e-6);
    const { airGap: _, ...gas } = soundCartridge().gas;
    const oilFill = { oilVolume_mL: 380, legVolume_mL: 600, insertedVolume_mL: 40 };
    const filled = damperFromProject({ ...soundCartridge(), gas: { ...gas, oilFill } }, 'as-found', 0);
    expect(relative(filled.gas.volume_m3, 543.050301e-6)).toBeLessThan(1e-6);
    expect(filled.gas.absolutePressure_Pa).toBeCloseTo(101325, 6);
  });

  it('has no base valve without all of its parts', () => {
    const { refillCheck: _, ...damper } = soundCartridge().damper;
    expect(() => damperFromProject({ ...soundCartridge(), damper }, 'as-found')).toThrow(
      expect.objectContaining({
        fault: expect.objectContaining({ code: 'damper.base.none', path: 'damper.refillCheck' }),
      }),
    );
  });
});
