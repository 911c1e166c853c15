/** A file of a test bench on its way into the project: what the person has said of it so far, and what comes out. */
import { computed, signal } from '@preact/signals';
import { guessColumns, type Mapping, type Quantity, SIGNS } from '../../measured/mapping.ts';
import {
  asMeasurement,
  DEFAULT_MOST_POINTS,
  type Measured,
  type MeasureSettings,
  measure,
  usualWindow,
} from '../../measured/measure.ts';
import { normalise, type Read } from '../../measured/normalise.ts';
import { guessSettings, readTable, type Table, type TableSettings } from '../../measured/table.ts';
import { encodeProject, MAX_CHARACTERS } from '../../model/codec.ts';
import type { MeasurementConditions } from '../../model/measurement.ts';
import { idFor } from '../../model/new-build.ts';
import { editProject } from '../app/apply.ts';
import { tell } from '../app/notices.ts';
import { project, selectedBuild, withBuild } from '../app/store.ts';
import { undoAct } from '../app/undo-act.ts';
import { measuredWords as words } from '../text/measured.ts';

export const GAS_CHOICES = ['kept', 'bench', 'slowest-points', 'typed'] as const;
export type GasChoice = (typeof GAS_CHOICES)[number];

export interface Draft {
  readonly buildId: string;
  readonly fileName: string;
  readonly content: string;
  readonly settings: TableSettings;
  readonly mapping: Mapping;
  readonly gas: GasChoice;
  readonly gas_N: number;
  readonly friction_N: number;
  /** undefined: the usual one for the spacing of the samples. */
  readonly window_s?: number;
  readonly keep: MeasureSettings['keep'];
  readonly mostPoints: number;
  readonly name: string;
  readonly conditions: MeasurementConditions;
}

export const draft = signal<Draft | undefined>(undefined);

export const changeDraft = (change: Partial<Draft>): void => {
  if (draft.value) draft.value = { ...draft.value, ...change };
};
export const changeMapping = (change: Partial<Mapping>): void => {
  if (draft.value) changeDraft({ mapping: { ...draft.value.mapping, ...change } });
};

/** Other settings give other columns, so what they hold is guessed anew. */
export function changeSettings(change: Partial<TableSettings>): void {
  const now = draft.value;
  if (!now) return;
  const settings = { ...now.settings, ...change };
  const { headings } = readTable(now.content, settings, settings.headerLines + PREVIEW_LINES);
  changeDraft({ settings, mapping: { ...now.mapping, columns: guessColumns(headings) } });
}

/** One column holds a quantity; it is taken from the column that held it before. */
export function assign(at: number, quantity: Quantity | undefined, unit?: string): void {
  const now = draft.value;
  if (!now) return;
  const others = now.mapping.columns.filter((column) => column.at !== at && column.quantity !== quantity);
  const own = quantity ? [{ quantity, at, ...(unit !== undefined && { unit }) }] : [];
  changeMapping({ columns: [...others, ...own].sort((a, b) => a.at - b.at) });
}

const PREVIEW_LINES = 40;

/** @param buildId  of the build that was measured */
export function beginReading(buildId: string, fileName: string, content: string): void {
  const settings = guessSettings(content);
  const { headings } = readTable(content, settings, settings.headerLines + PREVIEW_LINES);
  draft.value = {
    buildId,
    fileName,
    content,
    settings,
    mapping: {
      columns: guessColumns(headings),
      speedSign: SIGNS[0],
      forceSign: SIGNS[0],
      positionSign: 'compression',
    },
    gas: 'kept',
    gas_N: 0,
    friction_N: 0,
    keep: 'all',
    mostPoints: DEFAULT_MOST_POINTS,
    name: fileName.replace(/\.[^.]*$/, '').slice(0, 200),
    conditions: {},
  };
}

const content = computed(() => draft.value?.content ?? '');
const settings = computed(() => draft.value?.settings);

export const table = computed<Table | undefined>(() => settings.value && readTable(content.value, settings.value));

/** The window in use. */
export const window_s = computed<number>(() => {
  const now = draft.value;
  if (now?.window_s !== undefined) return now.window_s;
  if (!now || !table.value) return 0;
  const read = normalise(table.value, now.mapping);
  return read.ok && read.value.time_s ? usualWindow(read.value.time_s) : 0;
});

export const measured = computed<Read<Measured> | undefined>(() => {
  const now = draft.value;
  if (!now || !table.value) return undefined;
  const { mapping, gas, gas_N, friction_N, keep, mostPoints } = now;
  const taken = gas === 'typed' ? gas_N : gas;
  return measure(table.value, { mapping, gas: taken, friction_N, window_s: window_s.value, keep, mostPoints });
});

/** Puts the measurement into the project. @returns whether it is in */
export function keepReading(): boolean {
  const now = draft.value;
  const read = measured.value;
  if (!now || !read?.ok) return false;
  const build = project.value.builds.find(({ id }) => id === now.buildId) ?? selectedBuild.value;
  const taken = (build.measurements ?? []).map(({ id }) => id);
  const { name, conditions } = now;
  const about = { id: idFor(name, taken), name, notes: '', sourceFile: now.fileName.slice(0, 300), conditions };
  const measurement = asMeasurement(read.value, about, now.gas === 'bench');
  const add = () =>
    withBuild(build.id, (each) => ({ ...each, measurements: [...(each.measurements ?? []), measurement] }));
  if (encodeProject(add()).length > MAX_CHARACTERS) {
    tell(words.tooLarge, { tone: 'problem' });
    return false;
  }
  const fault = editProject(add, { label: words.addLabel(name) });
  if (fault) {
    tell(fault.message, { tone: 'problem' });
    return false;
  }
  tell(words.added(name, measurement.points.speed_m_s.length), {
    action: undoAct(),
  });
  return true;
}
