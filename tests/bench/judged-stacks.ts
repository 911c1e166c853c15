/** Distinct stacks as a search would judge them: drawn from common sizes by a seeded generator. */
import { type LiftPoint, type StackInput, solveLift, type Theory } from '../../src/solver/index.ts';

const SPRING_STEEL = { youngsModulus_Pa: 206e9, poissonsRatio: 0.3 };
const THICKNESSES_MM = [0.1, 0.15, 0.2, 0.25, 0.3];
const TAPERS_MM = [29, 28, 27, 26, 25, 24, 23, 22, 21, 20, 19, 18, 17, 16];
/** Eight pressures across the shims, evenly spaced in their logarithm: what a curve against an aim needs. */
const PRESSURES_PA = Array.from({ length: 8 }, (_, i) => 5e4 * 40 ** (i / 7));

/** Numbers 0…1 from a linear congruence; source of the constants: Knuth, The Art of Computer Programming, vol. 2 (memory). */
function seeded(seed: number): () => number {
  let state = seed >>> 0;
  return () => {
    state = (Math.imul(state, 1664525) + 1013904223) >>> 0;
    return state / 2 ** 32;
  };
}

/** @returns stacks of 4 to 12 shims: a face pack, perhaps a crossover, a taper; no two alike */
export function distinctStacks(count: number, seed: number): StackInput[] {
  const random = seeded(seed);
  const known = new Map<string, StackInput>();
  while (known.size < count) {
    const stack = drawStack(random);
    known.set(JSON.stringify(stack.shims), stack);
  }
  return [...known.values()];
}

function drawStack(random: () => number): StackInput {
  const pick = <Item>(items: readonly Item[]): Item => items[Math.floor(random() * items.length)];
  const shim = (diameter_mm: number, thickness_mm: number) => ({
    outerRadius_m: diameter_mm / 2e3,
    thickness_m: thickness_mm / 1e3,
    ...SPRING_STEEL,
  });
  const face = Array.from({ length: 1 + Math.floor(random() * 4) }, () => shim(30, 0.15));
  const crossover = random() < 0.5 ? [shim(pick([16, 17, 18]), pick([0.1, 0.15]))] : [];
  const taper = TAPERS_MM.filter(() => random() < 0.4).map((diameter) => shim(diameter, pick(THICKNESSES_MM)));
  return {
    clampRadius_m: 6e-3,
    shims: [...face, ...crossover, ...taper, shim(15, 0.3)],
    pressureZone: { innerRadius_m: 8.25e-3, outerRadius_m: 13.8e-3 },
    seat: { innerRadius_m: 13.8e-3, outerRadius_m: 14.2e-3, height_m: 0.05e-3 },
  };
}

/** Opening against pressure of every stack. */
export function judge(stacks: readonly StackInput[], theory: Theory): LiftPoint[][] {
  return stacks.map((stack) => [...solveLift(stack, PRESSURES_PA, { theory, landPressure: 'falling' }).points]);
}
