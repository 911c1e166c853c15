/** What was measured at the speed cursor beside what the build does there, as rows of the readout. */
import { type ResidualAt, residualAt } from '../../measured/residuals.ts';
import type { Measurement } from '../../model/measurement.ts';
import type { Direction } from '../app/places.ts';
import { gasForce, measuredPoints } from '../app/preferences.ts';
import { showBare, showBareSigned, showPercent, unitOfShown } from '../app/quantities.ts';
import { outcomes } from '../app/solve.ts';
import { cursorSpeed, visibleBuilds } from '../app/store.ts';
import type { ReadoutGroup, SolvedReading } from '../charts/readout-group.ts';
import { shownForce } from '../charts/shown-force.ts';
import { measuredWords } from '../text/measured.ts';
import { modelOf } from './measured-curve.ts';

const words = measuredWords.readout;

function groupOf(buildId: string, measurement: Measurement, way: Direction): ReadoutGroup {
  const curve = outcomes.value.get(buildId)?.curve;
  const found = curve && residualAt(measurement, modelOf(curve), way * cursorSpeed.value);
  const unit = unitOfShown('force');
  /** Other builds have nothing to do with what this one was measured to be. */
  const told = (read: (found: ResidualAt, reading: SolvedReading) => string) => (reading: SolvedReading) => {
    if (reading.build.id !== buildId) return words.other;
    return found ? read(found, reading) : words.notMeasured;
  };
  // As the points stand on the chart: their distance from the line is the residual, whatever the line leaves out.
  const computed = ({ point }: SolvedReading): number => shownForce(point, gasForce.value === 'subtracted');
  return {
    id: `measured ${measurement.id}`,
    title: words.title(measurement.name),
    rows: [
      {
        id: 'measured',
        name: words.measured(unit),
        cell: told(({ residual_N }, reading) => showBare('force', computed(reading) + residual_N)),
      },
      { id: 'computed', name: words.computed(unit), cell: told((_, reading) => showBare('force', computed(reading))) },
      {
        id: 'residual',
        name: words.residual(unit),
        cell: told(({ residual_N }) => showBareSigned('force', residual_N)),
      },
      {
        id: 'residual-share',
        name: words.share,
        cell: told(({ residual_N, build_N }) =>
          build_N === 0 ? words.other : showPercent(residual_N / Math.abs(build_N), true),
        ),
      },
    ],
  };
}

/** One group for each measurement whose points are on the chart. */
export const measuredGroups = (way: Direction): ReadoutGroup[] =>
  measuredPoints.value === 'hidden'
    ? []
    : visibleBuilds.value.flatMap(({ id, measurements = [] }) => measurements.map((each) => groupOf(id, each, way)));
