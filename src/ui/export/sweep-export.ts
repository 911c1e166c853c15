/** A sweep as a picture and as data. */
import { units } from '../app/preferences.ts';
import { show } from '../app/quantities.ts';
import { cursorSpeed, project } from '../app/store.ts';
import type { Sweep } from '../sweeps/sweep.ts';
import { setMarks, sweepLines, sweepView } from '../sweeps/sweep-lines.ts';
import { sweepTroubles } from '../sweeps/sweep-troubles.ts';
import { text } from '../text/en.ts';
import { type Figure, figureOf } from './chart-figure.ts';
import { commonNotes, drawn, type PictureFormat, page, savePicture } from './chart-pictures.ts';
import { sweepRows } from './sweep-table.ts';
import type { Row } from './table-text.ts';

const words = text.export;
const SET_SIGN = '○';

const speedNow = (): string => text.readout.title(show('speed', cursorSpeed.value));

function sweepFigure(sweep: Sweep): Figure {
  const lines = sweepLines(sweep);
  return figureOf({
    title: words.title(project.value.name, `${text.chart.tabs[sweep.name]}. ${speedNow()}`),
    view: sweepView(sweep, lines),
    signs: setMarks(sweep).map(({ x, y, colour }) => ({ x, y, sign: SET_SIGN, colour })),
    levels: [],
    up: text.chart.compression,
    down: text.chart.rebound,
    notes: [words.setSign(SET_SIGN), sweep.note(), ...sweepTroubles(sweep), ...commonNotes()],
    ...page(),
  });
}

export const saveSweep = (sweep: Sweep, format: PictureFormat): Promise<void> =>
  savePicture(words.files[sweep.name], format, async () => drawn(sweepFigure(sweep), format));

export const sweepData = (sweep: Sweep): Row[] =>
  sweepRows(sweep.axis(), sweep.curves.value, sweep.toShown, units.value);
