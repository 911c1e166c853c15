/** A wheel on its swing arm from the side: what the end carries, how far the wheel moves and how far the shaft. */
import type { JSX } from 'preact';
import { Axis, Whole } from './parts.tsx';
import type { Sketch } from './sketch.ts';

const PIVOT = [78, 112] as const;
const HUB = [186, 126] as const;
const RISEN = [186, 82] as const;
const EYE = [132, 119] as const;
const FRAME = [100, 40] as const;

function Coils(): JSX.Element {
  const turns = [0.2, 0.32, 0.44, 0.56, 0.68];
  const at = (t: number): readonly [number, number] => [
    FRAME[0] + t * (EYE[0] - FRAME[0]),
    FRAME[1] + t * (EYE[1] - FRAME[1]),
  ];
  return (
    <>
      {turns.map((t) => {
        const [x, y] = at(t);
        return <path key={t} class="outline" d={`M${x - 11} ${y + 6}L${x + 11} ${y - 6}`} stroke-width="3" />;
      })}
    </>
  );
}

function Linked(): JSX.Element {
  return (
    <>
      <path class="outline" d="M20 58H112L70 112H34Z" />
      <path class="phantom" d={`M${PIVOT[0]} ${PIVOT[1]}L${RISEN[0]} ${RISEN[1]}`} />
      <circle class="phantom" cx={RISEN[0]} cy={RISEN[1]} r={34} fill="none" />
      <path class="outline" d={`M${PIVOT[0]} ${PIVOT[1]}L${HUB[0]} ${HUB[1]}`} stroke-width="4" />
      <circle class="outline" cx={HUB[0]} cy={HUB[1]} r={34} fill="none" />
      <circle class="whole" cx={HUB[0]} cy={HUB[1]} r={5} />
      <circle class="whole" cx={PIVOT[0]} cy={PIVOT[1]} r={4} />
      <path class="outline" d={`M${FRAME[0]} ${FRAME[1]}L${EYE[0]} ${EYE[1]}`} />
      <Coils />
      <circle class="whole" cx={EYE[0]} cy={EYE[1]} r={3} />
      <Whole x={FRAME[0] - 5} y={FRAME[1] - 5} width={10} height={10} />
      <Axis from={[150, 160]} to={[222, 160]} />
    </>
  );
}

export const CHASSIS: Sketch = {
  height: 176,
  dimensions: [
    { of: 'vehicleSprung', letter: [24, 76], points: [44, 82] },
    { of: 'riderSprung', letter: [40, 30], points: [56, 58] },
    { of: 'unsprung', letter: [206, 164], points: [192, 130] },
    { of: 'wheelTravel', along: 'y', from: [...HUB], to: [...RISEN], at: 229, letterAt: 104 },
    { of: 'motionRatio', letter: [156, 62], points: [126, 98] },
    { of: 'mainRate', letter: [142, 28], points: [114, 66] },
    { of: 'mainPreload', letter: [78, 18], points: [FRAME[0], FRAME[1] - 4] },
  ],
  draw: () => <Linked />,
};
