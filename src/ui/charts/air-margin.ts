/** How far the oil is from pulling apart, as the solver's points tell it. */
import type { ForcePoint } from '../app/solved.ts';

/** Above the air-release pressure by this much in the lowest chamber; below 0 it would fall short of it [Pa]. */
export const airMargin = ({ gasPressure_Pa, gasPressureNeeded_Pa }: ForcePoint): number =>
  gasPressure_Pa - gasPressureNeeded_Pa;

/** Of the oil next to the gas, beyond the base valve where there is one [Pa]. */
export const besideGas = ({ compressionPressure_Pa, shaftSpeed_m_s, base }: ForcePoint): number =>
  compressionPressure_Pa - Math.sign(shaftSpeed_m_s) * (base?.drop_Pa ?? 0);

/**
 * The air-release pressure that the curve was solved with [Pa]: the lowest pressure less its margin; undefined at a point
 * where a chamber is held, whose margin counts from a pressure that it does not have.
 */
export function airReleaseLevel(point: ForcePoint): number | undefined {
  if (point.airRelease) return undefined;
  const lowest = Math.min(point.compressionPressure_Pa, point.reboundPressure_Pa, besideGas(point));
  return lowest - airMargin(point);
}
