/** A trace as it is being written, until it is read without a fault: nothing of it is lost on the way. */
import { computed, signal } from '@preact/signals';
import { SolverError } from '../../../workers/client.ts';
import { metresFromMillimetres } from '../../units/si.ts';
import { faultInWords } from '../app/apply.ts';
import { keepTrace, motion, trace } from '../app/cycle-motion.ts';
import { sideSolver } from '../app/side-solver.ts';
import { project } from '../app/store.ts';
import { text } from '../text/en.ts';

/** An hour at ten moments a second; a longer file is a mistake. */
const MOST_BYTES = 1024 * 1024;

/** A box with more than that takes the browser longer to lay out than a person waits for a key [letters]. */
const LONG = 20_000;

export const written = signal('');
/** It is told then, not shown. */
export const isLong = computed(() => written.value.length > LONG);
const fileName = signal<string | undefined>(undefined);

export interface TraceFault {
  readonly message: string;
  /** Of the text, the first is 1; absent where no line is to blame. */
  readonly line?: number;
}

export const fault = signal<TraceFault | undefined>(undefined);
export const reading = signal(false);
const asked = signal(false);

/** Without a trace there is nothing to look at but its form. */
export const formShown = computed(() => motion.value === 'trace' && (asked.value || !trace.value));
export const askForTrace = (): void => {
  asked.value = true;
};
export const closeForm = (): void => {
  asked.value = false;
  fault.value = undefined;
};

export function write(next: string): void {
  written.value = next;
  fault.value = undefined;
}

/**
 * What is pasted into the box, where the whole would be too long for it.
 * @param place where the selection of the box begins and ends
 * @returns whether it was taken
 */
export function pasteLong(pasted: string, [start, end]: readonly [number, number]): boolean {
  const whole = written.value.slice(0, start) + pasted + written.value.slice(end);
  if (whole.length <= LONG) return false;
  if (whole.length > MOST_BYTES) fault.value = { message: text.cycle.trace.tooLarge(text.cycle.trace.pasted) };
  else {
    write(whole);
    fileName.value = undefined;
  }
  return true;
}

/** As many lines as say what it is, about the faulty one where there is one. */
const SHOWN_LINES = 5;

export interface Excerpt {
  /** Of the whole. */
  readonly lineCount: number;
  /** Of the first that is shown, from 1. */
  readonly from: number;
  readonly lines: readonly string[];
}

export const excerpt = computed<Excerpt>(() => {
  const lines = written.value.split(/\r\n|\r|\n/);
  const from = Math.max(1, (fault.value?.line ?? 1) - 2);
  return { lineCount: lines.length, from, lines: lines.slice(from - 1, from - 1 + SHOWN_LINES) };
});

export async function openTraceFile(file: File): Promise<void> {
  if (file.size > MOST_BYTES) {
    fault.value = { message: text.cycle.trace.tooLarge(file.name) };
    return;
  }
  try {
    write(await file.text());
    fileName.value = file.name;
  } catch {
    fault.value = { message: text.cycle.trace.unreadable(file.name) };
    return;
  }
  await readTrace();
}

const lineIn = (path: string): number | undefined => {
  const found = /line (\d+)/.exec(path);
  return found ? Number(found[1]) : undefined;
};

function faultOf({ message, fault: of }: SolverError): TraceFault {
  if (!of) return { message };
  return { message: `${of.path}: ${faultInWords(of).message}`, line: lineIn(of.path) };
}

/** Drives the builds along what is written, or says what line of it is wrong. */
export async function readTrace(): Promise<void> {
  reading.value = true;
  try {
    const travel_m = metresFromMillimetres(project.value.damper.travel_mm);
    const { drive } = await sideSolver().trace({ text: written.value, travel_m });
    keepTrace(fileName.value ?? text.cycle.trace.pasted, drive);
    closeForm();
  } catch (error) {
    if (!(error instanceof SolverError)) throw error;
    fault.value = faultOf(error);
  } finally {
    reading.value = false;
  }
}
