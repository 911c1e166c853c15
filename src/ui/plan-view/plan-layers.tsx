/** What the plan is laid of, from the piston up: body, shaded shim, edges below it, rims, clamp. */

import type { JSX } from 'preact';
import { postRadius } from '../section/geometry.ts';
import { regionAbove } from './level-lines.ts';
import { liftColour, shadedBands } from './lift-shade.ts';
import { type PlanFrame, pathOn, placeOn } from './plan-frame.ts';
import { portShapes } from './port-shapes.ts';
import type { ShownPlan } from './shown-plan.ts';

export interface LayerProps {
  readonly frame: PlanFrame;
  readonly plan: ShownPlan;
}

const TUBE_PX = 5;

interface CircleProps {
  readonly frame: PlanFrame;
  readonly radius_mm: number;
  readonly kind: string;
}

const Circle = ({ frame: { cx, cy, pixelsPerMm }, radius_mm, kind }: CircleProps): JSX.Element => (
  <circle class={kind} cx={cx} cy={cy} r={radius_mm * pixelsPerMm} />
);

/** Tube, piston and seat. */
export function Body({ frame, plan: { body, boreRadius_mm } }: LayerProps): JSX.Element {
  const { innerDiameter_mm, outerDiameter_mm } = body.seat;
  return (
    <>
      <circle class="tube" cx={frame.cx} cy={frame.cy} r={boreRadius_mm * frame.pixelsPerMm + TUBE_PX} />
      <Circle frame={frame} radius_mm={boreRadius_mm} kind="piston" />
      {[innerDiameter_mm, outerDiameter_mm].map((diameter) => (
        <Circle key={diameter} frame={frame} radius_mm={diameter / 2} kind="edge" />
      ))}
    </>
  );
}

function ringPath({ cx, cy, pixelsPerMm }: PlanFrame, inner_mm: number, outer_mm: number): string {
  return [outer_mm, inner_mm]
    .map((radius) => {
      const r = radius * pixelsPerMm;
      const [left, right] = [(cx - r).toFixed(1), (cx + r).toFixed(1)];
      const arc = `A${r.toFixed(1)} ${r.toFixed(1)} 0 1 1`;
      return `M${left} ${cy}${arc} ${right} ${cy}${arc} ${left} ${cy}Z`;
    })
    .join('');
}

/** A shim at rest is one pale disc; a bent one is shaded band by band, each over the one below. */
export function ShadedShim({ frame, plan }: LayerProps): JSX.Element {
  const { field, shims, shim } = plan;
  if (!field) return <Circle frame={frame} radius_mm={shims[shim].outerDiameter_mm / 2} kind="disc" />;
  const { grid, levels_m, least_m, top_m } = field;
  const whole = ringPath(frame, grid.radii[0], grid.radii[grid.radii.length - 1]);
  return (
    <g class="lift">
      {shadedBands(levels_m, least_m, top_m).map(({ from_m, share }) => (
        <path
          key={from_m ?? 'least'}
          data-share={share.toFixed(4)}
          d={from_m === undefined ? whole : pathOn(frame, regionAbove(grid, from_m))}
          fill-rule="evenodd"
          style={{ fill: liftColour(share) }}
        />
      ))}
    </g>
  );
}

/** What the shims cover, in the dashes of hidden edges: ports, the ring that they feed, the seat. */
export function Hidden({ frame, plan }: LayerProps): JSX.Element {
  const { pressureZone, seat } = plan.body;
  const rim = plan.shims[plan.shim].outerDiameter_mm;
  const covered = [seat.innerDiameter_mm, seat.outerDiameter_mm].filter((diameter) => diameter < rim);
  return (
    <g class="hidden">
      {[pressureZone.innerDiameter_mm, pressureZone.outerDiameter_mm, ...covered].map((diameter) => (
        <Circle key={diameter} frame={frame} radius_mm={diameter / 2} kind="covered" />
      ))}
      {portShapes(plan.body).map((port, n) => {
        if (port.kind === 'sector')
          return (
            <path key={n} class="port" data-port={n} d={pathOn(frame, [{ points: port.outline, closed: true }])} />
          );
        const [cx, cy] = placeOn(frame, port.middle);
        return <circle key={n} class="port" data-port={n} cx={cx} cy={cy} r={port.radius_mm * frame.pixelsPerMm} />;
      })}
    </g>
  );
}

/** Rims of all shims: that of the shaded one heavy, those below it hidden. */
export function Rims({ frame, plan: { shims, shim } }: LayerProps): JSX.Element {
  const own = shims[shim].outerDiameter_mm;
  const kindOf = (n: number): string => (n < shim && shims[n].outerDiameter_mm <= own ? 'rim-below' : 'rim');
  const others = shims.flatMap(({ outerDiameter_mm }, n) =>
    outerDiameter_mm === own ? [] : [{ n, diameter: outerDiameter_mm }],
  );
  return (
    <>
      {others.map(({ n, diameter }) => (
        <Circle key={n} frame={frame} radius_mm={diameter / 2} kind={kindOf(n)} />
      ))}
      <Circle frame={frame} radius_mm={own / 2} kind="rim-shown" />
    </>
  );
}

/** The nut over the clamp, the post through it, and the rim of a backing plate over all. */
export function Clamp({ frame, plan: { stack, shims, body } }: LayerProps): JSX.Element {
  const { clampDiameter_mm, backingPlate } = stack.valving;
  const covering = Math.max(shims[0].outerDiameter_mm, body.seat.outerDiameter_mm);
  return (
    <>
      <Circle frame={frame} radius_mm={clampDiameter_mm / 2} kind="nut" />
      <Circle frame={frame} radius_mm={postRadius(stack.valving)} kind="post" />
      {backingPlate && (
        <Circle frame={frame} radius_mm={(backingPlate.outerDiameter_mm ?? covering) / 2} kind="phantom" />
      )}
    </>
  );
}
