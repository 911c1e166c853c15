/** What moves the shaft in the cycle: a sine stroke, strokes from slow to fast, or a trace that is kept until the page is left. */
import { computed, signal } from '@preact/signals';
import type { CycleRequest } from '../../../workers/protocol.ts';
import { metresFromMillimetres } from '../../units/si.ts';
import { position_m } from './conditions.ts';
import { project } from './store.ts';

export type Drive = CycleRequest['drive'];
type TraceDrive = Extract<Drive, { kind: 'trace' }>;

export const MOTIONS = ['sine', 'peaks', 'trace'] as const;
export type Motion = (typeof MOTIONS)[number];
export const motion = signal<Motion>('sine');

/** A usual stroke of a test bench; less where the travel is short (common practice). */
const USUAL_STROKE_MM = 50;
const USUAL_FREQUENCY_HZ = 2;

const wantedStroke_mm = signal<number | undefined>(undefined);
export const frequency_Hz = signal(USUAL_FREQUENCY_HZ);

/** From end to end; always within the travel. */
export const stroke_mm = computed(() => {
  const { travel_mm } = project.value.damper;
  return Math.min(wantedStroke_mm.value ?? USUAL_STROKE_MM, travel_mm);
});
export const setStroke = (next_mm: number): void => {
  wantedStroke_mm.value = next_mm;
};
export const setFrequency = (next_Hz: number): void => {
  frequency_Hz.value = next_Hz;
};

export interface KeptTrace {
  /** Of the file, or that it was pasted. */
  readonly name: string;
  /** Tells one from the next. */
  readonly number: number;
  readonly drive: TraceDrive;
}

export const trace = signal<KeptTrace | undefined>(undefined);

export function keepTrace(name: string, drive: TraceDrive): void {
  trace.value = { name, drive, number: (trace.value?.number ?? 0) + 1 };
}

/** The bench keeps the place in the stroke for the middle of the motion; it moves only as far as the ends ask. */
function sineOf(hertz: number): Drive {
  const travel_m = metresFromMillimetres(project.value.damper.travel_mm);
  const stroke_m = metresFromMillimetres(stroke_mm.value);
  const wanted_m = position_m.value ?? travel_m / 2;
  const middle_m = Math.min(Math.max(wanted_m, stroke_m / 2), travel_m - stroke_m / 2);
  return { kind: 'sine', stroke_m, frequency_Hz: hertz, middle_m };
}

/** Undefined while no trace is there to follow, and where there is more than one stroke. */
export const driveNow = computed<Drive | undefined>(() => {
  if (motion.value === 'sine') return sineOf(frequency_Hz.value);
  return motion.value === 'trace' ? trace.value?.drive : undefined;
});

/** Of the frequency set: closer together where a bleed still carries the oil. */
const PEAK_SHARES = [0.02, 0.05, 0.1, 0.2, 0.35, 0.5, 0.65, 0.8, 1] as const;

/** The strokes from slow to fast; the last is the one that is set. */
export const peakDrives = computed<readonly Drive[]>(() =>
  PEAK_SHARES.map((share) => sineOf(share * frequency_Hz.value)),
);

/** The same for the same motion; the place in the stroke is a part of what every curve is solved at. */
export const driveKey = computed(() =>
  motion.value === 'trace' ? `trace ${trace.value?.number}` : `sine ${stroke_mm.value} ${frequency_Hz.value}`,
);
