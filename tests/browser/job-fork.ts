/** An invented fork for the whole job, on none of the demos: one build as found, nothing recorded, wanted, owned or measured yet. */
import type { Project, ShimRow, Valving } from '../../src/model/project.ts';

const shims = (...rows: readonly (readonly [number, number, number])[]): ShimRow[] =>
  rows.map(([count, outerDiameter_mm, thickness_mm]) => ({ outerDiameter_mm, thickness_mm, count }));

const stack = (clampDiameter_mm: number, seatHeight_mm: number, rows: ShimRow[]): Valving => ({
  clampDiameter_mm,
  seatHeight_mm,
  shims: rows,
});

const ring = (innerDiameter_mm: number, outerDiameter_mm: number) => ({ innerDiameter_mm, outerDiameter_mm });

const face = (count: number, diameter_mm: number, edge_mm: number, inner_mm: number) => ({
  ports: { count, diameter_mm, length_mm: 9 },
  pressureZone: ring(inner_mm, edge_mm),
  seat: ring(edge_mm, edge_mm + 0.8),
});

export const JOB_FORK: Project = {
  format: 'shimwright/project',
  version: 1,
  name: 'Siskin 190 fork cartridge (invented)',
  notes: 'Invented: there is no Siskin, no such fork and no such rider.',
  invented: true,
  damper: {
    name: 'Siskin 190 cartridge (invented)',
    layout: 'cartridge',
    boreDiameter_mm: 24,
    rodDiameter_mm: 12,
    travel_mm: 190,
    sealFriction_N: 14,
    valves: {
      pistonCompression: face(4, 4.4, 19.2, 12.4),
      pistonRebound: face(4, 3.2, 17.6, 11.2),
      baseCompression: face(4, 3, 17, 10.6),
    },
    refillCheck: {
      ports: { count: 8, diameter_mm: 3, length_mm: 6 },
      seat: ring(14.5, 21),
      rate_N_mm: 0.3,
      preload_N: 0.8,
      travel_mm: 1.5,
    },
    legDiameter_mm: 38,
    endClearance_mm: 15,
  },
  fluid: {
    name: 'Fork oil 15 mm2/s at 40 °C (invented data sheet)',
    viscosity: { kind: 'viscosity-index', kinematicViscosity40_cSt: 15, viscosityIndex: 170 },
    densityAt15_kg_m3: 852,
    temperature_degC: 30,
  },
  gas: {
    gaugePressure_bar: 0,
    airGap: { level_mm: 120, tubeDiameter_mm: 34, insertedVolume_mL: 25 },
    polytropicExponent: 1.2,
  },
  builds: [
    {
      id: 'found',
      name: 'As found',
      notes: '',
      valves: {
        pistonCompression: stack(9, 0, shims([2, 21, 0.15], [1, 16, 0.15], [1, 12, 0.15])),
        pistonRebound: stack(8, 0.05, shims([3, 19, 0.15], [1, 16, 0.15], [1, 12, 0.2])),
        baseCompression: stack(8, 0.05, shims([3, 18.5, 0.15], [1, 13, 0.1], [1, 16, 0.15], [1, 12, 0.2])),
      },
      bleed: { count: 1, diameter_mm: 1.4, length_mm: 6 },
      baseBleed: {
        count: 1,
        diameter_mm: 1.9,
        length_mm: 5,
        needle: { coneAngle_deg: 14, travelPerClick_mm: 0.15, clicks: 10, clickCount: 20 },
      },
    },
  ],
  baselineBuild: 'found',
  measurements: [],
  chassis: {},
  drawer: [],
};

/** Shims of an invented drawer that can lay the base stack again, and firmer ones. */
export const DRAWER_LIST = '6 x 18.5 x 0.15\n4 x 18.5 x 0.2\n3 x 16 x 0.15\n3 x 14 x 0.15\n3 x 13 x 0.1\n4 x 12 x 0.2';
export const DRAWER_COUNT = 23;
