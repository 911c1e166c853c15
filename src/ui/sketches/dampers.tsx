/** Whole dampers, cut along the axis, rod fully extended: one for each layout. */
import type { JSX } from 'preact';
import { text } from '../text/en.ts';
import { Axis, Cut, Lettering, Oil, TubeWalls, Whole } from './parts.tsx';
import type { Dimension, Sketch } from './sketch.ts';

interface BodyProps {
  readonly y: number;
  readonly hatch: string;
}

const HALF = 25;
const WALL = 5;
const ROD = 7;
const HEAD = 168;
const PISTON = 132;
const PISTON_END = 146;
const EYE = 229;
/** Of the eye, at full compression. */
const EYE_IN = 194;

const label = text.sketchLabels;

/** Piston and rod in a tube that ends at the left with x, and the eye, once more where it is compressed. */
function PistonInTube({ x, y, hatch }: BodyProps & { readonly x: number }): JSX.Element {
  return (
    <>
      <Oil x={x} y={y - HALF} width={HEAD - x} height={2 * HALF} />
      <TubeWalls x={x} length={HEAD + 12 - x} y={y} half={HALF} wall={WALL} hatch={hatch} />
      <Whole x={PISTON_END} y={y - ROD} width={EYE - PISTON_END} height={2 * ROD} />
      <Cut x={HEAD} y={y - HALF} width={12} height={HALF - ROD} hatch={hatch} />
      <Cut x={HEAD} y={y + ROD} width={12} height={HALF - ROD} hatch={hatch} />
      <Cut x={PISTON} y={y - HALF + 0.5} width={PISTON_END - PISTON} height={2 * HALF - 1} hatch={hatch} />
      <circle class="whole" cx={EYE} cy={y} r={8} />
      <circle class="thin" cx={EYE} cy={y} r={3} />
      <circle class="phantom" cx={EYE_IN} cy={y} r={8} />
      <Axis from={[6, y]} to={[238, y]} />
    </>
  );
}

function Monotube({ y, hatch }: BodyProps): JSX.Element {
  return (
    <>
      <PistonInTube x={16} y={y} hatch={hatch} />
      <rect class="gas" x={16} y={y - HALF} width={34} height={2 * HALF} />
      <Cut x={50} y={y - HALF} width={9} height={2 * HALF} hatch={hatch} />
      <Cut x={8} y={y - HALF - WALL} width={8} height={2 * (HALF + WALL)} hatch={hatch} />
      <Lettering at={[33, y - 10]}>{label.gas}</Lettering>
      <Lettering at={[76, y - 10]}>{label.oil}</Lettering>
    </>
  );
}

/** A block with the base valve at the foot of the tube. */
const BaseBlock = ({ y, hatch, half = HALF }: BodyProps & { readonly half?: number }): JSX.Element => (
  <>
    <Cut x={26} y={y - half} width={8} height={half - 9} hatch={hatch} />
    <Cut x={26} y={y + 9} width={8} height={half - 9} hatch={hatch} />
    <Whole x={23} y={y - 14} width={3} height={28} />
    <Whole x={34} y={y - 3} width={5} height={6} />
    <Whole x={18} y={y - 3} width={16} height={6} />
  </>
);

function WithReservoir({ y, hatch }: BodyProps): JSX.Element {
  const chamber = 34;
  return (
    <>
      <PistonInTube x={10} y={y} hatch={hatch} />
      <path class="oil" d={`M10 ${y - HALF}V${chamber - 5}H44V${chamber + 5}H20V${y - HALF}Z`} />
      <path class="outline" d={`M10 ${y - HALF}V${chamber - 5}H44M20 ${y - HALF}V${chamber + 5}H44`} />
      <Cut x={4} y={y - HALF - WALL} width={6} height={2 * (HALF + WALL)} hatch={hatch} />
      <BaseBlock y={y} hatch={hatch} />
      <Oil x={44} y={chamber - 17} width={44} height={34} />
      <rect class="gas" x={96} y={chamber - 17} width={52} height={34} />
      <TubeWalls x={44} length={104} y={chamber} half={17} wall={4} hatch={hatch} />
      <Cut x={88} y={chamber - 17} width={8} height={34} hatch={hatch} />
      <Cut x={148} y={chamber - 21} width={6} height={42} hatch={hatch} />
      <Lettering at={[122, chamber]}>{label.gas}</Lettering>
      <Lettering at={[66, chamber]}>{label.oil}</Lettering>
    </>
  );
}

function TwinTube({ y, hatch }: BodyProps): JSX.Element {
  const outer = 43;
  return (
    <>
      <rect class="gas" x={14} y={y - outer} width={HEAD - 14} height={2 * outer} />
      <Oil x={14} y={y - outer} width={86} height={2 * outer} />
      <PistonInTube x={26} y={y} hatch={hatch} />
      <TubeWalls x={14} length={HEAD - 2} y={y} half={outer} wall={4} hatch={hatch} />
      <Cut x={HEAD} y={y - outer} width={12} height={outer - HALF} hatch={hatch} />
      <Cut x={HEAD} y={y + HALF} width={12} height={outer - HALF} hatch={hatch} />
      <Cut x={6} y={y - outer - 4} width={8} height={2 * outer + 8} hatch={hatch} />
      <BaseBlock y={y} hatch={hatch} />
      <Lettering at={[134, y - 37]}>{label.gas}</Lettering>
      <Lettering at={[64, y - 37]}>{label.oil}</Lettering>
    </>
  );
}

/** The sizes that every damper with its rod at the right has, its axis at y. */
const rodSizes = (y: number, [below, beside]: readonly [number, number]): readonly Dimension[] => [
  { of: 'bore', along: 'y', from: [102, y - HALF], to: [102, y + HALF], at: 102 },
  { of: 'rod', along: 'y', from: [209, y + ROD], to: [209, y - ROD], at: 209 },
  { of: 'travel', along: 'x', from: [EYE_IN, y + 8], to: [EYE, y + 8], at: below },
  {
    of: 'endClearance',
    along: 'x',
    from: [PISTON_END, y + HALF - 4],
    to: [HEAD, y + HALF - 4],
    at: below,
    letterAt: 127,
  },
  { of: 'heatedMass', letter: [52, below], points: [66, y + beside] },
];

export const MONOTUBE: Sketch = {
  height: 118,
  dimensions: rodSizes(44, [98, HALF + WALL]),
  draw: (hatch) => <Monotube y={44} hatch={hatch} />,
};

export const RESERVOIR: Sketch = {
  height: 178,
  dimensions: rodSizes(104, [160, HALF + WALL]),
  draw: (hatch) => <WithReservoir y={104} hatch={hatch} />,
};

export const TWIN_TUBE: Sketch = {
  height: 140,
  dimensions: rodSizes(52, [120, 47]),
  draw: (hatch) => <TwinTube y={52} hatch={hatch} />,
};
