/** One half of the section, right of the axis; the other half is its mirror image. */

import type { JSX } from 'preact';
import type { Damper, ValveBody, Valving } from '../../model/project.ts';
import { millimetresFromMetres } from '../../units/si.ts';
import { stackOf } from '../app/places.ts';
import { activeRow, place } from '../app/store.ts';
import type { DrawnStack } from '../app/views.ts';
import { sharesOf } from '../charts/path-shares.ts';
import { pistonOutline, postRadius, type ShimOutline, shimOutlines, stackHeight } from './geometry.ts';
import { closedPath, linePath, type Sheet, schematicDepths, shimPath } from './sheet.ts';
import { stackAtWork } from './stack-at-work.ts';

export interface HalfProps {
  readonly sheet: Sheet;
  readonly stack: DrawnStack;
  readonly ghost?: { readonly stack: DrawnStack; readonly colour: string };
  readonly body: ValveBody;
  readonly damper: Damper;
  readonly colour: string;
  readonly hatch: string;
}

const TUBE_PX = 9;
const NUT_PX = 15;

/** The oil's room: the bore up to the tube's wall, painted first. */
function Bore({ sheet, damper, hatch }: HalfProps): JSX.Element {
  const wall = sheet.x(damper.boreDiameter_mm / 2);
  return (
    <>
      <rect class="oil" x={0} y={0} width={wall} height={sheet.height} />
      <rect class="metal" x={wall} y={-2} width={TUBE_PX} height={sheet.height + 4} fill={hatch} />
      <rect class="metal-line" x={wall} y={-2} width={TUBE_PX} height={sheet.height + 4} />
    </>
  );
}

function Piston({ sheet, stack, body, damper, hatch }: HalfProps): JSX.Element {
  const outline = pistonOutline(stack.valving, body, damper.boreDiameter_mm / 2, schematicDepths(sheet));
  return (
    <>
      {[outline.inner, outline.outer].map((part) => (
        <g key={part === outline.inner ? 'inner' : 'outer'}>
          <path class="metal" d={closedPath(sheet, part)} fill={hatch} />
          <path class="metal-line" d={closedPath(sheet, part)} />
        </g>
      ))}
    </>
  );
}

/** Nut and post over the clamped middle: schematic, but of the clamp's true diameter. */
function Clamp({ sheet, valving, hatch }: { sheet: Sheet; valving: Valving; hatch: string }): JSX.Element {
  const clamp = sheet.x(valving.clampDiameter_mm / 2);
  const post = sheet.x(postRadius(valving));
  const top = sheet.y(stackHeight(valving));
  return (
    <>
      <rect class="metal" x={post} y={top - NUT_PX} width={clamp - post} height={NUT_PX} fill={hatch} />
      <rect class="metal-line" x={post} y={top - NUT_PX} width={clamp - post} height={NUT_PX} />
      <path class="post" d={`M0 ${top - NUT_PX - 12}H${post - 2}l2 2V${sheet.height - 6}H0Z`} />
    </>
  );
}

function BackingPlate({ sheet, stack, body, hatch }: HalfProps): JSX.Element | null {
  const { backingPlate, shims, clampDiameter_mm } = stack.valving;
  if (!backingPlate) return null;
  const from = sheet.x(clampDiameter_mm / 2);
  const covering = Math.max(shims[0].outerDiameter_mm, body.seat.outerDiameter_mm);
  const rim = (backingPlate.outerDiameter_mm ?? covering) / 2;
  const under = sheet.y(stackHeight(stack.valving) + backingPlate.gap_mm);
  const box = { x: from, y: under - 10, width: sheet.x(rim) - from, height: 10 };
  return (
    <g class="backing-plate">
      <rect class="metal" {...box} fill={hatch} />
      <rect class="metal-line" {...box} />
    </g>
  );
}

function Shims({ sheet, outlines }: { sheet: Sheet; outlines: readonly ShimOutline[] }): JSX.Element {
  return (
    <>
      {outlines.map(({ row, shim, bottom, top }) => (
        <path
          key={shim}
          class={`shim ${activeRow.value === row ? 'active' : ''}`}
          data-row={row}
          d={shimPath(sheet, bottom, top)}
        />
      ))}
    </>
  );
}

/** The baseline's face shim at the same speed, in the phantom line of a drawing. */
function Ghost({ sheet, ghost }: Pick<HalfProps, 'sheet' | 'ghost'>): JSX.Element | null {
  if (!ghost) return null;
  const [face] = shimOutlines(ghost.stack.valving, ghost.stack.state);
  const rim = [face.bottom[face.bottom.length - 1], face.top[face.top.length - 1]];
  const bent = face.bottom.filter(({ r }) => r >= ghost.stack.valving.clampDiameter_mm / 2);
  return <path class="ghost" style={{ stroke: ghost.colour }} d={linePath(sheet, [...bent, rim[1]])} />;
}

/** Where the oil goes: up the port, under the lifted rim, out to the wall. */
function OilPath({ sheet, stack, body, damper }: HalfProps): JSX.Element | null {
  const { point, state, valving } = stack;
  if (!point || !state) return null;
  const share = sharesOf(stackAtWork(point, stackOf(place.value))?.flows).ports ?? 0;
  if (share < 0.01 || state.seatOpening_m <= 0) return null;
  const middle = sheet.x((body.pressureZone.innerDiameter_mm + body.pressureZone.outerDiameter_mm) / 4);
  const seat = sheet.x((body.seat.innerDiameter_mm + body.seat.outerDiameter_mm) / 4);
  const gap = sheet.y(valving.seatHeight_mm + millimetresFromMetres(state.seatOpening_m) / 2);
  const rim = sheet.x(valving.shims[0].outerDiameter_mm / 2);
  const wall = sheet.x(damper.boreDiameter_mm / 2);
  const out = (rim + wall) / 2;
  const d = `M${middle} ${sheet.height - 8}V${sheet.hubY + 16}Q${middle} ${gap + 3} ${seat} ${gap}L${rim} ${gap}Q${out} ${gap} ${out} ${gap - 26}V${gap - 46}`;
  return <path class="flow" d={d} style={{ strokeWidth: `${1.2 + 2.6 * share}px` }} marker-end="url(#flow-head)" />;
}

export function ValveHalf(props: HalfProps): JSX.Element {
  const { sheet, stack, colour, hatch } = props;
  return (
    <g style={{ '--build': colour }}>
      <Bore {...props} />
      <Piston {...props} />
      <OilPath {...props} />
      <BackingPlate {...props} />
      <Shims sheet={sheet} outlines={shimOutlines(stack.valving, stack.state)} />
      <Ghost sheet={sheet} ghost={props.ghost} />
      <Clamp sheet={sheet} valving={stack.valving} hatch={hatch} />
    </g>
  );
}
