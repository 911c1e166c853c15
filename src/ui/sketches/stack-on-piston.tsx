/** A stack on its piston, cut: hub, clamp, seat, backing plate, and a bleed hole through the piston. */
import type { JSX } from 'preact';
import { text } from '../text/en.ts';
import { Axis, Cut, CutPath, Lettering, Whole } from './parts.tsx';
import type { Dimension, Sketch } from './sketch.ts';

const CX = 120;
/** Radii. */
const POST = 11;
const CLAMP = 34;
const PLATE = 74;
const LAND_IN = 60;
const LAND_OUT = 71;
const OUT = 94;
const BLEED = [79, 85] as const;
/** Heights: plate, top of the stack, hub plane, seat land, floor, back. */
const PLATE_TOP = 46;
const PLATE_UNDER = 55;
const TOP = 70;
const HUB = 88;
const SEAT = 80;
const FLOOR = 97;
const BACK = 158;

const SHIM = 6;
/** Rims, from the face shim on. */
const RIMS = [84, 68, 54];
/** How high the preloaded face shim has risen at a radius. */
const rise = (radius: number): number => (HUB - SEAT) * ((radius - CLAMP) / (LAND_OUT - CLAMP)) ** 1.6;

/** Half of a shim, bent over the clamp's edge. */
function shimHalf(index: number): string {
  const rim = RIMS[index];
  const [under, over] = [HUB - index * SHIM, HUB - (index + 1) * SHIM];
  const bent = [0.2, 0.4, 0.6, 0.8, 1].map((part) => CLAMP + part * (rim - CLAMP));
  const upper = bent.map((radius) => `L${radius} ${over - rise(radius)}`);
  const lower = bent.toReversed().map((radius) => `L${radius} ${under - rise(radius)}`);
  return `M${POST} ${over}H${CLAMP}${upper.join('')}${lower.join('')}L${CLAMP} ${under}H${POST}Z`;
}

function Half({ hatch }: { readonly hatch: string }): JSX.Element {
  const hub = `M${POST} ${HUB}H32V${FLOOR}H38V${BACK}H${POST}Z`;
  const rim = `M54 ${BACK}V${FLOOR}H${LAND_IN}V${SEAT}H${LAND_OUT}V${SEAT + 9}H${OUT}V${BACK}Z`;
  return (
    <>
      <CutPath d={hub} hatch={hatch} />
      <CutPath d={rim} hatch={hatch} />
      {RIMS.map((radius, i) => (
        <path key={radius} class="shim-of-sketch" d={shimHalf(i)} />
      ))}
      <Cut x={POST} y={PLATE_UNDER} width={CLAMP - POST} height={TOP - PLATE_UNDER} hatch={hatch} />
      <Cut x={POST} y={PLATE_TOP} width={PLATE - POST} height={PLATE_UNDER - PLATE_TOP} hatch={hatch} />
    </>
  );
}

interface DrawingProps {
  readonly hatch: string;
  readonly hasBleed: boolean;
}

function Drawing({ hatch, hasBleed }: DrawingProps): JSX.Element {
  return (
    <>
      {[1, -1].map((side) => (
        <g key={side} transform={`translate(${CX} 0) scale(${side} 1)`}>
          <Half hatch={hatch} />
        </g>
      ))}
      <Whole x={CX - POST} y={34} width={2 * POST} height={BACK - 34} />
      {hasBleed && (
        <rect class="hole" x={CX + BLEED[0]} y={SEAT + 9} width={BLEED[1] - BLEED[0]} height={BACK - SEAT - 9} />
      )}
      <Axis from={[CX, 30]} to={[CX, BACK + 8]} />
      <Lettering at={[CX - 24, 120]}>{text.sketchLabels.hub}</Lettering>
    </>
  );
}

const STACK_SIZES: readonly Dimension[] = [
  { of: 'clamp', along: 'x', from: [CX - CLAMP, TOP], to: [CX + CLAMP, TOP], at: 30 },
  { of: 'seatHeight', along: 'y', from: [CX - 32, HUB], to: [CX - LAND_OUT, SEAT], at: 18, letterAt: 58 },
  { of: 'plateGap', along: 'y', from: [CX + PLATE, PLATE_UNDER], to: [CX + RIMS[2], TOP - 4], at: 222, letterAt: 36 },
];

const SHIM_SIZES: readonly Dimension[] = [
  { of: 'shimDiameter', along: 'x', from: [CX - RIMS[0], SEAT - 6], to: [CX + RIMS[0], SEAT - 6], at: 12 },
  { of: 'shimThickness', letter: [62, 50], points: [CX - 45, TOP - 2 + SHIM] },
];

const BLEED_SIZES: readonly Dimension[] = [
  { of: 'bleedCount', letter: [184, 174], points: [CX + BLEED[0] + 1, BACK] },
  {
    of: 'bleedDiameter',
    along: 'x',
    from: [CX + BLEED[0], BACK - 14],
    to: [CX + BLEED[1], BACK - 14],
    at: 144,
    letterAt: CX + 60,
  },
  { of: 'bleedLength', along: 'y', from: [CX + OUT, SEAT + 9], to: [CX + OUT, BACK], at: 228 },
];

export const STACK: Sketch = {
  height: 186,
  dimensions: [...STACK_SIZES, ...BLEED_SIZES, ...SHIM_SIZES],
  draw: (hatch) => <Drawing hatch={hatch} hasBleed />,
};

export const STACK_WITHOUT_BLEED: Sketch = {
  height: 170,
  dimensions: [...STACK_SIZES, ...SHIM_SIZES],
  draw: (hatch) => <Drawing hatch={hatch} hasBleed={false} />,
};
