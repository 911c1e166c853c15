/** What a box must know of the sketch beside it. */
import { createContext } from 'preact';
import type { MeasureId } from '../text/measures.ts';
import type { Letters } from './sketch.ts';

export interface BesideSketch {
  readonly letters: Letters;
  readonly lit: MeasureId | undefined;
  /** Id of the note that says how the lit dimension is measured. */
  readonly note: string;
}

/** Undefined for boxes without a sketch. */
export const LettersAtBoxes = createContext<BesideSketch | undefined>(undefined);
