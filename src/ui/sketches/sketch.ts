/** What a sketch is: a drawing with named dimensions. Lengths and places are in the units of its own frame, about a pixel each. */
import type { JSX } from 'preact';
import type { MeasureId } from '../text/measures.ts';

export type Point = readonly [x: number, y: number];

/** Between two edges, drawn along one axis. */
export interface Span {
  readonly of: MeasureId;
  readonly along: 'x' | 'y';
  readonly from: Point;
  readonly to: Point;
  /** Where the dimension line lies, on the other axis. */
  readonly at: number;
  /** Where its letter stands along the line; in the middle where there is room, else beyond `to`. */
  readonly letterAt?: number;
}

/** What is no distance, or too small to show as one: a letter with a line that points at it. */
export interface Leader {
  readonly of: MeasureId;
  readonly letter: Point;
  readonly points: Point;
}

export type Dimension = Span | Leader;

export interface Sketch {
  readonly height: number;
  /** In the order of their letters. */
  readonly dimensions: readonly Dimension[];
  /** @param hatch the fill of cut metal */
  readonly draw: (hatch: string) => JSX.Element;
}

/** Every sketch is as wide, so that lettering is of one size on all of them. */
export const SKETCH_WIDTH = 240;

/** Letters of a drawing: those that look like figures are left out. */
const LETTERS = 'ABCDEFGHJKLMNPRSTUVWXYZ';

export type Letters = Readonly<Partial<Record<MeasureId, string>>>;

/** The letter of each dimension of a sketch, by its name. */
export const lettersOf = ({ dimensions }: Pick<Sketch, 'dimensions'>): Letters =>
  Object.fromEntries(dimensions.map(({ of }, i) => [of, LETTERS[i]]));
