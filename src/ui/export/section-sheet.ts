/** The sheet of an exported section: title, drawing, title block and notes, one below the other. */
import { wrapWords } from './wrap.ts';

export interface SheetWords {
  readonly title: string;
  /** Names and values of the title block. */
  readonly cells: readonly (readonly [string, string])[];
  readonly notes: readonly string[];
}

export interface SheetLine {
  readonly words: string;
  readonly x: number;
  /** Of the base line. */
  readonly y: number;
  readonly size: number;
  readonly tone: 'ink' | 'soft';
}

export interface SheetLayout {
  readonly width: number;
  readonly height: number;
  readonly drawingX: number;
  readonly drawingY: number;
  readonly lines: readonly SheetLine[];
}

const EDGE = 16;
const NARROWEST = 420;
/** Width of a letter over its size: enough room for the wider fonts of a page. */
const LETTER = 0.56;
const TITLE = { size: 17, line: 24 };
const WORDS = { size: 12, line: 17 };

const lettersIn = (width: number, size: number): number => Math.max(8, Math.floor(width / (size * LETTER)));

/** Two cells a row; long values take more lines. */
function cellLines(cells: SheetWords['cells'], width: number, from: number): { lines: SheetLine[]; end: number } {
  const column = (width - 2 * EDGE) / 2;
  const lines: SheetLine[] = [];
  let y = from;
  for (let i = 0; i < cells.length; i += 2) {
    const pair = cells
      .slice(i, i + 2)
      .map(([name, value]) => wrapWords(`${name}: ${value}`, lettersIn(column - EDGE, WORDS.size)));
    pair.forEach((wrapped, side) => {
      wrapped.forEach((words, k) => {
        lines.push({ words, x: EDGE + side * column, y: y + (k + 1) * WORDS.line, size: WORDS.size, tone: 'ink' });
      });
    });
    y += Math.max(...pair.map((wrapped) => wrapped.length)) * WORDS.line;
  }
  return { lines, end: y };
}

export function laySection(drawing: { width: number; height: number }, words: SheetWords): SheetLayout {
  const width = Math.max(NARROWEST, Math.ceil(drawing.width) + 2 * EDGE);
  const room = width - 2 * EDGE;
  const title = wrapWords(words.title, lettersIn(room, TITLE.size)).map(
    (line, i): SheetLine => ({
      words: line,
      x: EDGE,
      y: EDGE + (i + 0.75) * TITLE.line,
      size: TITLE.size,
      tone: 'ink',
    }),
  );
  const drawingY = EDGE + title.length * TITLE.line + EDGE / 2;
  const block = cellLines(words.cells, width, drawingY + Math.ceil(drawing.height) + EDGE / 2);
  const noteLines = words.notes.flatMap((note) => wrapWords(note, lettersIn(room, WORDS.size)));
  const notes = noteLines.map(
    (line, i): SheetLine => ({
      ...{ words: line, x: EDGE, y: block.end + EDGE / 2 + (i + 1) * WORDS.line },
      ...{ size: WORDS.size, tone: 'soft' as const },
    }),
  );
  return {
    width,
    height: block.end + EDGE / 2 + noteLines.length * WORDS.line + EDGE,
    drawingX: (width - drawing.width) / 2,
    drawingY,
    lines: [...title, ...block.lines, ...notes],
  };
}
