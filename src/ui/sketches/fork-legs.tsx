/** A fork leg upright on the bench: with the air over its oil, with the level being measured, and being filled. */
import type { JSX } from 'preact';
import { text } from '../text/en.ts';
import { Axis, Cut, Lettering, Oil, Whole } from './parts.tsx';
import type { Dimension, Sketch } from './sketch.ts';

interface HatchProps {
  readonly hatch: string;
}

const CX = 96;
const HALF = 34;
const WALL = 5;
const TOP = 30;
const FOOT = 176;
const LEVEL = 92;
const label = text.sketchLabels;

/** Tube, oil and cartridge. @param level of the oil */
function Leg({ hatch, level }: HatchProps & { readonly level: number }): JSX.Element {
  return (
    <>
      <rect class="gas" x={CX - HALF} y={TOP} width={2 * HALF} height={level - TOP} />
      <Oil x={CX - HALF} y={level} width={2 * HALF} height={FOOT - level} />
      <path class="outline" d={`M${CX - HALF} ${level}H${CX + HALF}`} />
      <Cut x={CX - HALF - WALL} y={TOP} width={WALL} height={FOOT - TOP} hatch={hatch} />
      <Cut x={CX + HALF} y={TOP} width={WALL} height={FOOT - TOP} hatch={hatch} />
      <Cut x={CX - HALF - WALL} y={FOOT} width={2 * (HALF + WALL)} height={8} hatch={hatch} />
      <Whole x={CX - 11} y={112} width={22} height={FOOT - 112} />
      <Whole x={CX - 3.5} y={58} width={7} height={54} />
      <Axis from={[CX, TOP - 14]} to={[CX, FOOT + 12]} />
    </>
  );
}

const pressure: Dimension = { of: 'gasPressure', letter: [26, 22], points: [CX - HALF + 8, 46] };
const exponent = (y: number): Dimension => ({ of: 'exponent', letter: [26, y], points: [CX - HALF + 8, y - 12] });
const separator: readonly Dimension[] = [
  { of: 'separatorDiameter', letter: [26, 116], points: [CX - HALF, LEVEL + 2] },
  { of: 'separatorFriction', letter: [26, 148], points: [CX - HALF + 2, LEVEL + 8] },
];

/** What holds the top shut while it rides. */
const Cap = ({ hatch }: HatchProps): JSX.Element => (
  <Cut x={CX - HALF} y={TOP - 6} width={2 * HALF} height={12} hatch={hatch} />
);

export const FORK_VOLUME: Sketch = {
  height: 192,
  dimensions: [
    pressure,
    { of: 'gasVolume', along: 'y', from: [CX + HALF + WALL, TOP + 6], to: [CX + HALF, LEVEL], at: 160 },
    exponent(84),
    ...separator,
  ],
  draw: (hatch) => (
    <>
      <Leg hatch={hatch} level={LEVEL} />
      <Cap hatch={hatch} />
      <Lettering at={[CX + 20, 66]}>{label.air}</Lettering>
      <Lettering at={[CX + 22, 130]}>{label.oil}</Lettering>
      <Lettering at={[192, 182]}>{label.extended}</Lettering>
    </>
  ),
};

/** The spring and spacer that go in later, beside the leg. */
function SpringBeside({ x }: { readonly x: number }): JSX.Element {
  const coils = Array.from({ length: 7 }, (_, i) => 84 + 11 * i);
  return (
    <>
      {coils.map((y) => (
        <path key={y} class="outline" d={`M${x - 11} ${y + 5}L${x + 11} ${y - 5}`} stroke-width="4" />
      ))}
      <Whole x={x - 11} y={52} width={22} height={22} />
    </>
  );
}

export const FORK_LEVEL: Sketch = {
  height: 192,
  dimensions: [
    pressure,
    { of: 'oilLevel', along: 'y', from: [CX + HALF + WALL, TOP], to: [CX + HALF, LEVEL], at: 156 },
    { of: 'tube', along: 'x', from: [CX - HALF, TOP], to: [CX + HALF, TOP], at: 14 },
    { of: 'inserted', letter: [198, 28], points: [200, 50] },
    exponent(84),
    ...separator,
  ],
  draw: (hatch) => (
    <>
      <Leg hatch={hatch} level={LEVEL} />
      <path class="rule-tool" d={`M${CX + 18} ${TOP - 12}V${LEVEL}h8V${TOP - 12}Z`} />
      <path class="thin" d={[40, 48, 56, 64, 72, 80].map((y) => `M${CX + 18} ${y}h4`).join('')} />
      <SpringBeside x={200} />
      <Lettering at={[200, 172]}>{label.springOut}</Lettering>
      <Lettering at={[192, 184]}>{label.compressed}</Lettering>
    </>
  ),
};

/** A measuring cylinder with its scale. */
function Cylinder({ x, y }: { readonly x: number; readonly y: number }): JSX.Element {
  return (
    <>
      <Oil x={x} y={y + 24} width={26} height={44} />
      <path class="outline" d={`M${x} ${y}V${y + 68}H${x + 26}V${y}M${x - 6} ${y + 70}h38`} />
      <path class="thin" d={[12, 24, 36, 48].map((step) => `M${x + 14} ${y + step}h12`).join('')} />
    </>
  );
}

export const FORK_FILL: Sketch = {
  height: 192,
  dimensions: [
    pressure,
    { of: 'poured', letter: [168, 28], points: [168, 62] },
    { of: 'legHolds', along: 'y', from: [CX + HALF + WALL, TOP], to: [CX + HALF, FOOT], at: 148 },
    { of: 'inserted', letter: [218, 28], points: [218, 50] },
    exponent(84),
    ...separator,
  ],
  draw: (hatch) => (
    <>
      <Leg hatch={hatch} level={LEVEL} />
      <Cylinder x={166} y={44} />
      <SpringBeside x={218} />
      <Lettering at={[200, 172]}>{label.springOut}</Lettering>
      <Lettering at={[192, 184]}>{label.compressed}</Lettering>
    </>
  ),
};
