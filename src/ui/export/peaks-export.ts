/** Force at the peak speeds of strokes from slow to fast, as a picture and as data. */
import { frequency_Hz, stroke_mm } from '../app/cycle-motion.ts';
import { units } from '../app/preferences.ts';
import { inShown, showField, unitOfShown } from '../app/quantities.ts';
import { project } from '../app/store.ts';
import { peakCurves, peakView } from '../cycle/peak-lines.ts';
import { peakTroubles } from '../cycle/peaks-view.tsx';
import { text } from '../text/en.ts';
import { type Figure, figureOf } from './chart-figure.ts';
import { commonNotes, drawn, type PictureFormat, page, savePicture } from './chart-pictures.ts';
import { sweepRows } from './sweep-table.ts';
import type { Row } from './table-text.ts';

const words = text.cycle.peaks;

function peaksFigure(): Figure {
  const strokes = text.export.peaks(showField('length', stroke_mm.value), showField('frequency', frequency_Hz.value));
  return figureOf({
    title: text.export.title(project.value.name, words.picture),
    view: peakView.value,
    signs: [],
    levels: [],
    up: text.chart.compression,
    down: text.chart.rebound,
    notes: [strokes, words.note, ...peakTroubles(), ...commonNotes()],
    ...page(),
  });
}

export const savePeaks = (format: PictureFormat): Promise<void> =>
  savePicture(words.file, format, async () => drawn(peaksFigure(), format));

export const peaksData = (): Row[] =>
  sweepRows(
    words.axis(unitOfShown('speed')),
    peakCurves.value,
    (speed_m_s) => inShown('speed', speed_m_s),
    units.value,
  );
