/**
 * Pressures and flows as reasons tell them: four digits, a space, the unit. A page puts them into the units of its reader
 * (src/units/in-text.ts), so that no number of a reason stands without its unit.
 */
import { litresPerSecondFromCubicMetresPerSecond, megapascalsFromPascals } from '../units/si.ts';

const DIGITS = 4;

const short = (value: number): string => String(Number(value.toPrecision(DIGITS)));

export const pressureInWords = (pressure_Pa: number): string => `${short(megapascalsFromPascals(pressure_Pa))} MPa`;

export const flowInWords = (flow_m3_s: number): string =>
  `${short(litresPerSecondFromCubicMetresPerSecond(flow_m3_s))} L/s`;
