/** Crests and troughs at the rim, and where the section is cut. */

import type { JSX } from 'preact';
import { text } from '../text/en.ts';
import { anglesOf, type PlanFrame, placeOn, troughAcross } from './plan-frame.ts';
import type { LayerProps } from './plan-layers.tsx';

/** Height of a mark, and how far outside the rim it stands [px]. */
const MARK_PX = 8;
const OUTSIDE_PX = 3;

interface MarkProps {
  readonly frame: PlanFrame;
  readonly rim_mm: number;
  readonly theta: number;
  readonly kind: 'crest' | 'trough';
}

/** A filled arrow head outwards at a crest, an open one inwards at a trough: they differ without colour. */
function Mark({ frame, rim_mm, theta, kind }: MarkProps): JSX.Element {
  const [x, y] = placeOn(frame, { r: rim_mm, theta });
  const out = (-(theta + frame.turn) * 180) / Math.PI;
  const [from, to] = kind === 'crest' ? [OUTSIDE_PX, OUTSIDE_PX + MARK_PX] : [OUTSIDE_PX + MARK_PX, OUTSIDE_PX];
  return (
    <path
      class={`mark ${kind}`}
      data-mark={kind}
      transform={`translate(${x.toFixed(1)} ${y.toFixed(1)}) rotate(${out.toFixed(2)})`}
      d={`M${from} -5V5L${to} 0Z`}
    />
  );
}

export function WaveMarks({ frame, plan: { field, shims, shim } }: LayerProps): JSX.Element | null {
  if (!field?.extremes) return null;
  const { extremes, waves } = field;
  const rim_mm = shims[shim].outerDiameter_mm / 2;
  return (
    <>
      {(['crest', 'trough'] as const).flatMap((kind) =>
        anglesOf(extremes[kind], waves).map((theta) => (
          <Mark key={`${kind} ${theta}`} frame={frame} rim_mm={rim_mm} theta={theta} kind={kind} />
        )),
      )}
    </>
  );
}

const THICK_PX = 13;
const BEYOND_PX = 9;
const LETTER_PX = 9;

/** One arm of the cut: thin from the axis, thick where it ends beyond the tube, with the letter of the section. */
function Arm({ frame, reach_mm, theta }: { frame: PlanFrame; reach_mm: number; theta: number }): JSX.Element {
  const at = (beyond: number): string =>
    placeOn(frame, { r: reach_mm + beyond / frame.pixelsPerMm, theta })
      .map((px) => px.toFixed(1))
      .join(' ');
  const [x, y] = placeOn(frame, { r: reach_mm + (BEYOND_PX + LETTER_PX) / frame.pixelsPerMm, theta });
  return (
    <>
      <path class="cut" d={`M${frame.cx} ${frame.cy}L${at(0)}`} />
      <path class="cut-end" d={`M${at(BEYOND_PX - THICK_PX)}L${at(BEYOND_PX)}`} />
      <text class="cut-letter" x={x} y={y + 4}>
        {text.plan.cutLetter}
      </text>
    </>
  );
}

/** Through a crest to the left, and through a trough as straight across as there is one. */
export function CutLine({ frame, plan: { field, boreRadius_mm } }: LayerProps): JSX.Element {
  const extremes = field?.extremes;
  const crest = extremes && field ? extremes.crest / field.waves : 0;
  const trough = extremes && field ? troughAcross(extremes, field.waves) : Math.PI;
  return (
    <g class="cut-line">
      <Arm frame={frame} reach_mm={boreRadius_mm} theta={crest} />
      <Arm frame={frame} reach_mm={boreRadius_mm} theta={trough} />
    </g>
  );
}
