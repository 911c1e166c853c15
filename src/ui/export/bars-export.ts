/** The bars of the shims, and of what each does, as picture files. */
import { millimetresFromMetres } from '../../units/si.ts';
import { lineOf } from '../app/lines.ts';
import { inShown, show, showBare, showField, showNumber, unitOfShown, writeField } from '../app/quantities.ts';
import { cursorSpeed, place, project, selectedBuild } from '../app/store.ts';
import { drawnStack } from '../app/views.ts';
import { wayShown } from '../charts/chart-model.ts';
import { bareReserve } from '../charts/reserve.ts';
import { type ShimRow, shimRows } from '../charts/shim-rows.ts';
import { signed } from '../effects/effect-force.ts';
import { type EffectRow, effectRows, steps } from '../effects/effect-rows.ts';
import { text } from '../text/en.ts';
import { type BarPanel, barsFigure } from './bars-picture.ts';
import { commonNotes, drawn, type PictureFormat, page, savePicture } from './chart-pictures.ts';

const words = text.shims;
const withUnit = (name: string, unit: string): string => `${name}, ${unit}`;

const nameOf = ({
  n,
  outerDiameter_mm,
  thickness_mm,
}: Pick<ShimRow, 'n' | 'outerDiameter_mm' | 'thickness_mm'>): string =>
  `${n}  ${words.size(writeField('length', outerDiameter_mm), showField('length', thickness_mm))}`;

function quantityPanel(
  rows: readonly ShimRow[],
  kind: 'lift' | 'stress',
  name: string,
  read: (values: ShimRow['values']) => number,
): BarPanel {
  const si = rows.map(({ values }) => read(values));
  return {
    title: withUnit(name, unitOfShown(kind)),
    values: si.map((value) => inShown(kind, value)),
    written: si.map((value) => showBare(kind, value)),
  };
}

/** The mean alone where the stack is round, else between trough and crest. */
function liftPanels(rows: readonly ShimRow[]): BarPanel[] {
  const lift = (name: string, read: (values: ShimRow['values']) => number) => quantityPanel(rows, 'lift', name, read);
  const mean = (name: string) => lift(name, ({ lift_m }) => lift_m);
  if (!rows.some(({ values }) => values.wave)) return [mean(words.lift)];
  const panels = [
    lift(text.wave.at.trough(words.lift), ({ lift_m, wave }) => wave?.trough_m ?? lift_m),
    mean(words.meanLift),
    lift(text.wave.at.crest(words.lift), ({ lift_m, wave }) => wave?.crest_m ?? lift_m),
  ];
  const full = Math.max(...panels.flatMap(({ values }) => values.map((value) => value ?? 0)));
  return panels.map((panel) => ({ ...panel, full }));
}

/** The bar shows the share that is used, the number the reserve, as on the page. */
function reservePanel(rows: readonly ShimRow[], kind: 'life' | 'yield'): BarPanel {
  const uses = rows.map(({ values }) => values.use?.[kind]);
  return {
    title: words[kind],
    values: uses.map((use) => use ?? null),
    written: uses.map((use) => (use === undefined ? text.readout.none : bareReserve(use, showNumber))),
    limit: 1,
  };
}

export function saveShimBars(format: PictureFormat): Promise<void> {
  const rows = shimRows.value;
  const isWaved = rows.some(({ values }) => values.wave);
  const figure = barsFigure({
    title: words.caption(wayShown(), show('speed', cursorSpeed.value)),
    names: rows.map(nameOf),
    panels: [
      ...liftPanels(rows),
      quantityPanel(rows, 'stress', words.stress, ({ stress_Pa }) => stress_Pa),
      reservePanel(rows, 'life'),
      reservePanel(rows, 'yield'),
    ],
    colour: lineOf(drawnStack.value.build.id).colour,
    notes: [...(isWaved ? [words.wavesNote] : []), words.note, ...commonNotes()],
    ...page(),
  });
  return savePicture(text.export.files.shimsAtCursor, format, async () => drawn(figure, format));
}

function effectPanel(
  rows: readonly EffectRow[],
  title: string,
  read: (row: EffectRow) => number | null | undefined,
): BarPanel {
  const forces = rows.map(read);
  return {
    title: withUnit(title, unitOfShown('force')),
    values: forces.map((force) => (force === null || force === undefined ? null : inShown('force', force))),
    written: forces.map((force) => {
      if (force === undefined) return text.effects.refused;
      return force === null ? text.readout.notSolved : signed(force);
    }),
  };
}

export function saveEffectBars(format: PictureFormat): Promise<void> {
  const rows = effectRows.value;
  const effects = text.effects;
  const { name, id } = selectedBuild.value;
  const stack = text.placeOf(project.value.damper.layout, place.value).name;
  const step = (length_m: number): string => showField('length', millimetresFromMetres(length_m));
  const figure = barsFigure({
    title: effects.caption(stack, name, show('speed', cursorSpeed.value), unitOfShown('force')),
    names: rows.map(nameOf),
    panels: [
      effectPanel(rows, effects.thicker(step(steps.value.thickness_m)), ({ thicker_N }) => thicker_N),
      effectPanel(rows, effects.wider(step(steps.value.diameter_m)), ({ wider_N }) => wider_N),
      effectPanel(rows, effects.out, ({ out_N }) => out_N),
    ],
    colour: lineOf(id).colour,
    notes: [effects.note, ...commonNotes()],
    ...page(),
  });
  return savePicture(effects.file, format, async () => drawn(figure, format));
}
