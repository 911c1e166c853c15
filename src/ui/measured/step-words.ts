/** What was done to the numbers of a measurement, in words. */
import type { Measurement, MeasurementStep } from '../../model/measurement.ts';
import { show, showField, showNumber } from '../app/quantities.ts';
import { measuredWords } from '../text/measured.ts';

const words = measuredWords.steps;

/** @param kept  how many points there are now */
export function stepWords(step: MeasurementStep, kept: number): string {
  switch (step.kind) {
    case 'gas-force':
      return words['gas-force'](show('force', step.force_N), step.from === 'typed');
    case 'friction':
      return words.friction(show('force', step.force_N));
    case 'speed-from-position': {
      const loss = `${showNumber(step.peakLoss_percent, 1)} %`;
      return words['speed-from-position'](showField('duration', step.window_s), loss, step.leftOut);
    }
    case 'peak-points':
      return words['peak-points'];
    case 'thinned':
      return words.thinned(step.fromCount, kept);
  }
}

export const measurementStory = (measurement: Measurement): string[] => [
  words.raw(measurement.sourceFile, measurement.rawCount),
  ...(measurement.gasTakenOffByBench ? [words.bench] : []),
  ...measurement.steps.map((step) => stepWords(step, measurement.points.speed_m_s.length)),
  ...(measurement.outliers.length > 0 ? [words.outliers(measurement.outliers.length)] : []),
];
