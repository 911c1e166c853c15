/** Bleeds: a hole beside a base valve, and the needle that closes one by clicks. */
import type { JSX } from 'preact';
import { Axis, Cut, CutPath, Whole } from './parts.tsx';
import type { Sketch } from './sketch.ts';

interface HatchProps {
  readonly hatch: string;
}

const Y = 56;
const HOLE = 11;
const MOUTH = 62;

function Needle({ hatch }: HatchProps): JSX.Element {
  const body = 14;
  const cone = (shift: number): string =>
    `M${40 + shift} ${Y}L${84 + shift} ${Y - body}H${170 + shift}V${Y + body}H${84 + shift}Z`;
  return (
    <>
      <Cut x={24} y={Y - 40} width={MOUTH - 24} height={40 - HOLE} hatch={hatch} />
      <Cut x={24} y={Y + HOLE} width={MOUTH - 24} height={40 - HOLE} hatch={hatch} />
      <rect class="oil" x={24} y={Y - HOLE} width={MOUTH - 24} height={2 * HOLE} />
      <path class="whole" d={cone(0)} />
      <path class="phantom" d={cone(14)} />
      <CutPath d={`M120 ${Y - 30}H168V${Y - body}H120Z`} hatch={hatch} />
      <CutPath d={`M120 ${Y + body}H168V${Y + 30}H120Z`} hatch={hatch} />
      <path class="thin" d={[126, 133, 140, 147, 154, 161].map((x) => `M${x} ${Y - body}l3 ${2 * body}`).join('')} />
      <Whole x={170} y={Y - 22} width={16} height={44} />
      <path class="thin" d={[-14, -5, 4, 13].map((dy) => `M170 ${Y + dy}h16`).join('')} />
      <path class="thin" d={`M40 ${Y}L96 ${Y - 18}M40 ${Y}L96 ${Y + 18}`} />
      <path class="thin" d={`M92 ${Y - 16.6}A55 55 0 0 1 92 ${Y + 16.6}`} />
      <Axis from={[14, Y]} to={[206, Y]} />
    </>
  );
}

export const NEEDLE: Sketch = {
  height: 118,
  dimensions: [
    { of: 'coneAngle', letter: [104, 12], points: [95, Y - 12] },
    { of: 'needlePerClick', along: 'x', from: [170, Y + 22], to: [184, Y + 22], at: 104, letterAt: 148 },
    { of: 'needleClicks', letter: [214, 22], points: [187, Y - 12] },
  ],
  draw: (hatch) => <Needle hatch={hatch} />,
};

function BaseBleed({ hatch }: HatchProps): JSX.Element {
  return (
    <>
      <rect class="oil" x={60} y={16} width={120} height={94} />
      <Cut x={60} y={44} width={50} height={38} hatch={hatch} />
      <Cut x={122} y={44} width={58} height={38} hatch={hatch} />
      <path class="flow-of-sketch" d="M116 104V24" />
      <Axis from={[116, 10]} to={[116, 116]} />
    </>
  );
}

export const BASE_BLEED: Sketch = {
  height: 126,
  dimensions: [
    { of: 'bleedCount', letter: [40, 30], points: [110, 46] },
    { of: 'bleedDiameter', along: 'x', from: [110, 82], to: [122, 82], at: 98, letterAt: 146 },
    { of: 'bleedLength', along: 'y', from: [180, 44], to: [180, 82], at: 206 },
  ],
  draw: (hatch) => <BaseBleed hatch={hatch} />,
};
