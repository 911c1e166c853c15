/** Lines of equal lift with their numbers, which stand along one crest. */

import type { JSX } from 'preact';
import { inShown, showNumber } from '../app/quantities.ts';
import { levelLines } from './level-lines.ts';
import { anglesOf, type PlanFrame, pathOn, placeOn } from './plan-frame.ts';
import type { LayerProps } from './plan-layers.tsx';
import type { RingGrid } from './ring-grid.ts';
import type { LiftField } from './shown-plan.ts';

/** Numbers stand no closer than this to one another and to the rim [px]. */
const APART_PX = 15;
const FROM_RIM_PX = 9;
/** Up and to the right of a round shim, clear of the cut [rad on the sheet]. */
const ROUND_AT = Math.PI / 3;

/** How far an angle on the sheet is from straight up. */
const fromUp = (angle: number): number =>
  Math.abs(Math.atan2(Math.sin(angle - Math.PI / 2), Math.cos(angle - Math.PI / 2)));

/** Where the numbers stand: at the crest that points most nearly up, but not at that of the cut. */
function numberedAngle({ turn }: PlanFrame, { extremes, waves }: LiftField): number {
  if (!extremes) return ROUND_AT - turn;
  const crests = anglesOf(extremes.crest, waves);
  const free = crests.length > 1 ? crests.slice(1) : crests;
  return free.reduce((best, angle) => (fromUp(angle + turn) < fromUp(best + turn) ? angle : best));
}

/** Radius at which the lift passes a level outwards, along one angle of the grid; none where it never does. */
function radiusAt({ radii, angles, values }: RingGrid, theta: number, level: number): number | undefined {
  const j = ((Math.round((theta * angles) / (2 * Math.PI)) % angles) + angles) % angles;
  for (let i = radii.length - 1; i > 0; i--) {
    const [a, b] = [values[(i - 1) * angles + j], values[i * angles + j]];
    if (a < level && b >= level) return radii[i - 1] + ((radii[i] - radii[i - 1]) * (level - a)) / (b - a);
  }
  return undefined;
}

interface LevelNumber {
  readonly level_m: number;
  readonly r: number;
}

/** From the rim inwards, as many as have room. */
function numbersOf(frame: PlanFrame, { grid, levels_m }: LiftField, theta: number): LevelNumber[] {
  const placed: LevelNumber[] = [];
  let free = grid.radii[grid.radii.length - 1] * frame.pixelsPerMm - FROM_RIM_PX;
  for (const level_m of [...levels_m].reverse()) {
    const r = radiusAt(grid, theta, level_m);
    if (r === undefined || r * frame.pixelsPerMm > free) continue;
    placed.push({ level_m, r });
    free = r * frame.pixelsPerMm - APART_PX;
  }
  return placed;
}

export function LevelLines({ frame, plan: { field } }: LayerProps): JSX.Element | null {
  if (!field) return null;
  const theta = numberedAngle(frame, field);
  return (
    <g class="lift-lines">
      {field.levels_m.map((level_m) => (
        <path key={level_m} class="lift-line" data-level={level_m} d={pathOn(frame, levelLines(field.grid, level_m))} />
      ))}
      {numbersOf(frame, field, theta).map(({ level_m, r }) => {
        const [x, y] = placeOn(frame, { r, theta });
        return (
          <text key={level_m} class="lift-number" x={x} y={y + 4}>
            {showNumber(inShown('lift', level_m), field.digits)}
          </text>
        );
      })}
    </g>
  );
}
