/** What presses on a stack: a coil spring on its last shim, and a check spring on a stack that floats under a backing plate. */
import type { JSX } from 'preact';
import { Axis, CoilCut, Cut, Whole } from './parts.tsx';
import type { Sketch } from './sketch.ts';

interface HatchProps {
  readonly hatch: string;
}

const COIL_X = 60;
const FLOAT_X = 180;
/** Face of both pistons. */
const FACE = 120;
const SHIM = 5;
/** Half of the circle on which each spring presses. */
const COIL = 27;
const CHECK = 17;
const RISE = 12;
const PLATE = 36;

function Piston({ x, hatch }: HatchProps & { readonly x: number }): JSX.Element {
  return (
    <>
      <Cut x={x - 16} y={FACE} width={32} height={26} hatch={hatch} />
      {[-1, 1].map((side) => (
        <Cut key={side} x={side === 1 ? x + 34 : x - 50} y={FACE} width={16} height={26} hatch={hatch} />
      ))}
    </>
  );
}

function Shims({ x, top, rims }: { readonly x: number; readonly top: number; readonly rims: readonly number[] }) {
  return (
    <>
      {rims.map((rim, i) => (
        <rect key={rim} class="shim-of-sketch" x={x - rim} y={top - (i + 1) * SHIM} width={2 * rim} height={SHIM} />
      ))}
    </>
  );
}

function UnderCoil({ hatch }: HatchProps): JSX.Element {
  return (
    <>
      <Piston x={COIL_X} hatch={hatch} />
      <Shims x={COIL_X} top={FACE} rims={[48, 40, 32]} />
      <Cut x={COIL_X - 36} y={30} width={72} height={8} hatch={hatch} />
      <CoilCut left={COIL_X - COIL} right={COIL_X + COIL} top={40} bottom={FACE - 3 * SHIM} turns={5} />
      <Whole x={COIL_X - 7} y={22} width={14} height={FACE + 26 - 22} />
      <Axis from={[COIL_X, 18]} to={[COIL_X, 152]} />
    </>
  );
}

function Floating({ hatch }: HatchProps): JSX.Element {
  const stackTop = FACE - 3 * SHIM;
  return (
    <>
      <Piston x={FLOAT_X} hatch={hatch} />
      <Shims x={FLOAT_X} top={FACE} rims={[48, 40, 32]} />
      <rect class="phantom" x={FLOAT_X - 48} y={FACE - SHIM - RISE} width={96} height={SHIM} />
      <Cut x={FLOAT_X - PLATE} y={46} width={2 * PLATE} height={8} hatch={hatch} />
      <CoilCut left={FLOAT_X - CHECK} right={FLOAT_X + CHECK} top={56} bottom={stackTop} turns={4} />
      <Whole x={FLOAT_X - 7} y={38} width={14} height={FACE + 26 - 38} />
      <Axis from={[FLOAT_X, 34]} to={[FLOAT_X, 152]} />
    </>
  );
}

export const SPRINGS: Sketch = {
  height: 176,
  dimensions: [
    { of: 'plateDiameter', along: 'x', from: [FLOAT_X - PLATE, 46], to: [FLOAT_X + PLATE, 46], at: 22 },
    { of: 'coilDiameter', along: 'x', from: [COIL_X - COIL, FACE - 18], to: [COIL_X + COIL, FACE - 18], at: 164 },
    { of: 'coilRate', letter: [108, 42], points: [COIL_X + COIL + 2, 58] },
    { of: 'coilPreload', letter: [14, 76], points: [COIL_X - COIL - 1, 92] },
    {
      of: 'floatTravel',
      along: 'y',
      from: [FLOAT_X + 48, FACE],
      to: [FLOAT_X + 48, FACE - RISE],
      at: 231,
      letterAt: 86,
    },
    { of: 'floatRate', letter: [210, 74], points: [FLOAT_X + CHECK + 2, 74] },
    { of: 'floatPreload', letter: [134, 80], points: [FLOAT_X - CHECK - 1, 94] },
  ],
  draw: (hatch) => (
    <>
      <UnderCoil hatch={hatch} />
      <Floating hatch={hatch} />
    </>
  ),
};

const SCREW_X = 120;

/** A screw with clicks that moves the seat of a coil spring. */
function ScrewOverSpring({ hatch }: HatchProps): JSX.Element {
  return (
    <>
      <Cut x={SCREW_X - 46} y={30} width={32} height={18} hatch={hatch} />
      <Cut x={SCREW_X + 14} y={30} width={32} height={18} hatch={hatch} />
      <Whole x={SCREW_X - 13} y={26} width={26} height={40} />
      <path class="thin" d={[32, 37, 42].map((y) => `M${SCREW_X - 13} ${y}l26 3`).join('')} />
      <Whole x={SCREW_X - 22} y={12} width={44} height={14} />
      <Cut x={SCREW_X - 34} y={66} width={68} height={7} hatch={hatch} />
      <path class="phantom" d={`M${SCREW_X - 34} 58H${SCREW_X + 34}`} />
      <CoilCut left={SCREW_X - 26} right={SCREW_X + 26} top={74} bottom={114} turns={4} />
      <rect class="shim-of-sketch" x={SCREW_X - 40} y={114} width={80} height={5} />
      <Axis from={[SCREW_X, 6]} to={[SCREW_X, 124]} />
    </>
  );
}

export const SPRING_ADJUSTER: Sketch = {
  height: 128,
  dimensions: [
    { of: 'springPerClick', along: 'y', from: [SCREW_X + 34, 66], to: [SCREW_X + 34, 58], at: 196, letterAt: 34 },
    { of: 'springClicks', letter: [52, 19], points: [SCREW_X - 22, 19] },
  ],
  draw: (hatch) => <ScrewOverSpring hatch={hatch} />,
};
