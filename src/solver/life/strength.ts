/**
 * The three limits that a shim is judged by: what the document gives, else what is assumed for spring steel strip.
 *
 * | symbol | unit | meaning |
 * |---|---|---|
 * | Su | Pa | tensile strength |
 * | Sy | Pa | yield strength (0.2 % proof stress) |
 * | Se | Pa | endurance limit: amplitude of reversed bending that the surface bears for ever |
 *
 * A limit that is given stands; of those that are not, Su follows from Sy if that is given, and Sy and Se from Su.
 * Nothing is assumed for a metal that is not steel: without all three limits it has none.
 */
import type { ShimInput, Strength } from '../types.ts';

export interface StrengthEntry {
  readonly value: number;
  /** `-` for a ratio. */
  readonly unit: 'Pa' | '-';
  readonly source: string;
}

const COMMON_PRACTICE = 'common practice, no source';

/** What is assumed where a document names no limit of a steel; every entry with where it comes from. */
export const STRENGTH_TABLE = {
  tensile: {
    value: 1500e6,
    unit: 'Pa',
    source: `${COMMON_PRACTICE}: a middle value of hardened and tempered spring strip C67S, C75S (EN 10132-4 gives about 1200 to 1900 MPa; from memory)`,
  },
  yieldPerTensile: {
    value: 0.85,
    unit: '-',
    source: `${COMMON_PRACTICE}: 0.2 % proof stress of hardened and tempered strip`,
  },
  endurancePerTensile: {
    value: 0.4,
    unit: '-',
    source: `${COMMON_PRACTICE}: the low end of 0.4 to 0.5 for polished strip in reversed bending`,
  },
  largestEndurance: {
    value: 700e6,
    unit: 'Pa',
    source:
      "Shigley's Mechanical Engineering Design: the endurance limit of steels stops rising at about 700 MPa (from memory)",
  },
  leastSteelModulus: { value: 190e9, unit: 'Pa', source: `${COMMON_PRACTICE}: a softer metal is no spring steel` },
  largestSteelModulus: { value: 215e9, unit: 'Pa', source: `${COMMON_PRACTICE}: a stiffer metal is no spring steel` },
} as const satisfies Record<string, StrengthEntry>;

/** @returns undefined for a metal other than steel that lacks a limit: it cannot be judged */
export function strengthOf({ youngsModulus_Pa: E, strength = {} }: ShimInput): Strength | undefined {
  const t = STRENGTH_TABLE;
  if (E >= t.leastSteelModulus.value && E <= t.largestSteelModulus.value) return steelStrength(strength);
  const { yield_Pa, tensile_Pa, endurance_Pa } = strength;
  if (yield_Pa === undefined || tensile_Pa === undefined || endurance_Pa === undefined) return undefined;
  return { yield_Pa, tensile_Pa, endurance_Pa };
}

function steelStrength({ yield_Pa: Sy, tensile_Pa: Su, endurance_Pa: Se }: Partial<Strength>): Strength {
  const t = STRENGTH_TABLE;
  const tensile_Pa = Su ?? (Sy === undefined ? t.tensile.value : Sy / t.yieldPerTensile.value);
  return {
    tensile_Pa,
    yield_Pa: Sy ?? t.yieldPerTensile.value * tensile_Pa,
    endurance_Pa: Se ?? Math.min(t.endurancePerTensile.value * tensile_Pa, t.largestEndurance.value),
  };
}
