/** What drawings of dampers are made of: cut metal, whole parts, oil, lettering. */
import type { ComponentChildren, JSX } from 'preact';
import type { Point } from './sketch.ts';

export interface Box {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

export const Cut = ({ hatch, ...box }: Box & { readonly hatch: string }): JSX.Element => (
  <rect class="metal-cut" {...box} fill={hatch} />
);

export const CutPath = ({ d, hatch }: { readonly d: string; readonly hatch: string }): JSX.Element => (
  <path class="metal-cut" d={d} fill={hatch} />
);

export const Whole = (box: Box): JSX.Element => <rect class="whole" {...box} />;

export const Oil = (box: Box): JSX.Element => <rect class="oil" {...box} />;

export const Axis = ({ from, to }: { readonly from: Point; readonly to: Point }): JSX.Element => (
  <path class="axis" d={`M${from.join(' ')}L${to.join(' ')}`} />
);

export const Lettering = ({
  at,
  children,
}: {
  readonly at: Point;
  readonly children: ComponentChildren;
}): JSX.Element => (
  <text class="lettering-of-part" x={at[0]} y={at[1]}>
    {children}
  </text>
);

interface TubeProps {
  readonly x: number;
  readonly length: number;
  /** Of the axis. */
  readonly y: number;
  /** Half of the inside. */
  readonly half: number;
  readonly wall: number;
  readonly hatch: string;
}

/** The two cut walls of a tube that lies along x. */
export const TubeWalls = ({ x, length, y, half, wall, hatch }: TubeProps): JSX.Element => (
  <>
    <Cut x={x} y={y - half - wall} width={length} height={wall} hatch={hatch} />
    <Cut x={x} y={y + half} width={length} height={wall} hatch={hatch} />
  </>
);

/** A coil spring along y between two heights, cut so that its wires show. */
export function CoilCut({ left, right, top, bottom, turns }: SpringProps): JSX.Element {
  const step = (bottom - top) / turns;
  const wires = Array.from({ length: turns }, (_, i) => top + step * (i + 0.5));
  return (
    <>
      {wires.map((y) => (
        <g key={y}>
          <path class="thin" d={`M${left} ${y + step / 4}L${right} ${y - step / 4}`} />
          <circle class="whole" cx={left} cy={y + step / 4} r={2.6} />
          <circle class="whole" cx={right} cy={y - step / 4} r={2.6} />
        </g>
      ))}
    </>
  );
}

interface SpringProps {
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
  readonly turns: number;
}
