/** The face of a valve body: from above with its ports, and below that cut through them. */
import type { JSX } from 'preact';
import { text } from '../text/en.ts';
import { Axis, CutPath, Lettering, Whole } from './parts.tsx';
import type { Dimension, Sketch } from './sketch.ts';

const CX = 72;
const CY = 62;
/** Radii: hole in the middle, groove, land, outside. */
const HOLE = 8;
const GROOVE_IN = 22;
const LAND_IN = 45;
const LAND_OUT = 54;
const OUT = 60;
const PORT_MIDDLE = 34;
const PORT_HALF = 7;

/** Heights of the cut: face, floor of the groove, back. */
const FACE = 202;
const FLOOR = 209;
const BACK = 246;

const around = (count: number): number[] => Array.from({ length: count }, (_, i) => (360 / count) * i);
const at = (angle: number, radius: number): string => {
  const turn = (angle * Math.PI) / 180;
  return `${(CX + radius * Math.cos(turn)).toFixed(2)} ${(CY + radius * Math.sin(turn)).toFixed(2)}`;
};

/** Half of the arc of a kidney port. */
const KIDNEY_DEG = 33;

function kidney(middle: number): string {
  const [inner, outer] = [PORT_MIDDLE - PORT_HALF, PORT_MIDDLE + PORT_HALF];
  const [from, to] = [middle - KIDNEY_DEG, middle + KIDNEY_DEG];
  const end = PORT_HALF;
  return `M${at(from, outer)}A${outer} ${outer} 0 0 1 ${at(to, outer)}A${end} ${end} 0 0 1 ${at(to, inner)}A${inner} ${inner} 0 0 0 ${at(from, inner)}A${end} ${end} 0 0 1 ${at(from, outer)}Z`;
}

function FromAbove({ isRound }: { readonly isRound: boolean }): JSX.Element {
  return (
    <>
      <circle class="whole" cx={CX} cy={CY} r={OUT} />
      <circle class="land" cx={CX} cy={CY} r={(LAND_IN + LAND_OUT) / 2} stroke-width={LAND_OUT - LAND_IN} />
      {[GROOVE_IN, LAND_IN, LAND_OUT].map((radius) => (
        <circle key={radius} class="thin" cx={CX} cy={CY} r={radius} />
      ))}
      <circle class="hole" cx={CX} cy={CY} r={HOLE} />
      {isRound
        ? around(4).map((angle) => {
            const [x, y] = at(angle, PORT_MIDDLE).split(' ');
            return <circle key={angle} class="hole" cx={x} cy={y} r={PORT_HALF} />;
          })
        : around(3).map((angle) => <path key={angle} class="hole" d={kidney(angle)} />)}
      <Axis from={[CX - OUT - 6, CY]} to={[CX + OUT + 6, CY]} />
      <Axis from={[CX, CY - OUT - 1]} to={[CX, CY + OUT + 4]} />
    </>
  );
}

function Section({ hatch }: { readonly hatch: string }): JSX.Element {
  const hub = `M${HOLE} ${FACE}H${GROOVE_IN}V${FLOOR}H${PORT_MIDDLE - PORT_HALF}V${BACK}H${HOLE}Z`;
  const rim = `M${PORT_MIDDLE + PORT_HALF} ${BACK}V${FLOOR}H${LAND_IN}V${FACE}H${LAND_OUT}L${LAND_OUT + 3} ${FLOOR}H${OUT}V${BACK}Z`;
  return (
    <>
      {[1, -1].map((side) => (
        <g key={side} transform={`translate(${CX} 0) scale(${side} 1)`}>
          <CutPath d={hub} hatch={hatch} />
          <CutPath d={rim} hatch={hatch} />
        </g>
      ))}
      <Axis from={[CX, FACE - 6]} to={[CX, BACK + 6]} />
    </>
  );
}

const RUBBING = { x: 164, y: 92, cell: 9, columns: 7, rows: 8 };

/** The outline of a port on paper with squares: those inside it count whole, those on its edge half. */
function Rubbing(): JSX.Element {
  const { x, y, cell, columns, rows } = RUBBING;
  const [width, height] = [columns * cell, rows * cell];
  const lines = [
    ...Array.from({ length: columns + 1 }, (_, i) => `M${x + i * cell} ${y}V${y + height}`),
    ...Array.from({ length: rows + 1 }, (_, i) => `M${x} ${y + i * cell}H${x + width}`),
  ];
  const kidneyOnPaper = `M${x + 22} ${y + 4}Q${x + 62} ${y + 36} ${x + 22} ${y + 68}A8 8 0 0 1 ${x + 11} ${y + 56}Q${x + 34} ${y + 36} ${x + 11} ${y + 16}A8 8 0 0 1 ${x + 22} ${y + 4}Z`;
  return (
    <>
      <path class="pencil" d={kidneyOnPaper} />
      <path class="grid" d={lines.join('')} />
      <Lettering at={[x + width / 2, y + height + 9]}>{text.sketchLabels.rubbing}</Lettering>
    </>
  );
}

const across = (of: Dimension['of'], radius: number, edge: number, line: number, letterAt: number): Dimension => ({
  of,
  along: 'x',
  from: [CX - radius, edge],
  to: [CX + radius, edge],
  at: line,
  letterAt,
});

const sizesOf = (port: Dimension): readonly Dimension[] => [
  { of: 'portCount', letter: [158, 18], points: [CX + PORT_MIDDLE + 4, CY - 6] },
  port,
  { of: 'portLength', along: 'y', from: [CX + OUT, FLOOR], to: [CX + OUT, BACK], at: 150 },
  { of: 'covered', letter: [150, 112], points: [CX + 32, CY + 26] },
  across('zoneInner', GROOVE_IN, FACE, 190, CX - 8),
  across('zoneOuter', LAND_IN, FACE, 174, CX + 22),
  across('seatInner', LAND_IN, FACE, 158, CX - 22),
  across('seatOuter', LAND_OUT, FACE, 142, CX + 8),
];

const GAUGE = { x: 196, y: 66 };

/** The largest pin that passes through a port, drawn larger. */
function PinGauge({ hatch }: { readonly hatch: string }): JSX.Element {
  const { x, y } = GAUGE;
  const hole = 12;
  return (
    <>
      {[1, -1].map((side) => (
        <g key={side} transform={`translate(${x} 0) scale(${side} 1)`}>
          <CutPath d={`M${hole} ${y + 68}V${y + 34}l6 -8H38V${y + 68}Z`} hatch={hatch} />
        </g>
      ))}
      <Whole x={x - hole + 0.5} y={y} width={2 * hole - 1} height={88} />
      <Axis from={[x, y - 6]} to={[x, y + 94]} />
    </>
  );
}

export const PORTS_ROUND: Sketch = {
  height: 254,
  dimensions: sizesOf({
    of: 'portDiameter',
    along: 'x',
    from: [GAUGE.x - 12, GAUGE.y + 68],
    to: [GAUGE.x + 12, GAUGE.y + 68],
    at: GAUGE.y + 104,
    letterAt: GAUGE.x + 32,
  }),
  draw: (hatch) => (
    <>
      <FromAbove isRound />
      <Section hatch={hatch} />
      <PinGauge hatch={hatch} />
    </>
  ),
};

export const PORTS_SHAPED: Sketch = {
  height: 254,
  dimensions: sizesOf({ of: 'portArea', letter: [212, 66], points: [197, 112] }),
  draw: (hatch) => (
    <>
      <FromAbove isRound={false} />
      <Section hatch={hatch} />
      <Rubbing />
    </>
  ),
};
