/** Where the gas of a damper is, with the rod fully extended, and how its pressure and its room are read. */
import type { JSX } from 'preact';
import { text } from '../text/en.ts';
import { Axis, Cut, Lettering, Oil, TubeWalls, Whole } from './parts.tsx';
import type { Sketch } from './sketch.ts';

interface HatchProps {
  readonly hatch: string;
}

const Y = 62;
const HALF = 28;
const WALL = 5;
const label = text.sketchLabels;

/** A pressure gauge on a charging valve. */
const Gauge = ({ x, y }: { readonly x: number; readonly y: number }): JSX.Element => (
  <>
    <Whole x={x + 13} y={y - 4} width={14} height={8} />
    <circle class="whole" cx={x} cy={y} r={14} />
    <path class="thin" d={`M${x - 8} ${y + 7}A11 11 0 1 1 ${x + 8} ${y + 7}M${x} ${y + 2}L${x + 6} ${y - 6}`} />
  </>
);

/** A floating piston in its tube; the rod, where it is in the same tube, stands far away at the right. */
function GasTube({ hatch, withRod }: HatchProps & { readonly withRod: boolean }): JSX.Element {
  return (
    <>
      <rect class="gas" x={62} y={Y - HALF} width={68} height={2 * HALF} />
      <Oil x={144} y={Y - HALF} width={80} height={2 * HALF} />
      <TubeWalls x={54} length={170} y={Y} half={HALF} wall={WALL} hatch={hatch} />
      <Cut x={54} y={Y - HALF - WALL} width={8} height={2 * (HALF + WALL)} hatch={hatch} />
      <Whole x={46} y={Y - 4} width={8} height={8} />
      <Gauge x={19} y={Y} />
      <Cut x={130} y={Y - HALF} width={14} height={2 * HALF} hatch={hatch} />
      <Whole x={134} y={Y - HALF - 0.5} width={6} height={4} />
      <Whole x={134} y={Y + HALF - 3.5} width={6} height={4} />
      {withRod && <Cut x={206} y={Y - HALF} width={10} height={2 * HALF} hatch={hatch} />}
      {withRod && <Whole x={216} y={Y - 6} width={24} height={12} />}
      {!withRod && <Cut x={218} y={Y - HALF} width={6} height={HALF - 7} hatch={hatch} />}
      {!withRod && <Cut x={218} y={Y + 7} width={6} height={HALF - 7} hatch={hatch} />}
      <path class="break" d={`M186 ${Y - HALF - 8}l5 16l-8 12l7 14l-7 12l6 20`} />
      <Axis from={[4, Y]} to={[238, Y]} />
      <Lettering at={[82, Y - 14]}>{label.gas}</Lettering>
      <Lettering at={[166, Y - 14]}>{label.oil}</Lettering>
    </>
  );
}

const tubeSizes: Sketch['dimensions'] = [
  { of: 'gasPressure', letter: [19, 24], points: [19, Y - 14] },
  { of: 'gasVolume', along: 'x', from: [62, Y + HALF - 4], to: [130, Y + HALF - 4], at: 116 },
  { of: 'exponent', letter: [98, 14], points: [98, Y - 20] },
  { of: 'separatorDiameter', along: 'y', from: [137, Y - HALF], to: [137, Y + HALF], at: 112 },
  { of: 'separatorFriction', letter: [160, 14], points: [138, Y - HALF + 1] },
];

export const GAS_TUBE: Sketch = {
  height: 130,
  dimensions: tubeSizes,
  draw: (hatch) => <GasTube hatch={hatch} withRod />,
};

export const GAS_RESERVOIR: Sketch = {
  height: 130,
  dimensions: tubeSizes,
  draw: (hatch) => <GasTube hatch={hatch} withRod={false} />,
};

/** Upright, as it stands on the bench: the gas lies over the oil between the tubes. */
function TwinTubeFoot({ hatch }: HatchProps): JSX.Element {
  const wallAt = (x: number, width: number): JSX.Element => (
    <Cut key={x} x={x} y={18} width={width} height={118} hatch={hatch} />
  );
  return (
    <>
      {[78, 152].map((x) => (
        <g key={x}>
          <rect class="gas" x={x} y={26} width={20} height={44} />
          <Oil x={x} y={70} width={20} height={66} />
          <path class="outline" d={`M${x} 70h20`} />
        </g>
      ))}
      <Oil x={102} y={40} width={46} height={96} />
      {wallAt(73, 5)}
      {wallAt(98, 4)}
      {wallAt(148, 4)}
      {wallAt(172, 5)}
      <Cut x={73} y={136} width={104} height={8} hatch={hatch} />
      <Cut x={78} y={18} width={40} height={8} hatch={hatch} />
      <Cut x={132} y={18} width={40} height={8} hatch={hatch} />
      <Whole x={119} y={2} width={12} height={42} />
      <Cut x={103} y={44} width={44} height={12} hatch={hatch} />
      <Gauge x={28} y={40} />
      <path class="thin" d="M55 40H73" />
      <Axis from={[125, 0]} to={[125, 150]} />
    </>
  );
}

export const GAS_TWIN_TUBE: Sketch = {
  height: 152,
  dimensions: [
    { of: 'gasPressure', letter: [28, 78], points: [28, 54] },
    { of: 'gasVolume', letter: [206, 40], points: [164, 48] },
    { of: 'exponent', letter: [206, 84], points: [166, 60] },
    { of: 'separatorDiameter', letter: [206, 116], points: [170, 68] },
    { of: 'separatorFriction', letter: [40, 116], points: [84, 68] },
  ],
  draw: (hatch) => <TwinTubeFoot hatch={hatch} />,
};
