/** The readout, copied or saved. */
import { tell } from '../app/notices.ts';
import { show } from '../app/quantities.ts';
import { cursorSpeed, project, visibleBuilds } from '../app/store.ts';
import { readingOf } from '../charts/reading.ts';
import { readoutGroups } from '../charts/readout-rows.ts';
import { download } from '../storage/download.ts';
import { text } from '../text/en.ts';
import type { ExportChoice } from './export-menu.tsx';
import { exportName } from './file-name.ts';
import { type CellWriter, forClipboard, forFile, readingRows } from './readings-table.ts';
import { csvOf, type Row, tsvOf } from './table-text.ts';

const words = text.export;

/** Spreadsheets take a file of text for one in UTF-8 when it begins with this mark. */
const UTF8_MARK = '\uFEFF';

/** Rows as a CSV file among the person's downloads. */
export function saveCsv(what: string, rows: readonly Row[]): void {
  const name = exportName(project.value.name, what, 'csv');
  download(name, UTF8_MARK + csvOf(rows), 'text/csv');
  tell(words.saved(name));
}

function rowsNow(write: CellWriter): Row[] {
  const ways = ([1, -1] as const).map((way) => ({
    name: way === 1 ? text.way.compression : text.way.rebound,
    readings: visibleBuilds.value.map((build) => readingOf(build, way)),
    groups: readoutGroups(way),
  }));
  const title = words.title(project.value.name, text.readout.title(show('speed', cursorSpeed.value)));
  const notes = [text.chart.estimate, ...(project.value.invented ? [words.invented] : [])];
  return readingRows(title, ways, notes, write);
}

const saveReadings = (): void => saveCsv(words.files.readings, rowsNow(forFile));

async function copyReadings(): Promise<void> {
  try {
    await navigator.clipboard.writeText(tsvOf(rowsNow(forClipboard)));
    tell(words.copied);
  } catch {
    tell(words.notCopied, { tone: 'problem', action: { label: words.readingsCsv, run: saveReadings } });
  }
}

export const readingsChoices = (): ExportChoice[] => [
  { id: 'copy-readings', label: words.copyReadings, run: () => void copyReadings() },
  { id: 'readings-csv', label: words.readingsCsv, run: saveReadings },
];
