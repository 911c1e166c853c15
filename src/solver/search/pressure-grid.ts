/**
 * Pressures at which a search solves its stacks: few, since every stack costs all of them, and where the aim needs them.
 *
 * | symbol | unit | meaning |
 * |---|---|---|
 * | F | N | force of the aim less friction |
 * | A | m2 | area on which the drop over the valve acts: the annulus for the piston, the rod for the base valve |
 * | p | Pa | F/A, the drop over the valve if it were all that the damper has; the stack feels its share of the circumference |
 */
import { valveAt } from '../damper/damper-valves.ts';
import { frictionForce } from '../damper/friction.ts';
import { pistonAreas } from '../damper/piston-areas.ts';
import type { DamperInput, StackPlace } from '../damper/types.ts';
import type { AimPoint } from './types.ts';

const COUNT = 7;
/** How far beyond the largest and below the least pressure of the aim the grid goes. */
const BEYOND = 1.7;
const BELOW = 0.5;
/** The widest span worth solving: below it the bleed decides, not the stack. */
const WIDEST = 100;

/** @returns rising pressures, 0 first [Pa] */
export function pressureGrid(damper: DamperInput, place: StackPlace, aim: readonly AimPoint[]): number[] {
  const { annulus_m2, rod_m2 } = pistonAreas(damper);
  const area_m2 = place === 'base' ? rod_m2 : annulus_m2;
  const { coveredFraction = 1 } = valveAt(damper, place).ports;
  const way = place === 'rebound' ? -1 : 1;
  const drops = aim
    .filter(({ shaftSpeed_m_s }) => shaftSpeed_m_s * way > 0)
    .map(({ shaftSpeed_m_s, force_N }) => ((force_N - frictionForce(damper.friction, shaftSpeed_m_s)) * way) / area_m2)
    .filter((drop) => drop > 0);
  if (drops.length === 0) return [];
  const top = Math.max(...drops) * coveredFraction * BEYOND;
  const bottom = Math.max(Math.min(...drops) * coveredFraction * BELOW, top / WIDEST);
  return [0, ...Array.from({ length: COUNT }, (_, i) => bottom * (top / bottom) ** (i / (COUNT - 1)))];
}
