/** Measurements of a document, each under the conditions that were written down of it. */

import { hasFriction, hasGasForce } from '../../model/measurement.ts';
import type { Build, Measurement, Project } from '../../model/project.ts';
import { withSetting } from '../../model/setting.ts';
import { InputError } from '../../units/fault.ts';
import { metresFromMillimetres } from '../../units/si.ts';
import { type FitName, type FitOutcome, fitDamper } from '../fit/fit-damper.ts';
import type { FitGroup } from '../fit/force-model.ts';
import { damperFromProject, findBuild } from '../from-model.ts';
import type { SolveHooks, TheoryChoice } from '../types.ts';

export interface MeasuredFitOptions {
  /** Of the build, or on their way into it. */
  readonly measurements: readonly Measurement[];
  readonly theory: TheoryChoice;
  /** Absent, the usual ones. */
  readonly names?: readonly FitName[];
}

/** What was not written down is as the document has it. Outliers, and points at rest, where friction may be anything, stay out. */
function groupOf(project: Project, buildId: string, measurement: Measurement): FitGroup {
  const { conditions, points, outliers } = measurement;
  const { oilTemperature_degC, clicks, gasGaugePressure_bar, position_mm } = conditions;
  const gas = {
    ...project.gas,
    ...(gasGaugePressure_bar !== undefined && { gaugePressure_bar: gasGaugePressure_bar }),
  };
  const then = withSetting({ ...project, gas }, buildId, { oilTemperature_degC, clicks });
  const wrong = new Set(outliers);
  const counted = points.speed_m_s.flatMap((v, i) => (v === 0 || wrong.has(i) ? [] : [i]));
  const stroke_m = position_mm === undefined ? undefined : metresFromMillimetres(position_mm);
  return {
    damper: damperFromProject(then, buildId, stroke_m),
    speed_m_s: counted.map((i) => points.speed_m_s[i]),
    force_N: counted.map((i) => points.force_N[i]),
    hasGas: hasGasForce(measurement),
    hasFriction: hasFriction(measurement),
  };
}

/**
 * Fits the coefficients of a build to its measurements.
 * @throws InputError as `damperFromProject` and `withSetting` do; SolveStopped when the caller stops the run
 */
export function fitBuild(
  project: Project,
  buildId: string,
  { measurements, theory, names }: MeasuredFitOptions,
  hooks: SolveHooks = {},
): FitOutcome {
  const groups = measurements.map((measurement) => groupOf(project, buildId, measurement));
  return fitDamper(
    { groups: groups.filter(({ force_N }) => force_N.length > 0), theory, ...(names && { names }) },
    hooks,
  );
}

export interface KeptFitOptions {
  /** Absent, all that are kept with the build. */
  readonly measurementIds?: readonly string[];
  readonly theory: TheoryChoice;
  /** Absent, the usual ones. */
  readonly names?: readonly FitName[];
}

/** As `fitBuild`, to measurements that are kept with the build. @throws InputError `build.unknown`, `measurement.unknown` too */
export function fitMeasured(
  project: Project,
  buildId: string,
  { measurementIds, ...options }: KeptFitOptions,
  hooks: SolveHooks = {},
): FitOutcome {
  const measurements = measurementsOf(findBuild(project, buildId), measurementIds);
  return fitBuild(project, buildId, { measurements, ...options }, hooks);
}

/** The measurements of a build with these ids; all of them without a wish. @throws InputError `measurement.unknown` */
export function measurementsOf({ measurements = [] }: Build, ids?: readonly string[]): Measurement[] {
  if (!ids) return measurements;
  return ids.map((id) => {
    const found = measurements.find((each) => each.id === id);
    if (found) return found;
    const wanted =
      measurements.length === 0 ? 'a measurement' : `one of ${measurements.map((each) => each.id).join(', ')}`;
    throw new InputError({ code: 'measurement.unknown', path: 'measurements', got: id, wanted });
  });
}
