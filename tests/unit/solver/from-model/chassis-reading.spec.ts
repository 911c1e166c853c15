import { describe, expect, it } from 'vitest';
import type { Chassis } from '../../../../src/model/project.ts';
import { validateProject } from '../../../../src/model/validate.ts';
import { type ChassisQuestion, chassisReading, wantedCurve } from '../../../../src/solver/index.ts';
import { soundProject } from '../../../helpers/documents.ts';

/** One end of an invented machine: 20 N/mm over a ratio of 0.5, 45 kg and 45 kg, 120 mm. */
const CHASSIS: Chassis = {
  vehicleSprungMass_kg: 45,
  riderSprungMass_kg: 45,
  unsprungMass_kg: 20,
  wheelTravel_mm: 120,
  motionRatio: { kind: 'constant', shaftPerWheel: 0.5 },
  spring: { kind: 'coil', rate_N_mm: 60, preload_mm: 10 },
};

const withChassis = (chassis: Chassis) => ({ ...soundProject(), chassis });
const none: ChassisQuestion = { curves: {} };

function read(chassis: Chassis, question = none) {
  const reading = chassisReading(withChassis(chassis), question);
  if (reading.status !== 'read' || 'reason' in reading.swing) throw new Error('it was not read');
  return { ...reading, swing: reading.swing };
}

describe('chassisReading', () => {
  it('names what is missing', () => {
    expect(chassisReading(withChassis({}), none)).toEqual({
      status: 'incomplete',
      missing: ['vehicleSprungMass_kg', 'wheelTravel_mm', 'motionRatio', 'spring'],
    });
    const { spring: _s, ...rest } = CHASSIS;
    const air = { pistonDiameter_mm: 30, gaugePressure_bar: 8, airLength_mm: 120, polytropicExponent: 1.2 };
    expect(chassisReading(withChassis({ ...rest, airSpring: air }), none).status).toBe('read');
  });

  // The damper has 10 bar over 90 mL behind a rod of 16 mm: 10 bar * 201.06 mm2 = 201.06 N at full extension.
  it('counts the gas of each damper among the springs', () => {
    const spring = { kind: 'coil', rate_N_mm: 60, preload_mm: 0 } as const;
    const extended = (damperCount: number): number =>
      read({ ...CHASSIS, spring, damperCount }, { ...none, wheelTravel_mm: 0 }).swing.state.springForce_N;
    expect(extended(1)).toBeCloseTo(0.5 * 201.06, 1);
    expect(extended(2)).toBeCloseTo(2 * 0.5 * 201.06, 1);
  });

  it('reads static and laden sag, and swings at the laden one unless told where', () => {
    const { staticSag, ladenSag, swing, fullTravel } = read(CHASSIS);
    if (!('state' in staticSag && 'state' in ladenSag)) throw new Error('no sag');
    expect(staticSag.state.uprightForce_N).toBeCloseTo(45 * 9.80665, 4);
    expect(ladenSag.state.uprightForce_N).toBeCloseTo(90 * 9.80665, 4);
    expect(swing.state.wheelTravel_m).toBe(ladenSag.state.wheelTravel_m);
    expect(read(CHASSIS, { ...none, wheelTravel_mm: 30 }).swing.state.wheelTravel_m).toBe(0.03);
    expect(fullTravel.link.shaftTravel_m).toBeCloseTo(0.06, 12);
  });

  it('doubles the wheel rate of two springs and tells the wheel in the air', () => {
    const one = read(CHASSIS, { ...none, wheelTravel_mm: 0 }).swing;
    const two = read({ ...CHASSIS, springCount: 2 }, { ...none, wheelTravel_mm: 0 }).swing;
    expect(two.state.wheelRate_N_m - one.state.wheelRate_N_m).toBeCloseTo(60_000 * 0.25, 6);
    const frequencies = [one.vibration, one.wheelInAir].map((v) => v?.status === 'swings' && v.naturalFrequency_Hz);
    expect(Number(frequencies[1]) / Number(frequencies[0])).toBeCloseTo(Math.sqrt(90 / 20), 9);
    const { unsprungMass_kg: _u, ...rest } = CHASSIS;
    expect(read(rest).swing).not.toHaveProperty('wheelInAir');
  });

  it('puts forces and speeds of the shaft at the wheel, with the power unchanged', () => {
    const curves = { a: { shaftSpeed_m_s: [-0.4, 0.2], force_N: [-300, 100] } };
    for (const change of [{}, { legAngle_deg: 25, damperCount: 2 }]) {
      const { a } = read({ ...CHASSIS, ...change }, { curves, wheelTravel_mm: 40 }).swing.builds;
      const dampers = 'damperCount' in change ? 2 : 1;
      expect(Number(a.wheelForce_N[0]) * a.wheelSpeed_m_s[0]).toBeCloseTo(dampers * 120, 9);
      expect(a.wheelSpeed_m_s[1] * Math.sign(Number(a.wheelForce_N[1]))).toBeGreaterThan(0);
    }
    expect(read(CHASSIS, { curves }).swing.builds.a.wheelSpeed_m_s).toEqual([-0.8, 0.4]);
  });
});

