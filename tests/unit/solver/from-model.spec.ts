import { describe, expect, it } from 'vitest';
import type { Project, StackFile } from '../../../src/model/project.ts';
import { damperFromProject, stackFromFile } from '../../../src/solver/from-model.ts';

const STACK_FILE: StackFile = {
  format: 'shimwright/stack',
  version: 1,
  name: 'two-stage',
  clampDiameter_mm: 12,
  shims: [
    { outerDiameter_mm: 30, thickness_mm: 0.15, count: 3 },
    { outerDiameter_mm: 16, thickness_mm: 0.1 },
  ],
  pressureZone: { innerDiameter_mm: 16.5, outerDiameter_mm: 27.6 },
  seat: { innerDiameter_mm: 27.6, outerDiameter_mm: 28.4, height_mm: 0.1 },
  backingPlate: { gap_mm: 0.4 },
};

const VALVING = { clampDiameter_mm: 12, shims: STACK_FILE.shims, seatHeight_mm: 0.05 };
const BODY = {
  ports: { count: 4, diameter_mm: 5, length_mm: 12 },
  pressureZone: STACK_FILE.pressureZone,
  seat: { innerDiameter_mm: 27.6, outerDiameter_mm: 28.4 },
};

const PROJECT: Project = {
  format: 'shimwright/project',
  version: 1,
  name: 'test',
  notes: '',
  invented: true,
  damper: {
    name: 'none',
    layout: 'monotube',
    boreDiameter_mm: 44,
    rodDiameter_mm: 14,
    travel_mm: 60,
    sealFriction_N: 30,
    valves: {
      pistonCompression: BODY,
      pistonRebound: { ...BODY, ports: { count: 3, area_mm2: 20, length_mm: 12 } },
    },
  },
  fluid: {
    name: 'thin',
    viscosity: {
      kind: 'two-point',
      points: [
        { temperature_degC: 40, kinematicViscosity_cSt: 15 },
        { temperature_degC: 100, kinematicViscosity_cSt: 3.5 },
      ],
    },
    densityAt15_kg_m3: 860,
    temperature_degC: 40,
  },
  gas: { gaugePressure_bar: 10, volume_mL: 60, polytropicExponent: 1 },
  builds: [
    {
      id: 'stock',
      name: 'stock',
      notes: '',
      valves: { pistonCompression: VALVING, pistonRebound: { ...VALVING, backingPlate: { gap_mm: 1.2 } } },
      bleed: { count: 1, diameter_mm: 1.6, length_mm: 5 },
    },
  ],
  baselineBuild: 'stock',
  measurements: [],
  chassis: {},
  drawer: [],
};

const withCode = (code: string) => expect.objectContaining({ fault: expect.objectContaining({ code }) });

