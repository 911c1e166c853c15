/** What makes force beside the valves: band and clearance of the piston, friction on the rod, plunger and cup of a stop. */
import type { JSX } from 'preact';
import { Axis, Cut, CutPath, Whole } from './parts.tsx';
import type { Sketch } from './sketch.ts';

interface HatchProps {
  readonly hatch: string;
}

const Y = 66;
const BORE = 40;
const PISTON = 33;

/** Piston in its tube with far too much room, a spring scale on the rod. */
function OnScale({ hatch }: HatchProps): JSX.Element {
  return (
    <>
      <rect class="oil" x={20} y={Y - BORE} width={116} height={2 * BORE} />
      <Cut x={20} y={Y - BORE - 6} width={124} height={6} hatch={hatch} />
      <Cut x={20} y={Y + BORE} width={124} height={6} hatch={hatch} />
      <Cut x={136} y={Y - BORE} width={8} height={BORE - 6} hatch={hatch} />
      <Cut x={136} y={Y + 6} width={8} height={BORE - 6} hatch={hatch} />
      <Cut x={48} y={Y - PISTON} width={34} height={2 * PISTON} hatch={hatch} />
      {[-1, 1].map((side) => (
        <Whole key={side} x={53} y={side === 1 ? Y + PISTON - 3 : Y - PISTON - 1} width={24} height={4} />
      ))}
      <Whole x={82} y={Y - 6} width={86} height={12} />
      <path class="outline" d={`M168 ${Y}h8`} />
      <Whole x={176} y={Y - 8} width={44} height={16} />
      <path class="thin" d={[184, 191, 198, 205, 212].map((x) => `M${x} ${Y - 8}v7`).join('')} />
      <path class="outline" d={`M220 ${Y}h8`} />
      <Axis from={[12, Y]} to={[236, Y]} />
    </>
  );
}

const STOP_Y = 190;
const CUP = 26;
const PLUNGER = 20;

function Stop({ hatch }: HatchProps): JSX.Element {
  return (
    <>
      <CutPath d={`M40 ${STOP_Y - 38}H104V${STOP_Y - CUP}H52V${STOP_Y + CUP}H104V${STOP_Y + 38}H40Z`} hatch={hatch} />
      <rect class="oil" x={52} y={STOP_Y - CUP} width={52} height={2 * CUP} />
      <Whole x={124} y={STOP_Y - PLUNGER} width={58} height={2 * PLUNGER} />
      <Whole x={182} y={STOP_Y - 7} width={46} height={14} />
      <path class="phantom" d={`M182 ${STOP_Y - PLUNGER}H70V${STOP_Y + PLUNGER}H182`} />
      <Axis from={[32, STOP_Y]} to={[236, STOP_Y]} />
    </>
  );
}

export const PISTON_PARTS: Sketch = {
  height: 264,
  dimensions: [
    { of: 'friction', letter: [198, 30], points: [198, Y - 9] },
    { of: 'breakaway', letter: [170, 30], points: [182, Y - 9] },
    { of: 'stribeckSpeed', letter: [168, 110], points: [150, Y + 7] },
    { of: 'viscous', letter: [198, 110], points: [162, Y + 7] },
    { of: 'clearance', along: 'y', from: [92, Y + PISTON + 1], to: [92, Y + BORE], at: 92, letterAt: 132 },
    { of: 'bandLength', along: 'x', from: [53, Y - PISTON], to: [77, Y - PISTON], at: 10, letterAt: 100 },
    { of: 'eccentricity', letter: [24, 132], points: [40, Y + 2] },
    { of: 'stopLength', along: 'x', from: [70, STOP_Y + PLUNGER], to: [104, STOP_Y + CUP], at: 246, letterAt: 134 },
    { of: 'plunger', along: 'y', from: [160, STOP_Y - PLUNGER], to: [160, STOP_Y + PLUNGER], at: 160 },
    { of: 'stopClearance', along: 'y', from: [98, STOP_Y - PLUNGER], to: [98, STOP_Y - CUP], at: 98, letterAt: 150 },
  ],
  draw: (hatch) => (
    <>
      <OnScale hatch={hatch} />
      <Stop hatch={hatch} />
    </>
  ),
};
