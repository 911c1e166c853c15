/** The chart on show as signals: lines in the person's units, and where the cursor cuts each. */
import { computed, signal } from '@preact/signals';
import { STANDARD_ATMOSPHERE_PA } from '../../units/si.ts';
import { lineOf } from '../app/lines.ts';
import { longStale } from '../app/long-stale.ts';
import { hasBase, stackOf } from '../app/places.ts';
import { gasForce } from '../app/preferences.ts';
import { inShown, type ShownKind, unitOfShown } from '../app/quantities.ts';
import { type Outcome, outcomes } from '../app/solve.ts';
import { baseline, direction, place, project, selectedBuild, topSpeed, visibleBuilds } from '../app/store.ts';
import { fittedLines } from '../measured/fitted-lines.ts';
import { measuredDots } from '../measured/measured-dots.ts';
import { text } from '../text/en.ts';
import { benchAimLines } from './aim-line.ts';
import { type ChartName, rangeOf, type Series, type Shown, seriesOf } from './chart-data.ts';
import { comparing, comparison, measure } from './comparison.ts';
import { type Level, levelsOf, limitOf } from './levels.ts';
import { type LineMark, marksOf } from './line-marks.ts';
import type { ValveName } from './path-shares.ts';
import type { PlotArea, PlotLine, PlotView } from './plot-layout.ts';
import { isShimPart, type ShimQuantity } from './shim-series.ts';
import { shownAreas } from './shown-areas.ts';
import { chart } from './tabs.ts';
import { waveAreas } from './wave-areas.ts';

/** What of each shim the chart of the shims shows. */
export const shimQuantity = signal<ShimQuantity>('lift');

const wantedValve = signal<ValveName | undefined>(undefined);
/** Whose paths are shown: that of the stack on show unless chosen otherwise. */
export const pathsValve = computed<ValveName>(() => {
  if (!hasBase(project.value.damper.layout)) return 'piston';
  return wantedValve.value ?? (place.value === 'baseCompression' ? 'base' : 'piston');
});
export const showPathsOf = (valve: ValveName): void => {
  wantedValve.value = valve;
};

export const shown = computed<Shown>(() => ({
  direction: direction.value,
  stack: stackOf(place.value),
  valve: pathsValve.value,
  withoutGas: gasForce.value === 'subtracted',
  shimQuantity: shimQuantity.value,
  ...(comparing.value && comparison.value && { comparison: comparison.value }),
}));

/** What stands above the zero line, and below it where both directions or signs are shown. */
export function sidesShown(): { readonly up: string; readonly down?: string } {
  if (comparing.value) return { up: text.chart.firmer, down: text.chart.softer };
  if (chart.value === 'force') return { up: text.chart.compression, down: text.chart.rebound };
  return { up: wayShown() };
}

/** The chamber and path charts show one direction, the opening chart one stack, the chart of its shims that of one build. */
export function wayShown(): string {
  const stack = text.placeOf(project.value.damper.layout, place.value).name;
  if (chart.value === 'opening') return stack;
  if (chart.value === 'shims') return text.shims.ofBuild(stack, selectedBuild.value.name);
  return direction.value === 1 ? text.chart.compression : text.chart.rebound;
}

export interface ShownLine extends PlotLine {
  readonly buildId: string;
  readonly label: string;
  /** Without the build, which its colour and dash tell: for a chart too narrow for both. */
  readonly brief?: string;
  readonly part: Series['part'];
  /** Its name is written beside it; lines that share one have it once. */
  readonly named: boolean;
  readonly marks: readonly LineMark[];
}

interface Scale {
  readonly yTitle: string;
  readonly toShown: (si: number) => number;
}

const quantity = (kind: ShownKind, title: (unit: string) => string, from = 0): Scale => ({
  yTitle: title(unitOfShown(kind)),
  toShown: (si) => inShown(kind, si - from),
});

const shareScale = (yTitle: string): Scale => ({ yTitle, toShown: (share) => share * 100 });

function forceScale(): Scale {
  const { withoutGas } = shown.value;
  if (!comparing.value) return quantity('force', withoutGas ? text.chart.forceWithoutGasAxis : text.chart.forceAxis);
  const title = withoutGas ? text.chart.differenceWithoutGasAxis : text.chart.differenceAxis;
  return measure.value === 'share' ? shareScale(title('%')) : quantity('force', title);
}

function shimScale(): Scale {
  const asked = shimQuantity.value;
  const title = text.shims.axis[asked];
  return asked === 'lift' || asked === 'stress' ? quantity(asked, title) : shareScale(title('%'));
}

function scaleOf(name: ChartName): Scale {
  switch (name) {
    case 'force':
      return forceScale();
    case 'paths':
      return shareScale(text.chart.pathsAxis[pathsValve.value]);
    case 'pressures':
      return quantity('pressure', text.chart.pressuresAxis, STANDARD_ATMOSPHERE_PA);
    case 'opening':
      return quantity('lift', text.chart.openingAxis);
    case 'shims':
      return shimScale();
  }
}

/** The baseline is zero in both directions, and has one name. */
const isZeroLine = (buildId: string): boolean => comparing.value && buildId === baseline.value.id;

/** Of a build's chamber or path. */
function briefOf(part: Series['part']): string | undefined {
  if (part === 'compressionChamber' || part === 'reboundChamber') return text.chart[part];
  if (part === 'only' || part === 'compression' || part === 'rebound' || isShimPart(part)) return undefined;
  return text.chart.path[part];
}

