/** Pressures and flows as the reasons of the valves tell them: four digits, in units that a person reads. */
import { litresPerSecondFromCubicMetresPerSecond, megapascalsFromPascals } from '../../units/si.ts';

const DIGITS = 4;

const short = (value: number): string => String(Number(value.toPrecision(DIGITS)));

export const pressureInWords = (pressure_Pa: number): string => `${short(megapascalsFromPascals(pressure_Pa))} MPa`;

export const flowInWords = (flow_m3_s: number): string =>
  `${short(litresPerSecondFromCubicMetresPerSecond(flow_m3_s))} L/s`;
