/** What was found when the damper came apart, beside the sizes that its damper, oil, gas and baseline build already hold. */
import type { AdjusterId } from './adjuster-ids.ts';

/** What a person works through, each at its key; which of them a damper has, and in what order, depends on its layout. */
export const RECORD_STEPS = [
  'machine',
  'clicks',
  'gas',
  'head',
  'springs',
  'oil',
  'rod',
  'reboundStack',
  'compressionStack',
  'pistonFaces',
  'baseStack',
  'baseFace',
  'refillCheck',
  'wear',
] as const;
export type RecordStep = (typeof RECORD_STEPS)[number];

export const STEP_STATES = ['done', 'skipped'] as const;
export type StepState = (typeof STEP_STATES)[number];

/** A step without a state is open. */
export interface StepRecord {
  state?: StepState;
  notes?: string;
}

export const RATE_SOURCES = ['measured', 'marked'] as const;

/** A main spring, or any other that the damper is set up with. */
export interface SpringRecord {
  id: string;
  name: string;
  rate_N_mm?: number;
  /** Whether the rate was measured or is what stands on the spring. */
  rateFrom?: (typeof RATE_SOURCES)[number];
  freeLength_mm?: number;
  wireDiameter_mm?: number;
  notes?: string;
}

export const WEAR_KINDS = ['seal', 'wiper', 'o-ring', 'bushing', 'piston-band', 'rod', 'other'] as const;
export const VERDICTS = ['good', 'worn', 'replace'] as const;
export type Verdict = (typeof VERDICTS)[number];

/** A part that wears, by the sizes that a new one is found by. */
export interface WearPart {
  id: string;
  kind: (typeof WEAR_KINDS)[number];
  name: string;
  innerDiameter_mm?: number;
  outerDiameter_mm?: number;
  width_mm?: number;
  verdict?: Verdict;
  notes?: string;
}

/** How tight something was. */
export interface TorqueRecord {
  id: string;
  name: string;
  torque_N_m?: number;
}

export const FIRST_OFF = ['far-from-piston', 'at-piston'] as const;
export type FirstOff = (typeof FIRST_OFF)[number];

/** A stack in the order in which it came off. */
export interface ShimsOff {
  firstOff: FirstOff;
  shims: { outerDiameter_mm: number; thickness_mm: number; count?: number }[];
}

export interface TeardownRecord {
  machine?: string;
  /** As `2026-11-26`. */
  date?: string;
  recordedBy?: string;
  /** Since it was last opened, or since new. */
  runTime_h?: number;
  distance_km?: number;
  condition?: string;
  /** From closed, before anything was turned. */
  clicksAsFound?: Partial<Record<AdjusterId, number>>;
  oilOut?: { volume_mL?: number; look?: string; smell?: string };
  springs?: SpringRecord[];
  wearParts?: WearPart[];
  torques?: TorqueRecord[];
  /** By place. */
  shimsOff?: { pistonCompression?: ShimsOff; pistonRebound?: ShimsOff; baseCompression?: ShimsOff };
  steps?: Partial<Record<RecordStep, StepRecord>>;
}
