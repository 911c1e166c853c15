/** How the shaft moves: a sine stroke at one or several frequencies, or a trace out of a file. */
import type { Project } from '../model/project.ts';
import { parseTrace, type SineDrive, type TraceDrive } from '../solver/index.ts';
import { tidy } from '../units/convert.ts';
import { metresFromMillimetres as metres } from '../units/si.ts';
import { UsageError, type Values } from './command.ts';
import { readInput } from './input.ts';
import { numberList } from './number-list.ts';
import { POSITIONS } from './occasions.ts';
import type { Asked } from './render/rows.ts';

export const STROKE = 'stroke-mm';
export const FREQUENCIES = 'frequency-Hz';
export const CYCLES = 'cycles';
export const TRACE = 'trace';

/** One motion; a sine stroke still wants its middle. */
export interface Motion {
  readonly asked: readonly Asked[];
  readonly driveAbout: (middle_mm: number) => SineDrive | TraceDrive;
}

/** @throws UsageError unless a sine stroke or a trace is asked for, and not both */
export async function motionsOf({ damper }: Project, values: Values): Promise<Motion[]> {
  const trace = values.get(TRACE);
  if (trace === undefined) return sineMotions(damper.travel_mm, values);
  const other = [STROKE, FREQUENCIES, CYCLES, POSITIONS].find((option) => values.has(option));
  if (other) throw new UsageError(`--${other} is of a sine stroke and does not go with --${TRACE}`);
  const { time_s, position_m } = parseTrace(await readInput(trace), metres(damper.travel_mm));
  return [{ asked: [], driveAbout: () => ({ kind: 'trace', time_s, position_m }) }];
}

function sineMotions(travel_mm: number, values: Values): Motion[] {
  const [stroke, frequencies] = [values.get(STROKE), values.get(FREQUENCIES)];
  if (stroke === undefined || frequencies === undefined)
    throw new UsageError(`cycle needs --${STROKE} MM and --${FREQUENCIES} LIST, or --${TRACE} FILE`);
  const [stroke_mm] = numberList(stroke, STROKE, { above: 0, upTo: travel_mm, single: true, unit: 'mm' });
  const cycles = values.get(CYCLES);
  const repeated = cycles !== undefined && { cycles: numberList(cycles, CYCLES, { single: true })[0] };
  return numberList(frequencies, FREQUENCIES, { above: 0, unit: 'Hz' }).map((frequency_Hz) => ({
    asked: [frequencyAsked(frequency_Hz)],
    driveAbout: (middle_mm) => {
      requireWithin(travel_mm, stroke_mm, middle_mm);
      return { kind: 'sine', stroke_m: metres(stroke_mm), frequency_Hz, middle_m: metres(middle_mm), ...repeated };
    },
  }));
}

/** A motion over the whole travel may miss its ends by a rounding. */
const PLAY = 1e-9;

function requireWithin(travel_mm: number, stroke_mm: number, middle_mm: number): void {
  const [from, to] = [tidy(middle_mm - stroke_mm / 2), tidy(middle_mm + stroke_mm / 2)];
  if (from >= -PLAY && to <= travel_mm + PLAY) return;
  const got = `--${STROKE} ${stroke_mm} about ${middle_mm} mm: got a motion from ${from} to ${to} mm`;
  throw new UsageError(`${got}, wanted one within the travel, 0 to ${travel_mm} mm; --${POSITIONS} sets its middle`);
}

const frequencyAsked = (value: number): Asked => ({
  key: 'frequency_Hz',
  heading: ['frequency', 'Hz'],
  value,
  words: `${value} Hz`,
});
