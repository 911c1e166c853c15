/** The lines of a chart as a table: a column of speeds and one of each line, in the chosen units. */
import type { Units } from '../../units/own-units.ts';
import type { ForceCurve } from '../app/solved.ts';
import { type ChartName, type Series, type Shown, seriesOf } from '../charts/chart-data.ts';
import { type BandArea, bandAreas } from '../charts/force-bands.ts';
import { isShimPart, type LiftRange, type ShimQuantity } from '../charts/shim-series.ts';
import { text } from '../text/en.ts';
import { gaugeOf, headed, type Measure, measureOf, SHARE } from './columns.ts';
import type { Row } from './table-text.ts';

const words = text.export.columns;

export interface NamedCurve {
  readonly id: string;
  readonly name: string;
  readonly curve: ForceCurve;
}

/** What the chart shows beside what its lines need. */
export interface ChartShown extends Shown {
  readonly withBands: boolean;
  /** The band of its tolerances, for the one build that has it on show. */
  readonly scatter?: {
    readonly buildId: string;
    readonly areas: Readonly<Record<'compression' | 'rebound', readonly BandArea[]>>;
  };
  /** Whose force the others are measured from; told in their heads. */
  readonly baselineName: string;
}

interface Line {
  readonly head: string;
  /** In the shown unit, by speed in m/s. */
  readonly values: ReadonlyMap<number, number>;
}

function shimMeasure(quantity: ShimQuantity, units: Units): Measure {
  if (quantity === 'lift') return measureOf(units, 'length');
  return quantity === 'stress' ? measureOf(units, 'stress') : SHARE;
}

function measureFor(chart: ChartName, { comparison, shimQuantity }: ChartShown, units: Units): Measure {
  switch (chart) {
    case 'force':
      return comparison?.as === 'share' ? SHARE : measureOf(units, 'force');
    case 'paths':
      return SHARE;
    case 'pressures':
      return gaugeOf(units);
    case 'opening':
      return measureOf(units, 'length');
    case 'shims':
      return shimMeasure(shimQuantity, units);
  }
}

function forceName({ comparison, withoutGas, baselineName }: ChartShown): string {
  if (!comparison) return withoutGas ? words.forceWithoutGas : words.force;
  return withoutGas ? words.firmerWithoutGas(baselineName) : words.firmer(baselineName);
}

function nameOf(part: Series['part'], shown: ChartShown): string {
  const way = shown.direction === 1 ? words.way.compression : words.way.rebound;
  if (isShimPart(part)) {
    const name = text.shims.quantityChoice[shown.shimQuantity].toLowerCase();
    return `${text.shims.line(part.slice('shims '.length))}, ${name}, ${way}`;
  }
  switch (part) {
    case 'compression':
    case 'rebound':
      return `${forceName(shown)}, ${words.way[part]}`;
    case 'compressionChamber':
      return `${words.chamber.compression}, ${way}`;
    case 'reboundChamber':
      return `${words.chamber.rebound}, ${way}`;
    case 'only':
      return `${shown.stack === 'base' ? words.baseOpening : words.opening}, ${way}`;
    default:
      return `${text.chart.valve[shown.valve]}, ${words.share(text.chart.path[part])}, ${way}`;
  }
}

const paired = (speeds: readonly number[], values: readonly (number | null)[], measure: Measure): Line['values'] =>
  new Map(
    speeds.flatMap((speed, i): [number, number][] => {
      const value = values[i];
      return value === null ? [] : [[speed, measure.of(value)]];
    }),
  );

/** The two edges of a band; a speed without one is in neither. */
function edgesOf(areas: readonly BandArea[], name: string, edges: readonly [string, string], force: Measure): Line[] {
  if (areas.length === 0) return [];
  const edge = (word: string, side: 'low_N' | 'high_N'): Line => ({
    head: headed(`${name}, ${word}`, force),
    values: new Map(areas.flatMap((area) => [...paired(area.speeds_m_s, area[side], force)])),
  });
  return [edge(edges[0], 'low_N'), edge(edges[1], 'high_N')];
}

/** Of the coefficients, and of the tolerances of the build that has theirs on show. */
function bandsOf({ id, name, curve }: NamedCurve, part: 'compression' | 'rebound', shown: ChartShown, force: Measure) {
  if (shown.comparison) return [];
  const told = words.of(name, nameOf(part, shown));
  const { withBands, scatter } = shown;
  const coefficients = withBands ? bandAreas(curve, part === 'compression' ? 1 : -1, shown.withoutGas) : [];
  const own = scatter?.buildId === id ? scatter.areas[part] : [];
  const { bandLow, bandHigh } = text.tolerance.columns;
  return [
    ...edgesOf(coefficients, told, [words.bandLow, words.bandHigh], force),
    ...edgesOf(own, told, [bandLow, bandHigh], force),
  ];
}

/** Trough and crest of a lift that waves. */
function wavesOf(speeds: readonly number[], range: NonNullable<Series['range']>, name: string, lift: Measure): Line[] {
  const end = (of: (name: string) => string, side: keyof LiftRange): Line => ({
    head: headed(of(name), lift),
    values: paired(
      speeds,
      range.map((each) => each?.[side] ?? null),
      lift,
    ),
  });
  return [end(text.wave.at.trough, 'low_m'), end(text.wave.at.crest, 'high_m')];
}

function linesOf(chart: ChartName, build: NamedCurve, shown: ChartShown, units: Units): Line[] {
  const measure = measureFor(chart, shown, units);
  return seriesOf(chart, build.id, build.curve, shown).flatMap(({ part, speeds_m_s, values, range }) => {
    const line = {
      head: headed(words.of(build.name, nameOf(part, shown)), measure),
      values: paired(speeds_m_s, values, measure),
    };
    if (range) return [line, ...wavesOf(speeds_m_s, range, words.of(build.name, nameOf(part, shown)), measure)];
    const isForce = part === 'compression' || part === 'rebound';
    return isForce ? [line, ...bandsOf(build, part, shown, measure)] : [line];
  });
}

/** Speeds without sign, rising; an empty cell where a line has no answer. Empty without builds. */
export function chartRows(chart: ChartName, builds: readonly NamedCurve[], shown: ChartShown, units: Units): Row[] {
  const lines = builds.flatMap((build) => linesOf(chart, build, shown, units));
  if (lines.length === 0) return [];
  const speed = measureOf(units, 'speed');
  const solvedFor = builds.flatMap(({ curve }) => curve.points.map((point) => Math.abs(point.shaftSpeed_m_s)));
  const speeds = [...new Set(solvedFor)].sort((a, b) => a - b);
  return [
    [headed(words.speed, speed), ...lines.map(({ head }) => head)],
    ...speeds.map((at): Row => [speed.of(at), ...lines.map(({ values }) => values.get(at))]),
  ];
}