function labelOf({ buildId, part }: Series, name: string): string {
  if (isShimPart(part)) return text.shims.line(part.slice('shims '.length));
  const brief = briefOf(part);
  if (brief) return `${name}, ${brief}`;
  if (part !== 'compression' && part !== 'rebound') return name;
  return comparing.value && !isZeroLine(buildId) ? text.chart.ofWay(name, text.chart[part]) : name;
}

/** The lines of one build are told apart by their widths too. */
const WIDTHS: Partial<Record<Series['part'], number>> = { reboundChamber: 1.25, bleed: 1.5, leakage: 1, poppet: 1 };
const WIDTH = 2.25;
/** Differences of both directions lie about one zero line. */
const REBOUND_DIFFERENCE_WIDTH = 1.25;

const widthOf = (part: Series['part']): number =>
  part === 'rebound' && comparing.value ? REBOUND_DIFFERENCE_WIDTH : (WIDTHS[part] ?? WIDTH);

const baselineIsStale = (): boolean => outcomes.value.get(baseline.value.id)?.stale ?? false;

function lineFor(series: Series, outcome: Outcome, buildName: string, toShown: Scale['toShown']): ShownLine {
  const { colour, dash } = lineOf(series.buildId);
  const label = labelOf(series, buildName);
  const brief = briefOf(series.part);
  return {
    buildId: series.buildId,
    part: series.part,
    label,
    ...(brief && { brief }),
    name: label,
    x: series.speeds_m_s.map((speed) => inShown('speed', speed)),
    y: series.values.map((value) => (value === null ? null : toShown(value))),
    colour,
    dash,
    width: widthOf(series.part),
    faded: longStale.value && (outcome.stale || (comparing.value && baselineIsStale())),
    named: series.part !== 'rebound' || (comparing.value && !isZeroLine(series.buildId)),
    marks: outcome.curve ? marksOf(series.part, outcome.curve, shown.value) : [],
  };
}

/** Of the shims of several builds nobody could tell the lines apart: that chart shows the build in the drawing. */
export const chartBuilds = computed(() => (chart.value === 'shims' ? [selectedBuild.value] : visibleBuilds.value));

export const shownLines = computed<ShownLine[]>(() => {
  const { toShown } = scaleOf(chart.value);
  if (comparing.value && !comparison.value) return [];
  return chartBuilds.value.flatMap((build) => {
    const outcome = outcomes.value.get(build.id);
    if (!outcome?.curve) return [];
    return seriesOf(chart.value, build.id, outcome.curve, shown.value).map((series) =>
      lineFor(series, outcome, build.name, toShown),
    );
  });
});

/** What is the same at every speed and in every build: pressures, or the limit that a shim uses. */
export const shownLevels = computed<Level[]>(() => {
  if (chart.value === 'shims') return limitOf(shimQuantity.value);
  if (chart.value !== 'pressures') return [];
  const curves = visibleBuilds.value.flatMap((build) => outcomes.value.get(build.id)?.curve ?? []);
  return levelsOf(curves, direction.value);
});

/** An axis of differences shows no less than this each way, lest the last digits of equal builds look like one [N; 1 %]. */
const LEAST_DIFFERENCE = { difference: 1, share: 0.01 } as const;

function leastRange(): number[] {
  if (!comparing.value || measure.value === 'force') return [];
  const least = scaleOf('force').toShown(LEAST_DIFFERENCE[measure.value]);
  return [-least, least];
}

/** The aim, on the force chart alone. */
export const shownAim = computed<ShownLine[]>(() =>
  chart.value === 'force' && !comparing.value ? benchAimLines(shown.value.withoutGas) : [],
);

/** From trough to crest, under the lines of shims that wave. */
const shownWaves = computed<PlotArea[]>(() => {
  if (chart.value !== 'shims') return [];
  const lift = (si: number): number => inShown('lift', si);
  return chartBuilds.value.flatMap(({ id }) => {
    const curve = outcomes.value.get(id)?.curve;
    const areas = curve ? seriesOf('shims', id, curve, shown.value).flatMap(waveAreas) : [];
    return areas.map(({ speeds_m_s, low_m, high_m }) => ({
      x: speeds_m_s.map((speed) => inShown('speed', speed)),
      ...{ low: low_m.map(lift), high: high_m.map(lift), colour: lineOf(id).colour },
      ...{ kind: 'tint' as const, faded: false },
    }));
  });
});

const viewNow = computed<PlotView>(() => {
  const lines = [...shownLines.value, ...shownAim.value];
  const values = lines.flatMap((line) => line.y);
  const areas = [...shownAreas.value, ...shownWaves.value];
  const edges = areas.flatMap(({ low, high }) => [...low, ...high]);
  const levels = shownLevels.value.map(({ value }) => value);
  const dots = chart.value === 'force' && !comparing.value ? measuredDots.value : [];
  const top = inShown('speed', topSpeed.value);
  const marks = dots.flatMap(({ x, y }) => y.filter((_, i) => x[i] <= top));
  return {
    areas,
    dots,
    lines: chart.value === 'force' && !comparing.value ? [...lines, ...fittedLines.value] : lines,
    xRange: [0, top],
    yRange: rangeOf([...values, ...edges, ...levels, ...leastRange(), ...marks]),
    xTitle: text.chart.speedAxis(unitOfShown('speed')),
    yTitle: shownWaves.value.length > 0 ? text.shims.axisWaves(unitOfShown('lift')) : scaleOf(chart.value).yTitle,
  };
});

let drawnLast: { readonly view: PlotView; readonly written: string } | undefined;

/** The same object while nothing in it has changed: nothing on the page takes as long as drawing a chart. */
export const plotView = computed<PlotView>(() => {
  const view = viewNow.value;
  const written = JSON.stringify(view);
  if (drawnLast?.written !== written) drawnLast = { view, written };
  return drawnLast.view;
});
