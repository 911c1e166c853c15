import { describe, expect, it } from 'vitest';
import { matchedForces } from '../../../../src/solver/damper/matched-forces.ts';
import { withStack } from '../../../../src/solver/damper/with-stack.ts';
import {
  damperFromProject,
  forcePointsForBuild,
  SPRING_STEEL,
  sensitivityForBuild,
} from '../../../../src/solver/index.ts';
import { thicker } from '../../../../src/solver/sensitivity/changed-shims.ts';
import { stackSensitivity } from '../../../../src/solver/sensitivity/shim-sensitivity.ts';
import { slopesOf } from '../../../../src/solver/sensitivity/slopes.ts';
import type { ShimInput } from '../../../../src/solver/types.ts';
import { followStacks } from '../../../../src/solver/valve/followed-stack.ts';
import { matchedTable } from '../../../../src/solver/valve/matched-table.ts';
import { openingTable } from '../../../../src/solver/valve/opening-table.ts';
import { loadDemo } from '../../../helpers/demo-curves.ts';
import { LINEAR_STACK_INPUT } from '../../../helpers/linear-stack.ts';
import { MONOTUBE } from '../../../helpers/monotube.ts';

const SMALL = 'small-deflection' as const;
const [SHIM] = LINEAR_STACK_INPUT.shims;
const packOf = (n: number) => ({ ...LINEAR_STACK_INPUT, shims: Array.from({ length: n }, () => SHIM) });

/** d ln h / d ln t of the opening at a pressure, of the last shim of a pack. */
function logSlope(n: number, pressure_Pa: number) {
  const stack = packOf(n);
  const { lift } = followStacks({});
  const like = openingTable(lift, stack, SMALL, (p) => p.pressure_Pa >= 2e6);
  const lnOpening = (step: number) => {
    const changed = step === 0 ? stack : thicker(stack, n - 1, SHIM.thickness_m * (Math.exp(step) - 1));
    return [Math.log(matchedTable(lift, changed, like).opening(pressure_Pa))];
  };
  return slopesOf(lnOpening, 0.01)[0];
}

describe('the sensitivity of an opening to a thickness', () => {
  it('is -3 for a single shim under small deflection: its rigidity goes with t³ (Roark’s, Table 11.2)', () => {
    expect(logSlope(1, 3e5)?.value).toBeCloseTo(-3, 4);
  });

  it('is -3/n for one of n equal shims that move as one plate: each has 1/n of the rigidity', () => {
    for (const n of [2, 5]) expect(logSlope(n, 3e5)?.value).toBeCloseTo(-3 / n, 4);
  });
});

describe('the sensitivity of a force', () => {
  const project = loadDemo('larkspur-trail-rear.shimwright.json');
  const damper = damperFromProject(project, project.baselineBuild);
  const speeds_m_s = [0.1, 0.5, 1.5, -0.5];

  it('adds up: all thicknesses together act as the cube root of Young’s modulus under small deflection', () => {
    const flat = withStack(damper, 'compression', { ...damper.compression.stack, shims: mergedShims() });
    const { shims } = stackSensitivity(flat, 'compression', speeds_m_s, SMALL);
    const { stack } = flat.compression;
    const summed = speeds_m_s.map((_, i) =>
      shims.reduce((sum, { byThickness }, s) => sum + (byThickness[i]?.value ?? NaN) * stack.shims[s].thickness_m, 0),
    );
    const forces = matchedForces(flat, speeds_m_s, SMALL);
    const stiffer = (step: number) =>
      forces.of(withStack(flat, 'compression', { ...stack, shims: stack.shims.map((shim) => scaled(shim, step)) }));
    const byModulus = slopesOf(stiffer, 0.02);
    summed.forEach((sum, i) => {
      expect(sum).toBeCloseTo(3 * (byModulus[i]?.value ?? NaN), 1);
    });
    expect(summed[1]).toBeGreaterThan(20);
  });

  /** Of one size and without steps, so that no gap between shims depends on a thickness. */
  const mergedShims = (): ShimInput[] => [1, 1, 1].map(() => ({ ...damper.compression.stack.shims[0] }));
  const scaled = (shim: ShimInput, step: number): ShimInput => ({
    ...shim,
    youngsModulus_Pa: shim.youngsModulus_Pa * Math.exp(step),
  });

  it('is nothing in the direction in which the stack rests', () => {
    const { shims } = stackSensitivity(damper, 'compression', [-0.5, -1.5], 'large-deflection');
    for (const { byThickness, byDiameter } of shims) {
      for (const slope of [...byThickness, ...byDiameter]) expect(Math.abs(slope?.value ?? NaN)).toBe(0);
    }
  });

  it('agrees with whole force curves of stacks that differ by far more than their tables can be wrong', () => {
    const { shims } = stackSensitivity(damper, 'rebound', [-1], 'large-deflection');
    const changed = (by_m: number) => withStack(damper, 'rebound', thicker(damper.rebound.stack, 0, by_m));
    const curve = (by_m: number) => matchedForces(changed(by_m), [-1], 'large-deflection').of(changed(by_m))[0] ?? NaN;
    const by_m = 0.2 * damper.rebound.stack.shims[0].thickness_m;
    const slope = (curve(by_m) - curve(-by_m)) / (2 * by_m);
    expect(shims[0].byThickness[0]?.value).toBeLessThan(0.9 * slope);
    expect(shims[0].byThickness[0]?.value).toBeGreaterThan(1.1 * slope);
  });
});

describe('the absence of a shim', () => {
  const project = loadDemo('dunnock-mountain-bike-rear.shimwright.json');
  const id = project.baselineBuild;
  const options = { speeds_m_s: [0.3, 1], theory: 'large-deflection' as const };
  const { shims } = sensitivityForBuild(project, id, { place: 'compression', ...options });

  it('is the difference of two builds', () => {
    const lighter = structuredClone(project);
    const build = lighter.builds.find((each) => each.id === id);
    const [row] = build?.valves.pistonCompression.shims ?? [];
    row.count = (row.count ?? 1) - 1;
    const force = (of: typeof project) =>
      forcePointsForBuild(of, id, options).points.map((p) => (p.status === 'converged' ? p.force_N : NaN));
    const [before, after] = [force(project), force(lighter)];
    const { absence } = shims[0];
    if (absence.status !== 'solved') throw new Error('the shim can be taken out');
    absence.change_N.forEach((change, i) => {
      expect(change).toBeCloseTo(after[i] - before[i], 9);
    });
    expect(absence.change_N[0]).toBeLessThan(-10);
  });

  it('is refused with the reason where the rest is no stack', () => {
    const one = withStack(MONOTUBE, 'compression', {
      ...MONOTUBE.compression.stack,
      shims: [
        {
          outerRadius_m: 15e-3,
          thickness_m: 0.15e-3,
          youngsModulus_Pa: 206e9,
          poissonsRatio: SPRING_STEEL.poissonsRatio,
        },
      ],
    });
    const { shims: alone } = stackSensitivity(one, 'compression', [0.3], SMALL);
    expect(alone[0].absence.status).toBe('refused');
  });
});
