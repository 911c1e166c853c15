/**
 * Whatever stack is drawn, every point is either solved, and then keeps the laws of statics and contact, or says why it
 * is not. No number comes from the solver. SHIMWRIGHT_RANDOM_STACKS sets how many stacks are drawn.
 */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { solveLift } from '../../src/solver/stack/solve-lift.ts';
import type { ConvergedLift, FailedLift, LiftResult, ShimInput, StackInput, Theory } from '../../src/solver/types.ts';
import { InputError } from '../../src/units/fault.ts';
import { absurdStacks, type RandomStack, realisticStacks } from '../helpers/random-stacks.ts';
import { type SurfaceGap, surfaceGaps } from '../helpers/surfaces.ts';

const STACKS = Number(process.env.SHIMWRIGHT_RANDOM_STACKS ?? 100);
const THEORIES: readonly Theory[] = ['small-deflection', 'large-deflection'];
/** Of the greatest outer force, what the balance of a stack may miss: the residual tolerance with a margin for many nodes. */
const BALANCE = 1e-4;
/** Of the force with which shims pinch one another at rest; balance is to a share of those forces too. */
const BALANCE_OF_PINCH = 1e-5;

/** Gap under a force that counts as closed: where a foil meets a block, the proximal term leaves some nm on the way [m]. */
const CLOSED_M = 5e-8;

interface Tally {
  solved: number;
  stacks: number;
  refused: Map<string, number>;
  failed: { point: FailedLift; stack: StackInput; theory: Theory }[];
}

/** Solves the stack; one that is refused has to be refused with a code. */
function attempt({ stack, pressures_Pa }: RandomStack, theory: Theory, tally: Tally): LiftResult | undefined {
  try {
    return solveLift(stack, pressures_Pa, { theory });
  } catch (error) {
    if (!(error instanceof InputError)) throw error;
    const { code } = error.fault;
    expect(code).toMatch(/^stack\./);
    tally.refused.set(code, (tally.refused.get(code) ?? 0) + 1);
    return undefined;
  }
}

function check(drawn: RandomStack, theory: Theory, tally: Tally): void {
  const result = attempt(drawn, theory, tally);
  if (!result) return;
  tally.stacks++;
  expect(result.points.map(({ pressure_Pa }) => pressure_Pa)).toEqual(drawn.pressures_Pa);
  for (const point of result.points) {
    if (point.status === 'converged') {
      tally.solved++;
      expectFinite(point);
      expectBalance(drawn.stack, point);
      expectContact(drawn.stack, point);
    } else {
      expect(point.reason.length).toBeGreaterThan(10);
      expect(Object.keys(point).sort()).toEqual(['iterations', 'pressure_Pa', 'reason', 'residual', 'status']);
      tally.failed.push({ point, stack: drawn.stack, theory });
    }
  }
}

function expectFinite({ shape, shimEdgeLift_m, shimStress_Pa, shimClampStress_Pa, ...rest }: ConvergedLift): void {
  const lists = [shape.radius_m, ...shape.lift_m, shimEdgeLift_m, shimStress_Pa, shimClampStress_Pa];
  for (const list of lists) expect(list.every(Number.isFinite)).toBe(true);
  for (const value of Object.values(rest)) if (typeof value === 'number') expect(Number.isFinite(value)).toBe(true);
}

function expectBalance(stack: StackInput, point: ConvergedLift): void {
  const { appliedForce_N, seatForce_N, clampForce_N, plateForce_N, springForce_N } = point;
  const largest = Math.max(appliedForce_N, seatForce_N, plateForce_N, Math.abs(springForce_N));
  const left = appliedForce_N + seatForce_N - clampForce_N - plateForce_N - springForce_N;
  const allowed = BALANCE * largest + BALANCE_OF_PINCH * pinch(stack) + 1e-9;
  expect(Math.abs(left), `left ${left} N of ${largest} N`).toBeLessThanOrEqual(allowed);
}

