/** One half of the section, right of the axis; the other half is its mirror image. */

import type { JSX } from 'preact';
import { stackHeight } from '../../model/lay-shims.ts';
import { activeRow } from '../app/store.ts';
import type { DrawnStack } from '../app/views.ts';
import { Marks } from './contact-marks.tsx';
import { postRadius, shimOutlines } from './geometry.ts';
import { OilArrows, OilBands } from './oil-streams.tsx';
import type { Plan } from './plan.ts';
import { isMarked } from './section-choices.ts';
import { partId } from './section-parts.ts';
import { closedPath, linePath, shimPath } from './sheet.ts';
import { shadeOf, takesSet } from './stress-shading.tsx';

export interface Ghost {
  readonly stack: DrawnStack;
  readonly colour: string;
}

export interface HalfProps {
  readonly plan: Plan;
  readonly ghost?: Ghost;
  readonly hatch: string;
  /** Streams stand on one half when there are two, marks of contact on both. */
  readonly oil: boolean;
}

const TUBE_PX = 9;
const NUT_PX = 15;
const marked = (id: string): string => (isMarked(id) ? 'active' : '');

/** The oil's room: the bore up to the tube's wall, painted first. */
function Bore({ plan: { sheet, section }, hatch }: HalfProps): JSX.Element {
  const wall = sheet.x(section.damper.boreDiameter_mm / 2);
  return (
    <>
      <rect class="oil" x={0} y={0} width={wall} height={sheet.height} />
      <rect class="metal" x={wall} y={-2} width={TUBE_PX} height={sheet.height + 4} fill={hatch} />
      <rect class="metal-line" x={wall} y={-2} width={TUBE_PX} height={sheet.height + 4} />
    </>
  );
}

function Piston({ plan: { sheet, piston, section }, hatch }: HalfProps): JSX.Element {
  const { seat } = section.body;
  const { seatHeight_mm } = section.stack.valving;
  const land = { from: sheet.x(seat.innerDiameter_mm / 2), to: sheet.x(seat.outerDiameter_mm / 2) };
  const top = sheet.y(seatHeight_mm);
  const port = { from: sheet.x(piston.channel.inner_mm), to: sheet.x(piston.channel.outer_mm) };
  return (
    <>
      {[piston.inner, piston.outer].map((part) => (
        <g key={part === piston.inner ? 'inner' : 'outer'}>
          <path class="metal" d={closedPath(sheet, part)} fill={hatch} />
          <path class="metal-line" d={closedPath(sheet, part)} />
        </g>
      ))}
      <rect
        class={`part ${marked(partId.port)}`}
        data-part={partId.port}
        x={port.from}
        y={sheet.hubY + 4}
        width={port.to - port.from}
        height={Math.max(0, sheet.height - sheet.hubY - 8)}
      />
      <rect
        class={`part ${marked(partId.seat)}`}
        data-part={partId.seat}
        x={land.from - 3}
        y={top - 2}
        width={land.to - land.from + 6}
        height={14}
      />
    </>
  );
}

/** Nut and post over the clamped middle: schematic, but of the clamp's true diameter. */
function Clamp({ plan: { sheet, section }, hatch }: HalfProps): JSX.Element {
  const { valving } = section.stack;
  const clamp = sheet.x(valving.clampDiameter_mm / 2);
  const post = sheet.x(postRadius(valving));
  const top = sheet.y(stackHeight(valving));
  const nut = { x: post, y: top - NUT_PX, width: clamp - post, height: NUT_PX };
  return (
    <g class={`held ${marked(partId.clamp)}`} data-part={partId.clamp}>
      <rect class="metal" {...nut} fill={hatch} data-part={partId.clamp} />
      <rect class="metal-line" {...nut} data-part={partId.clamp} />
      <path
        class="post"
        data-part={partId.clamp}
        d={`M0 ${top - NUT_PX - 12}H${post - 2}l2 2V${sheet.height - 6}H0Z`}
      />
    </g>
  );
}

function BackingPlate({ plan: { sheet, section }, hatch }: HalfProps): JSX.Element | null {
  const { body, stack } = section;
  const { backingPlate, shims, clampDiameter_mm } = stack.valving;
  if (!backingPlate) return null;
  const from = sheet.x(clampDiameter_mm / 2);
  const covering = Math.max(shims[0].outerDiameter_mm, body.seat.outerDiameter_mm);
  const rim = (backingPlate.outerDiameter_mm ?? covering) / 2;
  const under = sheet.y(stackHeight(stack.valving) + backingPlate.gap_mm);
  const box = { x: from, y: under - 10, width: sheet.x(rim) - from, height: 10 };
  return (
    <g class={`held ${marked(partId.plate)}`}>
      <rect class="metal" {...box} fill={hatch} data-part={partId.plate} />
      <rect class="metal-line" {...box} data-part={partId.plate} />
    </g>
  );
}

/** The row under pointer or keys in the table marks all its shims; a part of the drawing marks its own. */
const shimMark = (shim: number, row: number): string =>
  isMarked(partId.shim(shim)) || activeRow.value === row ? 'active' : '';

function Shims({ plan: { sheet, section } }: HalfProps): JSX.Element {
  return (
    <>
      {section.outlines.map(({ row, shim, bottom, top }) => (
        <path
          key={shim}
          class={`shim ${shimMark(shim, row)} ${takesSet(section, shim) ? 'over' : ''}`}
          data-row={row}
          data-part={partId.shim(shim)}
          d={shimPath(sheet, bottom, top)}
          style={{ fill: shadeOf(section, shim) }}
        />
      ))}
    </>
  );
}

/** The baseline's face shim at the same speed, in the phantom line of a drawing. */
function Ghosted({ plan: { sheet }, ghost }: HalfProps): JSX.Element | null {
  if (!ghost) return null;
  const [face] = shimOutlines(ghost.stack.valving, ghost.stack.state);
  const rim = [face.bottom[face.bottom.length - 1], face.top[face.top.length - 1]];
  const bent = face.bottom.filter(({ r }) => r >= ghost.stack.valving.clampDiameter_mm / 2);
  return <path class="ghost" style={{ stroke: ghost.colour }} d={linePath(sheet, [...bent, rim[1]])} />;
}

export function ValveHalf(props: HalfProps): JSX.Element {
  return (
    <>
      <Bore {...props} />
      {props.oil && <OilBands plan={props.plan} />}
      <Piston {...props} />
      <BackingPlate {...props} />
      <Clamp {...props} />
      <Shims {...props} />
      {props.oil && <OilArrows plan={props.plan} />}
      <Ghosted {...props} />
      <Marks plan={props.plan} />
    </>
  );
}
