/** One shim: from above with its hole and notches, and a coned one cut. */
import type { JSX } from 'preact';
import { Axis } from './parts.tsx';
import type { Dimension, Sketch } from './sketch.ts';

const CX = 70;
const CY = 78;
const RIM = 50;
const BORE = 19;
const NOTCH = 6;
const DEPTH = 12;

const FLAT = 112;
const DISHED = 92;

function FromAbove({ hasNotches }: { readonly hasNotches: boolean }): JSX.Element {
  return (
    <>
      <circle class="shim-of-sketch" cx={CX} cy={CY} r={RIM} />
      {(hasNotches ? [0, 90, 180, 270] : []).map((turn) => (
        <path
          key={turn}
          class="notch"
          transform={`rotate(${turn} ${CX} ${CY})`}
          d={`M${CX - NOTCH} ${CY - RIM - 3}V${CY - RIM + DEPTH}H${CX + NOTCH}V${CY - RIM - 3}`}
        />
      ))}
      <circle class="notch" cx={CX} cy={CY} r={BORE} />
      <Axis from={[CX - RIM - 6, CY]} to={[CX + RIM + 6, CY]} />
      <Axis from={[CX, CY - RIM - 4]} to={[CX, CY + RIM + 6]} />
    </>
  );
}

/** On a flat plate. */
const Coned = (): JSX.Element => (
  <>
    <path class="shim-of-sketch" d={`M148 ${DISHED}L172 ${FLAT}V${FLAT - 6}L148 ${DISHED - 6}Z`} />
    <path class="shim-of-sketch" d={`M216 ${DISHED}L192 ${FLAT}V${FLAT - 6}L216 ${DISHED - 6}Z`} />
    <path class="outline" d={`M142 ${FLAT}H222`} />
    <Axis from={[182, 76]} to={[182, 122]} />
  </>
);

const SIZES: readonly Dimension[] = [
  { of: 'shimBore', along: 'x', from: [CX - BORE, CY], to: [CX + BORE, CY], at: 144 },
  { of: 'dish', along: 'y', from: [192, FLAT], to: [216, DISHED], at: 228, letterAt: 68 },
];

const drawing = (hasNotches: boolean) => (): JSX.Element => (
  <>
    <FromAbove hasNotches={hasNotches} />
    <Coned />
  </>
);

export const SHIM: Sketch = { height: 156, dimensions: SIZES, draw: drawing(false) };

/** The one on the seat, which alone may have bleed notches. */
export const FACE_SHIM: Sketch = {
  height: 156,
  dimensions: [
    ...SIZES,
    { of: 'notchCount', letter: [142, 36], points: [CX + RIM - 4, CY - 2] },
    { of: 'notchWidth', along: 'x', from: [CX - NOTCH, CY - RIM], to: [CX + NOTCH, CY - RIM], at: 14, letterAt: 112 },
  ],
  draw: drawing(true),
};
