/**
 * How much of its limits a stress that swings between two values uses up.
 *
 * | symbol | unit | meaning |
 * |---|---|---|
 * | σm, σa | Pa | mean and amplitude of the swing; σm is positive in tension |
 * | Se, Su | Pa | endurance limit and tensile strength, see strength.ts |
 * | n | - | reserve: by how much the swing, mean and amplitude alike, may grow |
 *
 * Modified Goodman: 1/n = σa/Se + σm/Su. A mean in compression neither helps nor harms: it counts as 0, on the safe
 * side. 1/n is the use: 0 unloaded, 1 at the limit.
 * Source: Shigley's Mechanical Engineering Design, chapter on fatigue from variable loading (from memory).
 * Range: long life (above about 10⁶ swings), polished surface, no notch, no corrosion.
 */
import type { Strength } from '../types.ts';

export interface Swing {
  readonly mean_Pa: number;
  readonly amplitude_Pa: number;
}

export const swingBetween = (one_Pa: number, other_Pa: number): Swing => ({
  mean_Pa: (one_Pa + other_Pa) / 2,
  amplitude_Pa: Math.abs(one_Pa - other_Pa) / 2,
});

/** 1/n of modified Goodman [-]. */
export function goodmanUse({ mean_Pa, amplitude_Pa }: Swing, { endurance_Pa, tensile_Pa }: Strength): number {
  return amplitude_Pa / endurance_Pa + Math.max(0, mean_Pa) / tensile_Pa;
}

/**
 * Largest difference of the three principal stresses on a surface, the third being 0 [Pa]; a shim takes a set where it
 * reaches the yield strength. Source: Tresca (maximum shear stress), same book; never below the von Mises stress.
 */
export function trescaStress(radial_Pa: number, hoop_Pa: number): number {
  return Math.max(Math.abs(radial_Pa), Math.abs(hoop_Pa), Math.abs(radial_Pa - hoop_Pa));
}
