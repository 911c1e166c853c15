/** The coefficients of the hydraulics in the words of the bench. */
import type { CoefficientName } from '../../solver/index.ts';

export const COEFFICIENT_WORDS: Readonly<Record<CoefficientName, string>> = {
  jetDischarge: 'shim jet',
  sharpEdgeDischarge: 'sharp edges',
  longOrificeFactor: 'holes',
  portMomentum: 'port jets',
  airReleasePressure_Pa: 'air release',
};
