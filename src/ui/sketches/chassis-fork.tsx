/** A wheel in its fork from the side: the legs lean from the upright, the axle moves along them. */
import type { JSX } from 'preact';
import { Axis, Whole } from './parts.tsx';
import type { Point, Sketch } from './sketch.ts';

/** Of the legs from the upright, wide enough to be seen as an angle. */
const LEAN_DEG = 25;
const CROWN: Point = [146, 38];
/** Along the leg from the crown. */
const AXLE = 126;
const TRAVEL = 38;
const WHEEL = 32;
const MARK = 96;

const lean = (LEAN_DEG * Math.PI) / 180;
/** Along the leg, and square to it on the side of the wheel's front. */
const at = (along: number, aside = 0): Point => [
  CROWN[0] - along * Math.sin(lean) - aside * Math.cos(lean),
  CROWN[1] + along * Math.cos(lean) - aside * Math.sin(lean),
];
const path = (from: Point, to: Point): string => `M${from.join(' ')}L${to.join(' ')}`;

const HUB = at(AXLE);
const RISEN = at(AXLE - TRAVEL);

function Leg(): JSX.Element {
  return (
    <g transform={`rotate(${LEAN_DEG} ${CROWN.join(' ')})`}>
      <Whole x={CROWN[0] - 4} y={CROWN[1] + 70} width={8} height={AXLE - 70} />
      <Whole x={CROWN[0] - 7} y={CROWN[1] - 12} width={14} height={88} />
      {[12, 22, 32, 42, 52].map((y) => (
        <path key={y} class="thin" d={`M${CROWN[0] - 7} ${CROWN[1] + y + 3}L${CROWN[0] + 7} ${CROWN[1] + y - 3}`} />
      ))}
    </g>
  );
}

/** How far the axle goes, beside the leg. */
function TravelLine(): JSX.Element {
  const [low, high] = [at(AXLE, 46), at(AXLE - TRAVEL, 46)];
  return (
    <>
      <path class="thin" d={path(HUB, at(AXLE, 50))} />
      <path class="thin" d={path(RISEN, at(AXLE - TRAVEL, 50))} />
      <path class="outline" d={path(low, high)} />
    </>
  );
}

function Forked(): JSX.Element {
  const [foot, arm] = [[CROWN[0], CROWN[1] + MARK] as const, at(MARK)];
  return (
    <>
      <path class="outline" d="M150 30L218 44V80L160 64Z" />
      <circle class="phantom" cx={RISEN[0]} cy={RISEN[1]} r={WHEEL} fill="none" />
      <circle class="outline" cx={HUB[0]} cy={HUB[1]} r={WHEEL} fill="none" />
      <Leg />
      <Axis from={CROWN} to={[CROWN[0], CROWN[1] + MARK + 12]} />
      <path class="thin" d={`M${foot.join(' ')}A${MARK} ${MARK} 0 0 1 ${arm.join(' ')}`} />
      <circle class="whole" cx={HUB[0]} cy={HUB[1]} r={4} />
      <TravelLine />
      <Axis from={[HUB[0] - 44, HUB[1] + WHEEL]} to={[HUB[0] + 60, HUB[1] + WHEEL]} />
    </>
  );
}

export const CHASSIS_FORK: Sketch = {
  height: 192,
  dimensions: [
    { of: 'vehicleSprung', letter: [222, 98], points: [196, 66] },
    { of: 'riderSprung', letter: [222, 20], points: [190, 48] },
    { of: 'unsprung', letter: [156, 172], points: [HUB[0] + 4, HUB[1] + 3] },
    { of: 'wheelTravel', letter: [22, 92], points: at(AXLE - TRAVEL / 2, 46) },
    { of: 'motionRatio', letter: [66, 62], points: at(74, 4) },
    { of: 'mainRate', letter: [92, 30], points: at(32, 7) },
    { of: 'mainPreload', letter: [118, 14], points: at(-8) },
    { of: 'legAngle', letter: [182, 142], points: [CROWN[0] - 16, CROWN[1] + MARK - 1] },
  ],
  draw: () => <Forked />,
};
