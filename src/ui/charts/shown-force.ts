/** The force of a chart: what the shaft feels, or that without the force of the gas. */
import type { ForcePoint } from '../app/solved.ts';

export const shownForce = (point: ForcePoint, withoutGas: boolean): number =>
  withoutGas ? point.force_N - point.gasForce_N : point.force_N;

/** How hard the damper resists the motion, in either direction; below 0 it goes along with it [N]. */
export const resistance = (point: ForcePoint, withoutGas: boolean): number =>
  Math.sign(point.shaftSpeed_m_s) * shownForce(point, withoutGas);
