/** The readout as a table: its rows as they stand on the page, build beside build. */
import type { Reading } from '../charts/reading.ts';
import type { ReadoutGroup, ReadoutRow, SolvedReading } from '../charts/readout-group.ts';
import { text } from '../text/en.ts';
import type { Row } from './table-text.ts';

export interface ReadWay {
  readonly name: string;
  readonly readings: readonly Reading[];
  readonly groups: readonly ReadoutGroup[];
}

const isSolvedReading = (reading: Reading): reading is SolvedReading => reading.point !== undefined;

/** How a cell of the page is written into a table. */
export type CellWriter = (shown: string) => string;

/**
 * For a clipboard: a spreadsheet knows the hyphen as the sign of a number, not the minus; a dash for nothing is an empty
 * cell. It reads what is pasted in its own locale, so that the decimal sign stays that of the reader.
 */
export const forClipboard: CellWriter = (shown) => (shown === text.readout.none ? '' : shown.replaceAll('−', '-'));

/** For a file, which is the same everywhere: with decimal points. A comma between digits is never anything else here. */
export const forFile: CellWriter = (shown) => forClipboard(shown).replace(/(?<=\d),(?=\d)/g, '.');

function inOneCell({ cell, note }: ReadoutRow, reading: SolvedReading): string {
  const told = note?.(reading);
  return told ? text.readout.withNote(cell(reading), told) : cell(reading);
}

const nameOf = ({ build, stale }: Reading): string => (stale ? text.export.lastSolved(build.name) : build.name);

function wayRows({ name, readings, groups }: ReadWay, write: CellWriter): Row[] {
  const solved = readings.filter(isSolvedReading);
  const body = groups.flatMap(({ title, rows }) => {
    const told = rows.filter(({ when }) => !when || solved.some(when));
    if (told.length === 0) return [];
    const cells = told.map(
      (row): Row => [
        row.name,
        ...readings.map((reading) =>
          isSolvedReading(reading) ? write(inOneCell(row, reading)) : text.readout.notSolved,
        ),
      ],
    );
    return title ? [[title], ...cells] : cells;
  });
  return [[name, ...readings.map(nameOf)], ...body];
}

/** First what is read and at which speed, then both directions, then how far to trust it. */
export const readingRows = (
  title: string,
  ways: readonly ReadWay[],
  notes: readonly string[],
  write: CellWriter,
): Row[] => [[title], ...ways.flatMap((way) => wayRows(way, write)), ...notes.map((note) => [note])];
