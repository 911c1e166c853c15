/** The oil through the valve: one stream a path, as wide as its share, with the speed that the solved point has there. */

import type { JSX } from 'preact';
import { millimetresFromMetres } from '../../units/si.ts';
import { show, showPercent } from '../app/quantities.ts';
import { postRadius } from './geometry.ts';
import type { Plan, Side } from './plan.ts';
import { isMarked } from './section-choices.ts';
import { partId } from './section-parts.ts';
import type { Stream, StreamName } from './streams.ts';

/** Width of a stream that carries nothing and of one that carries all [px]. */
const THINNEST = 2;
const WIDEST = 17;
const widthOf = (share: number): number => THINNEST + (WIDEST - THINNEST) * Math.min(share, 1);
/** Room that a number takes beside its stream [px]. */
const NUMBER_PX = 52;
/** Above the rim, the stream and its numbers need this much [px]. */
const OVER_RIM_PX = 24;

/** Where a stream runs and where its numbers stand, in pixels right of the axis. */
interface Course {
  readonly d: string;
  readonly label: { readonly x: number; readonly y: number };
}

function coursesOf({ sheet, section, piston }: Plan): Record<StreamName, Course> {
  const { stack, body, damper, outlines } = section;
  const { valving, state } = stack;
  const wall = sheet.x(damper.boreDiameter_mm / 2);
  const middle = sheet.x((piston.channel.inner_mm + piston.channel.outer_mm) / 2);
  const seat = sheet.x((body.seat.innerDiameter_mm + body.seat.outerDiameter_mm) / 4);
  const gap = sheet.y(valving.seatHeight_mm + (state ? millimetresFromMetres(state.seatOpening_m) / 2 : 0));
  const face = outlines[0];
  const rim = sheet.x(Math.max(face.outerRadius_mm, body.seat.outerDiameter_mm / 2));
  const out = (rim + wall) / 2;
  const beside = outlines.filter(({ shim, outerRadius_mm }) => shim === 0 || sheet.x(outerRadius_mm) > out - NUMBER_PX);
  const end = Math.min(gap - 44, ...beside.map(({ top }) => sheet.y(top[top.length - 1].z) - OVER_RIM_PX));
  const foot = sheet.height - 7;
  const turn = sheet.hubY + 22;
  const post = sheet.x(postRadius(valving));
  const up = (x: number, from: number, to: number): string => `M${x} ${from}V${to}`;
  const shims = `M${middle} ${turn}C${middle} ${(turn + gap) / 2} ${(middle + seat) / 2} ${gap} ${seat} ${gap}L${rim} ${gap}Q${out} ${gap} ${out} ${gap - 24}V${end}`;
  const beyond = { d: shims, label: { x: out, y: end + 5 } };
  return {
    ports: { d: up(middle, foot, turn), label: { x: middle, y: foot } },
    shims: beyond,
    notches: beyond,
    bleed: { d: up(post * 0.3, foot, sheet.hubY), label: { x: post * 0.3, y: foot } },
    poppet: { d: up(post * 0.72, foot, sheet.hubY), label: { x: post * 0.72, y: foot } },
    leakage: { d: up(wall - 3, sheet.hubY + 20, sheet.hubY - 2), label: { x: wall - 3, y: sheet.hubY - 6 } },
  };
}

/** Notches let out where the opening does, and have no course of their own on the sheet. */
const isDrawn = ({ name }: Stream): boolean => name !== 'notches';

/** Under the metal, which narrows them where it does the oil. */
export function OilBands({ plan }: { plan: Plan }): JSX.Element {
  const courses = coursesOf(plan);
  return (
    <g class="bands">
      {plan.section.streams.filter(isDrawn).map(({ name, share }) => (
        <path
          key={name}
          class="band"
          data-share={share.toFixed(4)}
          d={courses[name].d}
          style={{ strokeWidth: `${widthOf(share).toFixed(2)}px` }}
        />
      ))}
    </g>
  );
}

/** Over it: a fine arrow along each, which pointer and keys find. What comes out of the ports goes on without a head. */
export function OilArrows({ plan }: { plan: Plan }): JSX.Element {
  const courses = coursesOf(plan);
  return (
    <g class="streams">
      {plan.section.streams.filter(isDrawn).map((stream) => {
        const id = partId.stream(stream);
        const { d } = courses[stream.name];
        const head = stream.name === 'ports' ? undefined : 'url(#flow-head)';
        return (
          <g key={id} class={`stream ${isMarked(id) ? 'active' : ''}`} data-part={id}>
            <path class="reach" d={d} />
            <path class="flow" d={d} marker-end={head} />
          </g>
        );
      })}
    </g>
  );
}

const LINE_PX = 13;

interface NumberProps {
  readonly plan: Plan;
  readonly name: StreamName;
  readonly side: Side;
  readonly dx: number;
  readonly dy: number;
}

function StreamNumber({ plan, name, side, dx, dy }: NumberProps): JSX.Element | null {
  const stream = plan.section.streams.find((each) => each.name === name);
  if (stream?.speed_m_s === undefined) return null;
  const { x, y } = coursesOf(plan)[name].label;
  const at = { x: plan.sheet.axisX + side * x + dx, y: y + dy };
  return (
    <text class="callout oil-number" data-oil={name} y={at.y} style={{ textAnchor: dx < 0 ? 'end' : 'start' }}>
      <tspan x={at.x}>{show('jet', stream.speed_m_s)}</tspan>
      <tspan x={at.x} dy={LINE_PX}>
        {showPercent(stream.share)}
      </tspan>
    </text>
  );
}

/** Speed and share at the streams with room beside them: in the ports, and where the oil leaves under the shims. */
export function OilNumbers({ plan, side }: { plan: Plan; side: Side }): JSX.Element {
  const { sheet, section, piston } = plan;
  const inPorts = sheet.x(piston.channel.outer_mm - piston.channel.inner_mm) / 2 > NUMBER_PX;
  const inPost = sheet.x(postRadius(section.stack.valving)) * 0.7 > NUMBER_PX;
  return (
    <>
      {inPorts && <StreamNumber plan={plan} name="ports" side={side} dx={side * 12} dy={-LINE_PX - 4} />}
      {inPost && <StreamNumber plan={plan} name="bleed" side={side} dx={side * 5} dy={-LINE_PX - 4} />}
      <StreamNumber plan={plan} name="shims" side={side} dx={side * -13} dy={0} />
    </>
  );
}