describe('wantedCurve', () => {
  const goal = { lowSpeedRatio: 0.6, highSpeedRatio: 0.2, kneeSpeed_m_s: 0.2 };
  const wish = { wheelTravel_mm: 30, compression: { ...goal, lowSpeedRatio: 0.3 }, rebound: goal };

  it('gives back, as a damping ratio, what was asked for', () => {
    const speeds_m_s = [-0.3, -0.25, -0.1, 0.1, 0.15];
    const project = withChassis(CHASSIS);
    const wanted = wantedCurve(project, { ...wish, speeds_m_s });
    if (wanted.status !== 'wanted') throw new Error(wanted.status);
    const curves = { aim: { shaftSpeed_m_s: speeds_m_s, force_N: wanted.force_N } };
    const { aim } = read(CHASSIS, { curves, wheelTravel_mm: 30 }).swing.builds;
    expect(aim.secant[2]).toBeCloseTo(0.6, 9);
    expect(aim.secant[3]).toBeCloseTo(0.3, 9);
    const [far, near] = [0, 1].map((i) => wanted.force_N[i]);
    const slope = (far - near) / (speeds_m_s[0] - speeds_m_s[1]);
    expect(slope / (wanted.force_N[2] / speeds_m_s[2])).toBeCloseTo(0.2 / 0.6, 9);
  });

  it('says what is missing, or that nothing swings', () => {
    const speeds_m_s = [0.1];
    expect(wantedCurve(withChassis({}), { ...wish, speeds_m_s }).status).toBe('incomplete');
    const falling: Chassis['motionRatio'] = {
      kind: 'table',
      points: [
        { wheelTravel_mm: 0, shaftPerWheel: 0.9 },
        { wheelTravel_mm: 60, shaftPerWheel: 0.05 },
      ],
    };
    const spring = { kind: 'coil', rate_N_mm: 5, preload_mm: 60 } as const;
    const project = withChassis({ ...CHASSIS, motionRatio: falling, spring });
    expect(wantedCurve(project, { ...wish, speeds_m_s })).toEqual({ status: 'no-swing' });
  });
});

describe('the chassis of a document', () => {
  const codes = (chassis: object): string[] => {
    const checked = validateProject({ ...soundProject(), chassis });
    return checked.ok ? [] : checked.faults.map(({ code, path }) => `${code} ${path}`);
  };
  const table = (points: object[]) => ({ kind: 'table', points });
  const at = (wheelTravel_mm: number, shaftPerWheel = 0.5) => ({ wheelTravel_mm, shaftPerWheel });
  const point = (compression_mm: number, force_N: number) => ({ compression_mm, force_N });

  it('may be empty, and keeps what it does not know', () => {
    expect(codes({})).toEqual([]);
    expect(codes(CHASSIS)).toEqual([]);
    const checked = validateProject({ ...soundProject(), chassis: { wheelbase_mm: 1400 } });
    expect(checked.ok && checked.document.chassis).toEqual({ wheelbase_mm: 1400 });
  });

  it('has tables that rise', () => {
    expect(codes({ motionRatio: table([at(0), at(50)]) })).toEqual([]);
    expect(codes({ motionRatio: table([at(50), at(50)]) })).toEqual([
      'chassis.motion-ratio.order chassis.motionRatio.points[1].wheelTravel_mm',
    ]);
    const spring = (points: object[]) => ({ spring: { kind: 'progressive', preload_mm: 0, points } });
    expect(codes(spring([point(0, 0), point(10, 100)]))).toEqual([]);
    expect(codes(spring([point(10, 0), point(5, 100)]))).toEqual([
      'chassis.spring.order chassis.spring.points[1].compression_mm',
    ]);
    expect(codes(spring([point(0, 100), point(10, 100)]))).toEqual([
      'chassis.spring.force chassis.spring.points[1].force_N',
    ]);
    expect(codes({ motionRatio: table([at(0)]) })).toHaveLength(1);
  });

  it('has an air spring longer than the stroke that shortens it', () => {
    const air = (airLength_mm: number) => ({
      ...CHASSIS,
      airSpring: { pistonDiameter_mm: 30, gaugePressure_bar: 1, airLength_mm, polytropicExponent: 1 },
    });
    expect(codes(air(61))).toEqual([]);
    expect(codes(air(60))).toEqual(['chassis.air.too-short chassis.airSpring.airLength_mm']);
  });

  it('says how an aim was made, in kinds that are known', () => {
    const aims = (origin: object) => {
      const aim = { id: 'a', name: 'a', points: [{ shaftSpeed_m_s: 1, force_N: 1 }], origin };
      return validateProject({ ...soundProject(), aims: [aim] }).ok;
    };
    const goal = { lowSpeedRatio: 0.3, highSpeedRatio: 0.1, kneeSpeed_m_s: 0.2 };
    const change = { direction: 'both', range: 'above', speed_m_s: 1, change_percent: 15 };
    expect(aims({ kind: 'drawn' })).toBe(true);
    expect(aims({ kind: 'damping-ratio', compression: goal, rebound: goal, wheelTravel_mm: 30 })).toBe(true);
    expect(aims({ kind: 'change', buildId: 'x', changes: [change] })).toBe(true);
    expect(aims({ kind: 'change', buildId: 'x', changes: [{ ...change, direction: 'up' }] })).toBe(false);
    expect(aims({ kind: 'guessed' })).toBe(false);
  });
});
