/** How far a build lies off each of its measurements, in numbers for a table and for a file. */
import { type Residual, type Scatter, scatterOf } from '../../measured/residuals.ts';
import { adjustersOf } from '../../model/adjusters.ts';
import type { Measurement, MeasurementConditions } from '../../model/measurement.ts';
import type { Build, Project } from '../../model/project.ts';
import type { Units } from '../../units/own-units.ts';
import { showField } from '../app/quantities.ts';
import type { ForceCurve } from '../app/solved.ts';
import { headed, measureOf } from '../export/columns.ts';
import type { Row } from '../export/table-text.ts';
import { measuredWords as words } from '../text/measured.ts';
import { residualsOn } from './measured-curve.ts';

export interface MeasuredRow {
  readonly measurement: Measurement;
  readonly compression?: Scatter;
  readonly rebound?: Scatter;
  /** Points that lie beyond the speeds of the curve. */
  readonly beyond: number;
}

export function rowOf(measurement: Measurement, curve: ForceCurve): MeasuredRow {
  const residuals = residualsOn(measurement, curve);
  const [compression, rebound] = [scatterOf(residuals, 1), scatterOf(residuals, -1)];
  return {
    measurement,
    ...(compression && { compression }),
    ...(rebound && { rebound }),
    beyond: measurement.points.speed_m_s.length - residuals.length,
  };
}

/** Written-down conditions that are not those of the document, in words. */
export function otherConditions(
  conditions: MeasurementConditions,
  { fluid, gas }: Pick<Project, 'fluid' | 'gas'>,
  build: Build,
): string[] {
  const { oilTemperature_degC: oil, gasGaugePressure_bar: charge, clicks = {} } = conditions;
  const turned = adjustersOf(build).flatMap(({ id, clicks: now }) => {
    const then = clicks[id];
    return then === undefined || then === now ? [] : [words.clicks(words.adjuster[id], then)];
  });
  return [
    ...(oil !== undefined && oil !== fluid.temperature_degC ? [words.at(showField('temperature', oil))] : []),
    ...(charge !== undefined && charge !== gas.gaugePressure_bar ? [words.at(showField('gasPressure', charge))] : []),
    ...turned,
  ];
}

const residualRow = (
  name: string,
  each: Residual,
  speed: (si: number) => number,
  force: (si: number) => number,
): Row => [
  name,
  speed(each.speed_m_s),
  force(each.measured_N),
  force(each.build_N),
  force(each.residual_N),
  each.build_N === 0 ? undefined : (100 * each.residual_N) / Math.abs(each.build_N),
  each.isOutlier ? words.csv.yes : undefined,
];

/** Every measured point within the speeds of the curve, with what the build does there. */
export function residualTable(measurements: readonly Measurement[], curve: ForceCurve, units: Units): Row[] {
  const [speed, force] = [measureOf(units, 'speed'), measureOf(units, 'force')];
  const { csv } = words;
  return [
    [
      csv.measurement,
      headed(csv.speed, speed),
      headed(csv.measured, force),
      headed(csv.build, force),
      headed(csv.residual, force),
      csv.share,
      csv.outlier,
    ],
    ...measurements.flatMap((measurement) =>
      residualsOn(measurement, curve).map((each) => residualRow(measurement.name, each, speed.of, force.of)),
    ),
  ];
}
