/** Lift at the seat per pressure of each stack: by hand, by two short cuts, and by the program's small deflection. */
import type { Project, ValvePlace } from '../../../src/model/project.ts';
import { damperFromProject, type StackInput, solveLift } from '../../../src/solver/index.ts';
import { handStack } from './document.ts';
import { rigidity } from './roark.ts';
import { inUnit, printed, row } from './sheet.ts';
import { stackByHand } from './stack.ts';

export interface StackToCompare {
  readonly name: string;
  readonly project: Project;
  readonly place: ValvePlace;
  /** Across the shims, well above where they open [Pa]. */
  readonly pressure_Pa: number;
}

const HEADINGS = ['by hand', 'program', 'hand to program', 'face shims alone', 'all rigidities added up'];

export const stiffnessTable = (stacks: readonly StackToCompare[]): string =>
  [
    row(['κ, mm per MPa', ...HEADINGS]),
    row(['---', ...HEADINGS.map(() => '---:')]),
    ...stacks.map(({ name, project, place, pressure_Pa }) => {
      const hand = handStack(project, place);
      const { kappa, sheet } = stackByHand(hand);
      const alone = sheet.steps.find(({ symbol }) => symbol === 'w_q(r₁)')?.value ?? Number.NaN;
      const all = [hand.face, ...hand.rest].reduce((sum, plate) => sum + rigidity(plate), 0);
      const program = slopeAt(stackOf(project, place), pressure_Pa);
      const percent = 100 * (kappa / program - 1);
      const [byHand, byProgram, face, added] = [kappa, program, alone, (alone * rigidity(hand.face)) / all].map(
        (value) => printed(inUnit({ value, unit: 'mm per MPa' })),
      );
      return row([name, byHand, byProgram, `${percent < 0 ? '−' : '+'}${Math.abs(percent).toFixed(1)} %`, face, added]);
    }),
  ].join('\n');

function stackOf(project: Project, place: ValvePlace): StackInput {
  const damper = damperFromProject(project, project.baselineBuild);
  const valve = { pistonCompression: damper.compression, pistonRebound: damper.rebound }[place as string];
  const at = valve ?? damper.base?.compression;
  if (!at) throw new Error(`no valve ${place}`);
  return at.stack;
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