describe('stackFromFile', () => {
  it('halves diameters, expands counts in order and takes spring steel by default', () => {
    const stack = stackFromFile(STACK_FILE);
    expect(stack.clampRadius_m).toBe(0.006);
    expect(stack.shims.map(({ outerRadius_m }) => outerRadius_m)).toEqual([0.015, 0.015, 0.015, 0.008]);
    // Source: spring steel of DIN 2093 / EN 16984, E = 206 GPa, nu = 0.3 (from memory).
    expect(stack.shims[3]).toMatchObject({ thickness_m: 0.0001, youngsModulus_Pa: 206e9, poissonsRatio: 0.3 });
    expect(stack.seat?.innerRadius_m).toBeCloseTo(0.0138, 15);
    expect(stack.seat?.outerRadius_m).toBeCloseTo(0.0142, 15);
    expect(stack.seat?.height_m).toBe(0.0001);
    expect(stack.backingPlate).toEqual({ gap_m: 0.0004 });
  });

  it('leaves out what the file leaves out, and takes its material', () => {
    const { seat: _, backingPlate: __, ...bare } = STACK_FILE;
    const stack = stackFromFile({ ...bare, material: { youngsModulus_GPa: 190, poissonsRatio: 0.28 } });
    expect(stack).not.toHaveProperty('seat');
    expect(stack).not.toHaveProperty('backingPlate');
    expect(stack.shims[0]).toMatchObject({ youngsModulus_Pa: 190e9, poissonsRatio: 0.28 });
  });

  it('carries bores, dishes and materials of single shims over, spring steel where none is named', () => {
    const material = { youngsModulus_GPa: 110, poissonsRatio: 0.34 };
    const [ring, coned, plain] = stackFromFile({
      ...STACK_FILE,
      shims: [
        { outerDiameter_mm: 30, thickness_mm: 0.2, innerDiameter_mm: 22 },
        { outerDiameter_mm: 28, thickness_mm: 0.15, dish_mm: -0.05, material },
        { outerDiameter_mm: 26, thickness_mm: 0.15 },
      ],
    }).shims;
    const steel = { youngsModulus_Pa: 206e9, poissonsRatio: 0.3 };
    expect(ring).toEqual({ outerRadius_m: 0.015, thickness_m: 0.0002, innerRadius_m: 0.011, ...steel });
    const bronze = { youngsModulus_Pa: 110e9, poissonsRatio: 0.34 };
    expect(coned).toEqual({ outerRadius_m: 0.014, thickness_m: 0.00015, dish_m: -0.00005, ...bronze });
    expect(plain).toEqual({ outerRadius_m: 0.013, thickness_m: 0.00015, ...steel });
  });

  it('carries the limits of a material over as far as they are given', () => {
    const steel = { youngsModulus_GPa: 206, poissonsRatio: 0.3 };
    const material = { ...steel, yieldStrength_MPa: 1300, tensileStrength_MPa: 1500, enduranceLimit_MPa: 600 };
    const [first, ...rest] = STACK_FILE.shims;
    const ofStack = { ...steel, tensileStrength_MPa: 1700 };
    const { shims } = stackFromFile({ ...STACK_FILE, material: ofStack, shims: [{ ...first, material }, ...rest] });
    expect(shims[0].strength).toEqual({ yield_Pa: 1.3e9, tensile_Pa: 1.5e9, endurance_Pa: 6e8 });
    expect(shims.at(-1)?.strength).toEqual({ tensile_Pa: 1.7e9 });
  });

  it('takes the material of a shim before that of its stack', () => {
    const ofStack = { youngsModulus_GPa: 190, poissonsRatio: 0.28 };
    const material = { youngsModulus_GPa: 110, poissonsRatio: 0.34 };
    const [first, ...rest] = STACK_FILE.shims;
    const { shims } = stackFromFile({ ...STACK_FILE, material: ofStack, shims: [{ ...first, material }, ...rest] });
    expect(shims.map(({ youngsModulus_Pa }) => youngsModulus_Pa)).toEqual([110e9, 110e9, 110e9, 190e9]);
  });

  it('carries backing plate, coil spring and float over in SI', () => {
    const spring = { rate_N_mm: 20, preload_N: 5 };
    const stack = stackFromFile({
      ...STACK_FILE,
      backingPlate: { gap_mm: 0.4, outerDiameter_mm: 20 },
      coilSpring: { diameter_mm: 14, ...spring },
      float: { travel_mm: 0.5, ...spring },
    });
    expect(stack.backingPlate).toEqual({ gap_m: 0.0004, outerRadius_m: 0.01 });
    expect(stack.coilSpring).toEqual({ radius_m: 0.007, rate_N_m: 20_000, preload_N: 5 });
    expect(stack.float).toEqual({ travel_m: 0.0005, rate_N_m: 20_000, preload_N: 5 });
    for (const key of ['coilSpring', 'float']) expect(stackFromFile(STACK_FILE)).not.toHaveProperty(key);
  });

  it.each([0, 1.5, -1, Number.NaN])('refuses a count of %d', (count) => {
    const shims = [{ outerDiameter_mm: 30, thickness_mm: 0.15, count }];
    expect(() => stackFromFile({ ...STACK_FILE, shims })).toThrow(withCode('stack.shim.count'));
  });
});

