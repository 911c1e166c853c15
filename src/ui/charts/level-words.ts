/** Where the words of a level stand: on its line, under it where the word of the direction stands above. */
import type { Level } from './levels.ts';
import { MARGIN } from './plot-layout.ts';
import type { Frame, Scales } from './plot-scales.ts';
import type { Box } from './strokes.ts';

/** Of the words, which are smaller than those of a line [px]. */
const LETTER = 5.8;
const ASCENT = 9;
const DESCENT = 3;
const ABOVE_LINE = -4;
const BELOW_LINE = 12;
/** The word of the direction takes this much of the upper left corner [px]. */
const CORNER = 22;

export interface LevelWords {
  readonly level: Level;
  /** Of the line, and of the beginning of the words on their baseline [px]. */
  readonly lineY: number;
  readonly x: number;
  readonly y: number;
  readonly box: Box;
}

/** Of the gas at the left, where the lines come from it; of the others in the middle. */
export function levelWords(levels: readonly Level[], scales: Pick<Scales, 'y'>, frame: Frame): LevelWords[] {
  return levels.map((level) => {
    const isLeft = level.id === 'gas';
    const lineY = scales.y(level.value);
    const isUnderCorner = isLeft && lineY + ABOVE_LINE - ASCENT < MARGIN.t + CORNER;
    const x = MARGIN.l + (isLeft ? 6 : (frame.width - MARGIN.l) / 2);
    const y = lineY + (isUnderCorner ? BELOW_LINE : ABOVE_LINE);
    const box = { left: x, right: x + LETTER * level.label.length, top: y - ASCENT, bottom: y + DESCENT };
    return { level, lineY, x, y, box };
  });
}
