/** What an oil's data sheet says, and what a cylinder and scales add to it. */
import type { JSX } from 'preact';
import { text } from '../text/en.ts';
import { Lettering, Oil, Whole } from './parts.tsx';
import type { Dimension, Sketch } from './sketch.ts';

const X0 = 30;
const Y0 = 118;
const POINT_1 = [62, 50] as const;
const POINT_2 = [120, 88] as const;

/** Viscosity falls with temperature; on the paper of the standard it is a straight line. */
function Chart({ points }: { readonly points: readonly (readonly [number, number])[] }): JSX.Element {
  const [[x1, y1], [x2, y2]] = [POINT_1, POINT_2];
  const slope = (y2 - y1) / (x2 - x1);
  const on = (x: number): number => y1 + slope * (x - x1);
  return (
    <>
      <path class="outline" d={`M${X0} 14V${Y0}H146`} />
      <path class="thin" d={[40, 66, 92].map((y) => `M${X0} ${y}H146`).join('')} />
      <path class="curve-of-sketch" d={`M${X0 + 8} ${on(X0 + 8)}L142 ${on(142)}`} />
      {points.map(([x, y]) => (
        <g key={x}>
          <path class="phantom" d={`M${X0} ${y}H${x}V${Y0}`} />
          <circle class="whole" cx={x} cy={y} r={3.2} />
        </g>
      ))}
      <Lettering at={[92, 156]}>{text.sketchLabels.logarithm}</Lettering>
    </>
  );
}

/** A measuring cylinder on scales, bubbles in the oil. */
function CylinderOnScales(): JSX.Element {
  return (
    <>
      <Oil x={182} y={46} width={32} height={62} />
      <path class="outline" d="M182 26V108H214V26" />
      <path class="thin" d={[40, 52, 64, 76, 88].map((y) => `M200 ${y}h14`).join('')} />
      {[
        [190, 92],
        [194, 74],
        [189, 60],
        [206, 98],
      ].map(([x, y]) => (
        <circle key={`${x}:${y}`} class="bubble" cx={x} cy={y} r={2.4} />
      ))}
      <Whole x={174} y={109} width={48} height={5} />
      <Whole x={178} y={114} width={40} height={16} />
      <Lettering at={[198, 156]}>{text.sketchLabels.scales}</Lettering>
    </>
  );
}

const BESIDE: readonly Dimension[] = [
  { of: 'density', letter: [160, 122], points: [178, 122] },
  { of: 'bulkModulus', letter: [160, 72], points: [183, 82] },
  { of: 'entrainedAir', letter: [228, 30], points: [196, 74] },
];

export const OIL_TWO_POINTS: Sketch = {
  height: 166,
  dimensions: [
    { of: 'temperature1', letter: [POINT_1[0], 138], points: [POINT_1[0], Y0] },
    { of: 'viscosity1', letter: [11, POINT_1[1]], points: [X0, POINT_1[1]] },
    { of: 'temperature2', letter: [POINT_2[0], 138], points: [POINT_2[0], Y0] },
    { of: 'viscosity2', letter: [11, POINT_2[1]], points: [X0, POINT_2[1]] },
    ...BESIDE,
  ],
  draw: () => (
    <>
      <Chart points={[POINT_1, POINT_2]} />
      <CylinderOnScales />
    </>
  ),
};

export const OIL_ONE_POINT: Sketch = {
  height: 166,
  dimensions: [
    { of: 'viscosity40', letter: [11, POINT_1[1]], points: [X0, POINT_1[1]] },
    { of: 'viscosityIndex', letter: [122, 44], points: [94, 70] },
    ...BESIDE,
  ],
  draw: () => (
    <>
      <Chart points={[POINT_1]} />
      <CylinderOnScales />
    </>
  ),
};
