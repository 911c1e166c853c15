/** A fork leg at full extension, cut along its axis, with a cartridge whose rod hangs from the cap. */
import type { JSX } from 'preact';
import { text } from '../text/en.ts';
import { Axis, Cut, Lettering, Oil, TubeWalls, Whole } from './parts.tsx';
import type { Sketch } from './sketch.ts';

const Y = 66;
/** Half of the fixed tube's inside, of the sliding tube's outside, of the cartridge's bore, of the rod. */
const FIXED = 42;
const SLIDING = 37;
const BORE = 19;
const ROD = 5;
const SEAL = 152;
const HEAD_END = 106;
const PISTON = 124;

const label = text.sketchLabels;

function Tubes({ hatch }: { readonly hatch: string }): JSX.Element {
  return (
    <>
      <rect class="gas" x={14} y={Y - FIXED} width={SEAL - 14} height={2 * FIXED} />
      <rect class="gas" x={58} y={Y - SLIDING} width={166} height={2 * SLIDING} />
      <Oil x={84} y={Y - SLIDING + 4} width={140} height={2 * SLIDING - 8} />
      <TubeWalls x={8} length={SEAL - 8} y={Y} half={FIXED} wall={5} hatch={hatch} />
      <Cut x={8} y={Y - FIXED} width={6} height={2 * FIXED} hatch={hatch} />
      <TubeWalls x={58} length={174} y={Y} half={SLIDING - 4} wall={4} hatch={hatch} />
      <Cut x={224} y={Y - SLIDING + 4} width={8} height={2 * SLIDING - 8} hatch={hatch} />
      <Whole x={SEAL - 8} y={Y - FIXED} width={8} height={FIXED - SLIDING} />
      <Whole x={SEAL - 8} y={Y + SLIDING} width={8} height={FIXED - SLIDING} />
      <path class="phantom" d={`M194 ${Y - SLIDING}V${Y + SLIDING}`} />
    </>
  );
}

function Cartridge({ hatch }: { readonly hatch: string }): JSX.Element {
  return (
    <>
      <TubeWalls x={98} length={126} y={Y} half={BORE} wall={3} hatch={hatch} />
      <Whole x={14} y={Y - ROD} width={PISTON - 14} height={2 * ROD} />
      <Cut x={98} y={Y - BORE} width={HEAD_END - 98} height={BORE - ROD} hatch={hatch} />
      <Cut x={98} y={Y + ROD} width={HEAD_END - 98} height={BORE - ROD} hatch={hatch} />
      <Cut x={PISTON} y={Y - BORE + 0.5} width={11} height={2 * BORE - 1} hatch={hatch} />
      <Cut x={208} y={Y - BORE} width={7} height={BORE - 6} hatch={hatch} />
      <Cut x={208} y={Y + 6} width={7} height={BORE - 6} hatch={hatch} />
      <Whole x={215} y={Y - 11} width={3} height={22} />
      <Whole x={204} y={Y - 3} width={20} height={6} />
      <Axis from={[3, Y]} to={[237, Y]} />
      <Lettering at={[36, Y - 20]}>{label.air}</Lettering>
      <Lettering at={[206, Y - 26]}>{label.oil}</Lettering>
    </>
  );
}

export const FORK_CARTRIDGE: Sketch = {
  height: 148,
  dimensions: [
    { of: 'bore', along: 'y', from: [188, Y - BORE], to: [188, Y + BORE], at: 188 },
    { of: 'rod', along: 'y', from: [66, Y - ROD], to: [66, Y + ROD], at: 66, letterAt: Y + 24 },
    { of: 'leg', along: 'y', from: [166, Y - SLIDING], to: [166, Y + SLIDING], at: 166, letterAt: 127 },
    { of: 'travel', along: 'x', from: [194, Y + SLIDING], to: [232, Y + SLIDING], at: 127 },
    {
      of: 'endClearance',
      along: 'x',
      from: [HEAD_END, Y + BORE - 4],
      to: [PISTON, Y + BORE - 4],
      at: 127,
      letterAt: 86,
    },
    { of: 'heatedMass', letter: [40, 132], points: [99, Y + BORE + 3] },
  ],
  draw: (hatch) => (
    <>
      <Tubes hatch={hatch} />
      <Cartridge hatch={hatch} />
    </>
  ),
};
