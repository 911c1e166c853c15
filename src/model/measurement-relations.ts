/** How the parts of the measurements of a build must relate. */
import type { InputFault } from '../units/fault.ts';
import { child, describe, entries, type Place } from './place.ts';

const COLUMNS = ['force_N', 'position_mm', 'time_s'] as const;

function lengthFaults(points: Place): InputFault[] {
  const count = entries(child(points, 'speed_m_s')).length;
  return COLUMNS.flatMap((column) => {
    const list = child(points, column);
    if (!Array.isArray(list.value) || list.value.length === count) return [];
    const got = describe(list.value);
    return [{ code: 'measurement.points.length', path: list.path, got, wanted: `as many as speeds, ${count}` }];
  });
}

function outlierFaults(measurement: Place): InputFault[] {
  const count = entries(child(measurement, 'points', 'speed_m_s')).length;
  const places = entries(child(measurement, 'outliers'));
  return places.flatMap(({ value, path }, i) => {
    const before = i === 0 ? -1 : places[i - 1].value;
    if (typeof value !== 'number' || typeof before !== 'number') return [];
    if (value > before && value < count) return [];
    const wanted = `rising places of points, each below ${count}`;
    return [{ code: 'measurement.outlier.place', path, got: String(value), wanted }];
  });
}

/** A stroke over time has its positions and its times. */
function motionFaults(measurement: Place): InputFault[] {
  if (child(measurement, 'kind').value !== 'force-position-time') return [];
  return (['position_mm', 'time_s'] as const).flatMap((column) => {
    const { value, path } = child(measurement, 'points', column);
    if (value !== undefined) return [];
    const wanted = 'a list, since the kind is force-position-time';
    return [{ code: 'measurement.points.missing', path, got: 'nothing', wanted }];
  });
}

function identityFaults(measurements: readonly Place[]): InputFault[] {
  const ids = measurements.map((each) => child(each, 'id'));
  return ids
    .filter(({ value }, i) => value !== undefined && ids.findIndex((other) => other.value === value) < i)
    .map(({ value, path }) => ({
      code: 'measurement.same-id',
      path,
      got: describe(value),
      wanted: 'an id that no other measurement of the build has',
    }));
}

export function measurementFaults(build: Place): InputFault[] {
  const measurements = entries(child(build, 'measurements'));
  return [
    ...measurements.flatMap((each) => [
      ...lengthFaults(child(each, 'points')),
      ...outlierFaults(each),
      ...motionFaults(each),
    ]),
    ...identityFaults(measurements),
  ];
}
