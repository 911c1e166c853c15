/** One dimension of a sketch: its line with arrows, or the line that points at a thing, and its letter. */
import type { JSX } from 'preact';
import { LETTER_RADIUS, layDimension } from './lay-dimension.ts';
import type { Dimension } from './sketch.ts';

/** A finger finds it. */
const TOUCH_RADIUS = 13;

interface DimensionProps {
  readonly dimension: Dimension;
  readonly letter: string;
  readonly isLit: boolean;
  readonly onPick: () => void;
}

export function DimensionMark({ dimension, letter, isLit, onPick }: DimensionProps): JSX.Element {
  const laid = layDimension(dimension);
  const [x, y] = laid.letter;
  return (
    // biome-ignore lint/a11y/noStaticElementInteractions: the box beside the drawing is the way of the keyboard to the same dimension
    <g class={`dimension ${isLit ? 'lit' : ''}`} data-mark={dimension.of} onClick={onPick}>
      <path class="touch" d={laid.lines} />
      <circle class="touch-letter" cx={x} cy={y} r={TOUCH_RADIUS} />
      <path class="line" d={laid.lines} />
      <path class="head" d={laid.heads} />
      <circle class="badge" cx={x} cy={y} r={LETTER_RADIUS} />
      <text x={x} y={y}>
        {letter}
      </text>
    </g>
  );
}