/** Order of the force that bends the stiffest shim by the greatest ring or dish over the shortest arm from the clamp: 2π D δ / arm² [N]. */
function pinch({ shims, clampRadius_m }: StackInput): number {
  const most = (f: (shim: ShimInput) => number) => Math.max(...shims.map(f));
  const interference_m = most(({ innerRadius_m = 0, thickness_m, dish_m = 0 }) =>
    innerRadius_m > clampRadius_m ? thickness_m + Math.abs(dish_m) : Math.abs(dish_m),
  );
  const rigidity_Nm = most(({ youngsModulus_Pa, thickness_m }) => (youngsModulus_Pa * thickness_m ** 3) / 10.92);
  const arm_m = -most(({ innerRadius_m = 0, outerRadius_m }) => {
    const width_m = outerRadius_m - Math.max(innerRadius_m, clampRadius_m);
    return innerRadius_m > clampRadius_m ? -Math.min(width_m, innerRadius_m - clampRadius_m) : -width_m;
  });
  return (2 * Math.PI * rigidity_Nm * interference_m) / arm_m ** 2;
}

function expectContact(stack: StackInput, point: ConvergedLift): void {
  const thinnest = Math.min(...stack.shims.map(({ thickness_m }) => thickness_m));
  const farthest = Math.max(...point.shape.lift_m.map((lift) => Math.max(...lift.map(Math.abs))));
  const touching_m = 2e-6 * thinnest + 1e-8 * farthest;
  const gaps = surfaceGaps(stack, point);
  for (const gap of gaps) expect(gap.gap_m, JSON.stringify(gap)).toBeGreaterThanOrEqual(-touching_m);
  const least = (between: SurfaceGap['between']) =>
    Math.min(...gaps.filter((gap) => gap.between === between).map(({ gap_m }) => gap_m));
  for (const [force_N, between] of [
    [point.seatForce_N, 'seat'],
    [point.plateForce_N, 'backing plate'],
  ] as const) {
    expect(force_N, between).toBeGreaterThanOrEqual(0);
    if (force_N > 0) expect(least(between), between).toBeLessThanOrEqual(CLOSED_M);
  }
  if (stack.seat) expect(Math.abs(point.seatOpening_m - Math.max(0, least('seat')))).toBeLessThanOrEqual(touching_m);
}

const describeFailure = ({ point, theory, stack }: Tally['failed'][number]) =>
  `${theory} at ${point.pressure_Pa} Pa: ${point.status}, ${point.reason}: ${JSON.stringify(stack)}`;

describe.each([
  ['of the trade', realisticStacks, 0.005],
  ['nobody would fit', absurdStacks, 0.05],
] as const)('stacks of sizes %s', (_, stacks, mostFailures) => {
  const tally: Tally = { solved: 0, stacks: 0, refused: new Map(), failed: [] };

  it.each(THEORIES)(
    '%s: keep statics and contact at every pressure that is solved',
    (theory) => {
      fc.assert(
        fc.property(stacks, (drawn) => check(drawn, theory, tally)),
        { numRuns: STACKS },
      );
    },
    3_600_000,
  );

  it(`fail, with a reason, at no more than ${100 * mostFailures} % of the points`, () => {
    const { solved, failed } = tally;
    const some = failed.slice(0, 3).map(describeFailure).join('\n');
    const rate = failed.length / (solved + failed.length);
    expect(rate, `${failed.length} of ${solved + failed.length} points failed, such as\n${some}`).toBeLessThanOrEqual(
      mostFailures,
    );
  });

  it('are mostly taken, and those refused lack the room or the width', () => {
    expect(tally.stacks).toBeGreaterThan(1.5 * STACKS);
    expect(
      [...tally.refused.keys()].filter(
        (code) => !/^stack\.(no-room|ring\.beyond-rim|nothing-clamped|shim\.too-narrow)$/.test(code),
      ),
    ).toEqual([]);
  });
});
