/** Lift at the seat per pressure of each stack: by hand, by two short cuts, and by the program's small deflection. */
import type { Project, ValvePlace } from '../../../src/model/project.ts';
import { damperFromProject, type StackInput, solveLift } from '../../../src/solver/index.ts';
import { percent } from './comparison.ts';
import type { DamperByHand, ValveByHand } from './dampers.ts';
import type { HandDemo } from './demos.ts';
import { handStack } from './document.ts';
import { rigidity } from './roark.ts';
import { inUnit, printed, row, stepValue } from './sheet.ts';

const HEADINGS = ['by hand', 'program', 'hand to program', 'face shims alone', 'all rigidities added up'];

const VALVES: Readonly<Record<ValvePlace, string>> = {
  pistonCompression: 'piston, compression',
  baseCompression: 'base valve',
  pistonRebound: 'piston, rebound',
};

export const stiffnessTable = (demos: readonly HandDemo[]): string =>
  [
    row(['κ, mm per MPa', ...HEADINGS]),
    row(['---', ...HEADINGS.map(() => '---:')]),
    ...demos.flatMap(({ name, project, hand }) =>
      hand.valves.map((valve) => row([`${name}, ${VALVES[valve.place]}`, ...cells(project, hand, valve)])),
    ),
  ].join('\n');

function cells(project: Project, hand: DamperByHand, { place, stack }: ValveByHand): string[] {
  const { face, rest } = handStack(project, place);
  const alone = stepValue(stack.sheet, 'w_q(r₁)');
  const all = [face, ...rest].reduce((sum, plate) => sum + rigidity(plate), 0);
  const program = slopeAt(stackOf(project, place), fastestPressure(hand, place));
  const [byHand, byProgram, ofFace, added] = [stack.kappa, program, alone, (alone * rigidity(face)) / all].map(
    (value) => printed(inUnit({ value, unit: 'mm per MPa' })),
  );
  return [byHand, byProgram, percent(stack.kappa / program - 1), ofFace, added];
}

/** What the fastest stroke puts across the shims [Pa]. */
function fastestPressure({ strokes }: DamperByHand, place: ValvePlace): number {
  const direction = place === 'pistonRebound' ? 'rebound' : 'compression';
  const stroke = strokes.findLast((one) => one.direction === direction);
  const sheet = place === 'baseCompression' ? stroke?.base : stroke?.piston;
  if (!sheet) throw new Error(`no stroke through ${place}`);
  return stepValue(sheet, 'P');
}

/** Under a mean pressure all over its zone, as in the table of its valve: without its ports. */
function stackOf(project: Project, place: ValvePlace): StackInput {
  const damper = damperFromProject(project, project.baselineBuild);
  const valve = { pistonCompression: damper.compression, pistonRebound: damper.rebound }[place as string];
  const at = valve ?? damper.base?.compression;
  if (!at) throw new Error(`no valve ${place}`);
  const { ports: _, ...stack } = at.stack;
  return stack;
}

/** Slope of the opening over the last tenth of the pressure. */
function slopeAt(stack: StackInput, pressure_Pa: number): number {
  const options = { theory: 'small-deflection', landPressure: 'falling' } as const;
  const [low, high] = solveLift(stack, [0.9 * pressure_Pa, pressure_Pa], options).points.map((point) => {
    if (point.status !== 'converged') throw new Error(`the stack did not solve: ${point.reason}`);
    return point.seatOpening_m;
  });
  return (high - low) / (0.1 * pressure_Pa);
}
