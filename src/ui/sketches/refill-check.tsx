/** A plate over ports under a light spring, cut: oil lifts it on its way back into the chamber. */
import type { JSX } from 'preact';
import { Axis, CoilCut, Cut, Whole } from './parts.tsx';
import type { Dimension, Sketch } from './sketch.ts';

const X = 116;
const FACE = 104;
const BACK = 150;
const POST = 9;
const PORT_IN = 26;
const PORT_OUT = 44;
const LAND_IN = 47;
const LAND_OUT = 58;
const OUT = 70;
const STOP = 82;

function Half({ hatch }: { readonly hatch: string }): JSX.Element {
  return (
    <>
      <Cut x={POST} y={FACE} width={PORT_IN - POST} height={BACK - FACE} hatch={hatch} />
      <path
        class="metal-cut"
        d={`M${PORT_OUT} ${BACK}V${FACE + 6}H${LAND_IN}V${FACE}H${LAND_OUT}V${FACE + 8}H${OUT}V${BACK}Z`}
        fill={hatch}
      />
      <rect class="shim-of-sketch" x={POST + 3} y={FACE - 7} width={LAND_OUT - POST} height={7} />
      <rect class="phantom" x={POST + 3} y={STOP} width={LAND_OUT - POST} height={7} />
      <Cut x={POST} y={STOP - 8} width={12} height={8} hatch={hatch} />
    </>
  );
}

function Check({ hatch }: { readonly hatch: string }): JSX.Element {
  return (
    <>
      {[1, -1].map((side) => (
        <g key={side} transform={`translate(${X} 0) scale(${side} 1)`}>
          <Half hatch={hatch} />
        </g>
      ))}
      <Cut x={X - 38} y={30} width={76} height={7} hatch={hatch} />
      <CoilCut left={X - 30} right={X + 30} top={38} bottom={FACE - 7} turns={4} />
      <Whole x={X - POST} y={24} width={2 * POST} height={BACK - 24} />
      <Axis from={[X, 16]} to={[X, BACK + 8]} />
    </>
  );
}

const dimensionsWith = (port: Dimension): readonly Dimension[] => [
  { of: 'portCount', letter: [26, 172], points: [X - PORT_IN - 6, BACK] },
  port,
  { of: 'portLength', along: 'y', from: [X + OUT, FACE + 6], to: [X + OUT, BACK], at: 206 },
  {
    of: 'seatInner',
    along: 'x',
    from: [X - LAND_IN, FACE + 3],
    to: [X + LAND_IN, FACE + 3],
    at: 198,
    letterAt: X - 20,
  },
  {
    of: 'seatOuter',
    along: 'x',
    from: [X - LAND_OUT, FACE + 8],
    to: [X + LAND_OUT, FACE + 8],
    at: 218,
    letterAt: X + 12,
  },
  { of: 'checkRate', letter: [176, 34], points: [X + 32, 52] },
  { of: 'checkPreload', letter: [54, 50], points: [X - 31, 64] },
  {
    of: 'checkTravel',
    along: 'y',
    from: [X + LAND_OUT + 3, FACE - 7],
    to: [X + LAND_OUT + 3, STOP],
    at: 214,
    letterAt: 60,
  },
];

export const REFILL_ROUND: Sketch = {
  height: 230,
  dimensions: dimensionsWith({
    of: 'portDiameter',
    along: 'x',
    from: [X + PORT_IN, BACK],
    to: [X + PORT_OUT, BACK],
    at: 166,
    letterAt: X + 70,
  }),
  draw: (hatch) => <Check hatch={hatch} />,
};

export const REFILL_SHAPED: Sketch = {
  height: 230,
  dimensions: dimensionsWith({ of: 'portArea', letter: [196, 172], points: [X + (PORT_IN + PORT_OUT) / 2, BACK - 2] }),
  draw: (hatch) => <Check hatch={hatch} />,
};