describe('damperFromProject', () => {
  it('carries every size over in SI', () => {
    const damper = damperFromProject(PROJECT, 'stock');
    expect(damper).toMatchObject({
      ...{ boreDiameter_m: 0.044, rodDiameter_m: 0.014, travel_m: 0.06, stroke_m: 0.03, endClearance_m: 0.01 },
      friction: { sliding_N: 30, breakaway_N: 30, viscous_N_s_m: 0 },
    });
    expect(damper.bleed).toEqual({ count: 1, diameter_m: 0.0016, length_m: 0.005 });
    expect(damper.compression.stack).toMatchObject({ clampRadius_m: 0.006, seat: { height_m: 0.00005 } });
    expect(damper.rebound.stack.backingPlate).toEqual({ gap_m: 0.0012 });
    expect(damper.compression.ports.area_m2).toBeCloseTo(Math.PI * 6.25e-6, 15);
  });

  it('carries the springs of a build and the notches of its face shim over', () => {
    const [face, ...rest] = VALVING.shims;
    const valving = {
      ...VALVING,
      shims: [{ ...face, count: 1, notches: { count: 4, width_mm: 2 } }, face, ...rest],
      float: { travel_mm: 0.5, rate_N_mm: 20, preload_N: 5 },
    };
    const [build] = PROJECT.builds;
    const valves = { ...build.valves, pistonCompression: valving };
    const { compression, rebound } = damperFromProject({ ...PROJECT, builds: [{ ...build, valves }] }, 'stock');
    expect(compression.notches).toEqual({ count: 4, width_m: 0.002 });
    expect(compression.stack.float).toEqual({ travel_m: 0.0005, rate_N_m: 20_000, preload_N: 5 });
    expect(rebound).not.toHaveProperty('notches');
    expect(rebound.stack).not.toHaveProperty('float');
  });

  it('takes a port known by its area as round', () => {
    const { ports } = damperFromProject(PROJECT, 'stock').rebound;
    expect(ports).toMatchObject({ count: 3, area_m2: 20e-6 });
    expect((Math.PI / 4) * ports.hydraulicDiameter_m ** 2).toBeCloseTo(20e-6, 15);
  });

  it('takes the share of the circumference of ports known by diameter or area, to the shims and to the oil', () => {
    for (const size of [{ diameter_mm: 5 }, { area_mm2: 20 }]) {
      const { valves } = PROJECT.damper;
      const ports = { count: 3, length_mm: 8, coveredFraction: 0.4, ...size };
      const changed = { ...valves, pistonRebound: { ...valves.pistonRebound, ports } };
      const { rebound } = damperFromProject({ ...PROJECT, damper: { ...PROJECT.damper, valves: changed } }, 'stock');
      expect(rebound.ports.coveredFraction).toBe(0.4);
      expect(rebound.stack).toMatchObject({ ports: { count: 3, coveredFraction: 0.4 } });
    }
  });

  it('takes the oil at its temperature', () => {
    // Source: D1250, 860 kg/m3 at 15 °C is 844.22 at 40 °C; 15 mm2/s there.
    const { fluid } = damperFromProject(PROJECT, 'stock');
    expect(Math.abs(fluid.density_kg_m3 / 844.22 - 1)).toBeLessThan(1e-5);
    expect(Math.abs(fluid.dynamicViscosity_Pa_s / (844.22 * 15e-6) - 1)).toBeLessThan(1e-4);
  });

  it('makes two points of one point and the viscosity index', () => {
    // Source: ASTM D2270 worked example, 22.83 mm2/s at 40 °C and index 156 have 5.05 at 100 °C.
    const viscosity = { kind: 'viscosity-index', kinematicViscosity40_cSt: 22.83, viscosityIndex: 156.37 } as const;
    const { fluid } = damperFromProject(
      { ...PROJECT, fluid: { ...PROJECT.fluid, viscosity, temperature_degC: 100 } },
      'stock',
    );
    expect(Math.abs(fluid.dynamicViscosity_Pa_s / fluid.density_kg_m3 / 5.05e-6 - 1)).toBeLessThan(5e-4);
  });

  it('takes the midpoint of a viscosity grade, at 40 °C whatever its index', () => {
    // Source: ISO 3448, grade 22; D1250 for the density.
    const viscosity = { kind: 'iso-grade', isoGrade: 22, viscosityIndex: 130 } as const;
    const { fluid } = damperFromProject({ ...PROJECT, fluid: { ...PROJECT.fluid, viscosity } }, 'stock');
    expect(Math.abs(fluid.dynamicViscosity_Pa_s / (844.22 * 22e-6) - 1)).toBeLessThan(1e-4);
  });

  it('carries the clearance of the piston and the needle of the bleed over in SI', () => {
    const pistonBand = { clearance_mm: 0.05, length_mm: 9, eccentricity: 0.5 };
    const [build] = PROJECT.builds;
    const needle = { coneAngle_deg: 20, travelPerClick_mm: 0.125, clicks: 8, clickCount: 24 };
    const bleed = { ...build.bleed, needle };
    const damper = { ...PROJECT.damper, pistonBand };
    const read = damperFromProject({ ...PROJECT, damper, builds: [{ ...build, bleed }] }, 'stock');
    expect(read.pistonBand).toEqual({ clearance_m: 0.00005, length_m: 0.009, eccentricity: 0.5 });
    expect(read.bleed.needle?.travel_m).toBeCloseTo(0.001, 15);
    expect(read.bleed.needle?.coneAngle_rad).toBeCloseTo(0.3490658504, 10);
    expect(damperFromProject(PROJECT, 'stock')).not.toHaveProperty('pistonBand');
  });

  it('takes the gas absolute and squeezed by the rod at mid-stroke', () => {
    // Source: p V = const with absolute p: the rod takes pi/4 14^2 * 30 mm = 4.618 mL of 60 mL.
    const { gas } = damperFromProject(PROJECT, 'stock');
    const rod = (Math.PI / 4) * 1.4 ** 2 * 3;
    expect(gas.absolutePressure_Pa).toBeCloseTo((1e6 + 101325) * (60 / (60 - rod)), 3);
    expect(gas.volume_m3).toBeCloseTo((60 - rod) * 1e-6, 12);
  });

  it('refuses what cannot be', () => {
    expect(() => damperFromProject(PROJECT, 'nobody')).toThrow(withCode('build.unknown'));
    const tight = { ...PROJECT, gas: { ...PROJECT.gas, volume_mL: 9 } };
    expect(() => damperFromProject(tight, 'stock')).toThrow(withCode('gas.volume.too-small'));
    const valves = { ...PROJECT.damper.valves, pistonRebound: { ...BODY, ports: { count: 3, length_mm: 12 } } };
    expect(() => damperFromProject({ ...PROJECT, damper: { ...PROJECT.damper, valves } }, 'stock')).toThrow(
      withCode('damper.port.size'),
    );
  });
});
