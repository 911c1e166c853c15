import { readFileSync } from 'node:fs';
import { beforeEach, describe, expect, it, vi } from 'vitest';
import { decodeProject } from '../../../../src/model/codec.ts';
import { forceCurve } from '../../../../src/solver/damper/force-curve.ts';
import type { DamperInput } from '../../../../src/solver/damper/types.ts';
import { damperFromProject } from '../../../../src/solver/from-model.ts';
import { createLoadedStack } from '../../../../src/solver/stack/loaded-stack.ts';
import { keepStacks } from '../../../../src/solver/valve/kept-stacks.ts';

vi.mock('../../../../src/solver/stack/loaded-stack.ts', { spy: true });

const checked = decodeProject(readFileSync('src/demo/larkspur-trail-rear.shimwright.json', 'utf8'));
if (!checked.ok) throw new Error('the demo is not a project');
const damper = damperFromProject(checked.document, checked.document.baselineBuild);

const SPEEDS = [-1, -0.1, 0.05, 0.3, 1.2];
const theory = 'large-deflection' as const;
const fresh = (of: DamperInput, speeds = SPEEDS) => forceCurve(of, speeds, { theory });

/** How many stacks a run sets up for solving. */
function stacksSolved(run: () => void): number {
  vi.mocked(createLoadedStack).mockClear();
  run();
  return vi.mocked(createLoadedStack).mock.calls.length;
}

const warmer = (of: DamperInput): DamperInput => ({
  ...of,
  fluid: { ...of.fluid, dynamicViscosity_Pa_s: of.fluid.dynamicViscosity_Pa_s * 0.7 },
});

function thickerFace(of: DamperInput): DamperInput {
  const [face, ...others] = of.compression.stack.shims;
  const shims = [{ ...face, thickness_m: face.thickness_m * 1.1 }, ...others];
  return { ...of, compression: { ...of.compression, stack: { ...of.compression.stack, shims } } };
}

/** As after a reading of the document: equal, and not the same objects. */
const again = (of: DamperInput): DamperInput => structuredClone(of);

let follow = keepStacks(8);
beforeEach(() => {
  follow = keepStacks(8);
});

describe('stacks kept from run to run', () => {
  const kept = (of: DamperInput, speeds = SPEEDS) => forceCurve(of, speeds, { theory, follow });

  it('solve no stack twice, whatever else of the damper changes, and give the curve of a fresh run to the digit', () => {
    expect(stacksSolved(() => kept(damper))).toBe(2);
    expect(stacksSolved(() => kept(again(damper)))).toBe(0);
    expect(stacksSolved(() => kept(warmer(damper)))).toBe(0);
    expect(kept(damper)).toStrictEqual(fresh(damper));
    expect(kept(warmer(damper))).toStrictEqual(fresh(warmer(damper)));
  });

  it('solve the one stack that was changed', () => {
    kept(damper);
    expect(stacksSolved(() => kept(thickerFace(again(damper))))).toBe(1);
    expect(kept(thickerFace(damper))).toStrictEqual(fresh(thickerFace(damper)));
  });

  it('go to the digit with other pressures: at a higher speed, and back at the lower one', () => {
    const fast = [...SPEEDS, 12];
    kept(damper);
    expect(kept(damper, fast)).toStrictEqual(fresh(damper, fast));
    expect(kept(damper, [0.02])).toStrictEqual(fresh(damper, [0.02]));
    expect(stacksSolved(() => kept(damper))).toBe(0);
    expect(stacksSolved(() => kept(damper, fast))).toBe(0);
  });

  it('solve a stack again by another theory', () => {
    kept(damper);
    const small = { theory: 'small-deflection', follow } as const;
    expect(forceCurve(damper, SPEEDS, small)).toStrictEqual(forceCurve(damper, SPEEDS, { theory: 'small-deflection' }));
  });

  it('follow the waves where the round curve ended, and the round curve again, each to the digit', () => {
    const fast = [-2, ...SPEEDS];
    const auto = { theory: 'auto', follow } as const;
    const wanted = forceCurve(damper, fast, { theory: 'auto' });
    expect(wanted.stacks.rebound.theory).toBe('port-periodic');
    const round = kept(damper, fast);
    expect(round.stacks.rebound.leavesRound).toBe('waves');
    expect(forceCurve(damper, fast, auto)).toStrictEqual(wanted);
    expect(stacksSolved(() => forceCurve(again(damper), fast, auto))).toBe(0);
    expect(forceCurve(damper, fast, auto)).toStrictEqual(wanted);
    expect(kept(damper, fast)).toStrictEqual(round);
  });

  it('say of each run by itself whether the round theory serves', () => {
    // The same table, used up to below the onset, and with an oil so heavy that it presses harder up to beyond it.
    const speeds = [-1.3];
    const heavy = (of: DamperInput): DamperInput => ({ ...of, fluid: { ...of.fluid, density_kg_m3: 1000 } });
    const [before, after] = [fresh(damper, speeds), fresh(heavy(damper), speeds)].map(({ stacks }) => stacks.rebound);
    expect(after.pressure_Pa).toEqual(before.pressure_Pa);
    expect([before.leavesRound, after.leavesRound]).toEqual([undefined, 'waves']);
    for (const of of [damper, heavy(damper), damper]) expect(kept(of, speeds)).toStrictEqual(fresh(of, speeds));
  });

  it('forget the stack that was longest unused', () => {
    follow = keepStacks(2);
    kept(damper);
    kept(thickerFace(damper));
    expect(stacksSolved(() => kept(damper))).toBeGreaterThan(0);
  });

  it('go on after a run that was stopped', () => {
    let asked = 0;
    const shouldStop = () => ++asked > 6;
    expect(() => forceCurve(damper, SPEEDS, { theory, follow }, { shouldStop })).toThrow();
    expect(kept(damper)).toStrictEqual(fresh(damper));
  });
});
