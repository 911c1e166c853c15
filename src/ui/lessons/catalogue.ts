/** The lessons in their order, with what each asks for. The numbers are goals; what is measured against them is solved. */
import type { Project, ShimRow } from '../../model/project.ts';
import { pascalsFromBars } from '../../units/si.ts';
import { changeValving } from '../app/edits.ts';
import type { Goal, Lesson } from './lesson.ts';

type Way = 1 | -1;
const force = (way: Way, speed_m_s: number, least: number, most: number): Goal => ({
  kind: 'force',
  way,
  speed_m_s,
  least,
  most,
});

/** Face shim, crossover shim of a small diameter, and a second stage nearly as wide as the face. */
const TWO_STAGES: readonly ShimRow[] = [
  { outerDiameter_mm: 34, thickness_mm: 0.25 },
  { outerDiameter_mm: 16, thickness_mm: 0.1 },
  { outerDiameter_mm: 32, thickness_mm: 0.25 },
  { outerDiameter_mm: 28, thickness_mm: 0.25 },
  { outerDiameter_mm: 22, thickness_mm: 0.25 },
];

const withTwoStages = (demo: Project): Project =>
  changeValving(demo, demo.builds[0].id, 'pistonCompression', (valving) => ({
    ...valving,
    shims: [...TWO_STAGES],
    seatHeight_mm: 0.05,
  }));

const withLittleGas = (demo: Project): Project => ({ ...demo, gas: { ...demo.gas, gaugePressure_bar: 6 } });

export const LESSONS: readonly Lesson[] = [
  {
    id: 'curve',
    place: 'pistonRebound',
    cursor_m_s: 1.5,
    goals: [force(-1, 1.5, -0.12, -0.06), force(-1, 0.1, -0.02, 0.02)],
    mayChange: ['rebound-ports'],
  },
  {
    id: 'face',
    place: 'pistonCompression',
    cursor_m_s: 0.3,
    goals: [force(1, 0.3, -0.2, -0.1), force(-1, 0.3, -0.005, 0.005)],
    mayChange: ['compression-face-thickness'],
  },
  {
    id: 'crossover',
    place: 'pistonCompression',
    cursor_m_s: 0.3,
    setUp: withTwoStages,
    goals: [force(1, 0.3, -0.26, -0.18), force(1, 1.5, -0.1, 0)],
    mayChange: ['compression-second-thickness'],
  },
  {
    id: 'clamp',
    place: 'pistonCompression',
    cursor_m_s: 0.3,
    goals: [force(1, 0.3, -0.22, -0.14)],
    mayChange: ['compression-clamp'],
  },
  {
    id: 'taper',
    place: 'pistonRebound',
    cursor_m_s: 0.5,
    goals: [force(-1, 0.5, 0.08, 0.15)],
    mayChange: ['rebound-shims', 'rebound-second-thickness'],
  },
  {
    id: 'bleed',
    place: 'pistonRebound',
    cursor_m_s: 0.05,
    goals: [force(-1, 0.05, -0.35, -0.1), force(-1, 1, -0.03, 0)],
    mayChange: ['bleed'],
  },
  {
    id: 'preload',
    place: 'pistonCompression',
    cursor_m_s: 0.1,
    goals: [force(1, 0.1, 0.2, 0.35), force(1, 1.5, 0, 0.12)],
    mayChange: ['compression-seat'],
  },
  {
    id: 'temperature',
    place: 'pistonRebound',
    cursor_m_s: 0.1,
    goals: [force(-1, 0.1, 0.1, 0.2), force(-1, 1.5, 0, 0.05)],
    mayChange: ['temperature'],
  },
  {
    id: 'gas',
    place: 'pistonCompression',
    cursor_m_s: 1.5,
    setUp: withLittleGas,
    goals: [{ kind: 'margin', way: 1, speed_m_s: 1.5, least_Pa: pascalsFromBars(1), most_Pa: pascalsFromBars(4) }],
    mayChange: ['gas-pressure'],
  },
];
