/** A cone on its seat under a coil spring, cut. */
import type { JSX } from 'preact';
import { Axis, CoilCut, Cut, CutPath } from './parts.tsx';
import type { Sketch } from './sketch.ts';

const X = 120;
const SEAT_Y = 128;
const HOLE = 20;
const SHOULDER = 40;

function Poppet({ hatch }: { readonly hatch: string }): JSX.Element {
  return (
    <>
      <Cut x={X - 70} y={SEAT_Y} width={70 - HOLE} height={24} hatch={hatch} />
      <Cut x={X + HOLE} y={SEAT_Y} width={70 - HOLE} height={24} hatch={hatch} />
      <rect class="oil" x={X - HOLE} y={SEAT_Y} width={2 * HOLE} height={24} />
      <CutPath
        d={`M${X} ${SEAT_Y + HOLE}L${X - SHOULDER} ${SEAT_Y - 20}V${SEAT_Y - 34}H${X + SHOULDER}V${SEAT_Y - 20}Z`}
        hatch={hatch}
      />
      <path class="phantom" d={`M${X - SHOULDER} ${SEAT_Y - 48}H${X + SHOULDER}`} />
      <CoilCut left={X - 26} right={X + 26} top={32} bottom={SEAT_Y - 34} turns={4} />
      <Cut x={X - 46} y={22} width={92} height={9} hatch={hatch} />
      <path class="thin" d={`M${X} ${SEAT_Y + HOLE}l-62 -62M${X} ${SEAT_Y + HOLE}l62 -62`} />
      <path class="thin" d={`M${X - 56} ${SEAT_Y - 36}A79 79 0 0 1 ${X + 56} ${SEAT_Y - 36}`} />
      <Axis from={[X, 14]} to={[X, 160]} />
    </>
  );
}

export const POPPET: Sketch = {
  height: 184,
  dimensions: [
    { of: 'poppetSeat', along: 'x', from: [X - HOLE, SEAT_Y], to: [X + HOLE, SEAT_Y], at: 170 },
    { of: 'poppetCone', letter: [48, 64], points: [X - 50, SEAT_Y - 42] },
    { of: 'poppetRate', letter: [176, 40], points: [X + 28, 52] },
    { of: 'poppetPreload', letter: [64, 34], points: [X - 27, 44] },
    {
      of: 'poppetTravel',
      along: 'y',
      from: [X + SHOULDER, SEAT_Y - 34],
      to: [X + SHOULDER, SEAT_Y - 48],
      at: 208,
      letterAt: 58,
    },
  ],
  draw: (hatch) => <Poppet hatch={hatch} />,
};
