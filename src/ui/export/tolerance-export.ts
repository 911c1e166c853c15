/** The scatter of the build on show as a picture and as data. */
import { lineOf } from '../app/lines.ts';
import { units } from '../app/preferences.ts';
import { selectedBuild } from '../app/store.ts';
import { text } from '../text/en.ts';
import { sortedBy, toleranceRows } from '../tolerance/tolerance-rows.ts';
import { shownStudy } from '../tolerance/tolerance-solve.ts';
import { toleranceLines, whereNow } from '../tolerance/tolerance-words.ts';
import type { Figure } from './chart-figure.ts';
import { commonNotes, drawn, type PictureFormat, page, savePicture } from './chart-pictures.ts';
import type { Row } from './table-text.ts';
import { sharesFigure } from './tolerance-picture.ts';
import { toleranceTable } from './tolerance-table.ts';

const words = text.tolerance;

/** Without what the build has not got. */
export const pictureRows = () => toleranceRows.value.filter(({ hasPart }) => hasPart);

function figure(): Figure {
  const { id, name } = selectedBuild.value;
  const title = words.picture(name, whereNow());
  return sharesFigure({
    title: shownStudy.value.stale ? text.export.lastSolved(title) : title,
    rows: pictureRows(),
    sort: sortedBy.value,
    colour: lineOf(id).colour,
    notes: [...toleranceLines(), ...commonNotes()],
    ...page(),
  });
}

export const saveShares = (format: PictureFormat): Promise<void> =>
  savePicture(words.file, format, async () => drawn(figure(), format));

export const toleranceData = (): Row[] => toleranceTable(shownStudy.value.study, units.value);
