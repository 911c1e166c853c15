/** What is written into the drawing: its scales, and the dimensions that have room. */

import type { JSX } from 'preact';
import { metresFromMillimetres } from '../../units/si.ts';
import { show, showLength } from '../app/quantities.ts';
import { text } from '../text/en.ts';
import type { Plan, Side } from './plan.ts';
import { PIXELS_PER_MM } from './scale.ts';
import { legendOf, NARROW_PX, type Sheet } from './sheet.ts';

/** Round lengths for the bar that stands for the heights [mm]. */
const BAR_HEIGHTS = [0.1, 0.2, 0.5, 1, 2, 5] as const;
const TALLEST_BAR_PX = 26;
/** Round lengths for the bar that stands for the radii [mm]. */
const BAR_RADII = [0.5, 1, 2, 5] as const;
/** Its length in words, and air to the legend [px]. */
const BAR_WORDS_PX = 56;

function longestBar(sheet: Sheet, left: number): number {
  const { right, width } = legendOf(sheet);
  const room = right - width - BAR_WORDS_PX - left;
  return BAR_RADII.filter((mm) => mm * sheet.pixelsPerMm <= room).at(-1) ?? BAR_RADII[0];
}

/** Two bars of round length, one along the radius and one along the heights, and the scale of each in words. */
export function ScaleMark({ sheet }: { sheet: Sheet }): JSX.Element {
  const words = text.sectionView;
  const left = sheet.axisX - (sheet.extent === 'full' ? sheet.x(sheet.boreRadius_mm) - 14 : -14);
  const long_mm = longestBar(sheet, left);
  const long = long_mm * sheet.pixelsPerMm;
  const height_mm = BAR_HEIGHTS.filter((mm) => mm * sheet.axialPixelsPerMm <= TALLEST_BAR_PX).at(-1) ?? BAR_HEIGHTS[0];
  const high = height_mm * sheet.axialPixelsPerMm;
  // Beside the bars, or under them where the legend stands beside.
  const place = sheet.width >= NARROW_PX ? { x: long + 5, y: -22 } : { x: 0, y: 17 };
  return (
    <g class="scale-mark" transform={`translate(${left} 42)`} data-axial={sheet.axial}>
      <path d={`M0 ${-high}H4M2 ${-high}V0H${long}M${long} -3V3`} />
      <text x={long + 5} y={4}>
        {showLength(long_mm)}
      </text>
      <text x={7} y={Math.min(-high / 2 + 4, -8)}>
        {showLength(height_mm)}
      </text>
      <text class="scale-words" x={place.x} y={place.y}>
        {words.scale(String(sheet.radial))}
      </text>
      <text class="scale-words" x={place.x} y={place.y + 13}>
        {sheet.axial === 1 ? words.heightsTrue : words.heightsExaggerated(sheet.axial)}
      </text>
    </g>
  );
}

/** A dimension needs this much beyond the rim [px]. */
const BESIDE_PX = 22;
const ARROW_PX = 9;
const HALF_NUMBER_PX = 24;
const FROM_WALL_PX = 4;

interface Dimension {
  readonly id: string;
  readonly x: number;
  readonly from: number;
  readonly to: number;
  /** Where its two surfaces end, from which the thin lines run out. */
  readonly surfaces: number;
  /** Foot of the number, and how far out it may end. */
  readonly text: number;
  readonly wall: number;
  readonly value: string;
}

/** Arrows from outside, as for every dimension too short for arrows within. */
function DimensionLine({ dimension, side }: { dimension: Dimension; side: Side }): JSX.Element {
  const { id, x, from, to, surfaces, value } = dimension;
  const [top, bottom] = [Math.min(from, to), Math.max(from, to)];
  const at = side * x;
  const end = side * (x + 3);
  return (
    <g class="dimension" data-dimension={id}>
      <path
        class="thin"
        d={`M${side * surfaces} ${from}H${end}M${side * surfaces} ${to}H${end}M${at} ${dimension.text + 3}V${bottom + 1.6 * ARROW_PX}`}
      />
      <path class="arrow" d={`M${at} ${top}l-2.300 ${-ARROW_PX}h4.600ZM${at} ${bottom}l-2.300 ${ARROW_PX}h4.600Z`} />
      <text
        class="callout"
        x={side * Math.min(x + HALF_NUMBER_PX, dimension.wall)}
        y={dimension.text}
        style={{ textAnchor: side === 1 ? 'end' : 'start' }}
      >
        {value}
      </text>
    </g>
  );
}

function openingOf({ sheet, section }: Plan): Dimension | undefined {
  const { stack, body, outlines, damper } = section;
  const { state, valving } = stack;
  if (!state || state.seatOpening_m <= 0) return undefined;
  const face = outlines[0];
  const rim = sheet.x(Math.max(face.outerRadius_mm, body.seat.outerDiameter_mm / 2));
  const wall = sheet.x(damper.boreDiameter_mm / 2);
  if (wall - rim < BESIDE_PX) return undefined;
  const seat = body.seat.innerDiameter_mm / 2;
  const over = face.bottom.reduce((near, point) => (Math.abs(point.r - seat) < Math.abs(near.r - seat) ? point : near));
  return {
    id: 'opening',
    x: rim + 9,
    from: sheet.y(valving.seatHeight_mm),
    to: sheet.y(over.z),
    surfaces: sheet.x(body.seat.outerDiameter_mm / 2) + 2,
    text: Math.min(sheet.y(over.z) - 2 * ARROW_PX, sheet.y(face.top[face.top.length - 1].z)) - 5,
    wall: wall - FROM_WALL_PX,
    value: show('lift', state.seatOpening_m),
  };
}

/** The gap under the backing plate at its rim. */
function plateGapOf({ sheet, section: { touching } }: Plan): Dimension | undefined {
  const gap = touching?.gaps.find(({ above }) => above === 'plate');
  if (!gap || sheet.y(gap.bottom_mm) - sheet.y(gap.top_mm) < PIXELS_PER_MM * 2) return undefined;
  const x = sheet.x(gap.r);
  return {
    id: 'plate-gap',
    x: x + 14,
    from: sheet.y(gap.bottom_mm),
    to: sheet.y(gap.top_mm),
    surfaces: x + 2,
    text: sheet.y(gap.top_mm) - 2 * ARROW_PX,
    wall: sheet.x(sheet.boreRadius_mm) - FROM_WALL_PX,
    value: show('lift', metresFromMillimetres(gap.top_mm - gap.bottom_mm)),
  };
}

export function Dimensions({ plan, side }: { plan: Plan; side: Side }): JSX.Element {
  const dimensions = [openingOf(plan), plateGapOf(plan)].filter((each) => each !== undefined);
  return (
    <g transform={`translate(${plan.sheet.axisX} 0)`}>
      {dimensions.map((dimension) => (
        <DimensionLine key={dimension.id} dimension={dimension} side={side} />
      ))}
    </g>
  );
}
