/** Contact forces against the only rule that defines them: gap >= 0, force >= 0, gap · force = 0, tried over all sets. */
import fc from 'fast-check';
import { Matrix, solve } from 'ml-matrix';
import { describe, expect, it } from 'vitest';
import { createContactProblem, solveContact } from '../../../../src/solver/contact/complementarity.ts';
import { type Compliance, createCompliance } from '../../../../src/solver/contact/compliance.ts';
import { type ContactPairs, RIGID } from '../../../../src/solver/contact/contact-pairs.ts';
import { unitPlate } from '../plate/plates.ts';

const GAP_TOLERANCE = 1e-12;

type Side = readonly [plate: number, node: number];
const RIGID_SIDE: Side = [RIGID, RIGID];

function pairsOf(sides: readonly { below: Side; above: Side }[]): ContactPairs {
  const pick = (side: 'below' | 'above', i: 0 | 1) => Int32Array.from(sides, (pair) => pair[side][i]);
  return {
    size: sides.length,
    node: Int32Array.from(sides.keys()),
    below: pick('below', 0),
    belowNode: pick('below', 1),
    above: pick('above', 0),
    aboveNode: pick('above', 1),
    gap0_m: new Float64Array(sides.length),
  };
}

/** A body whose lift at i for a force at j is given: column j is row j here. */
function bodyWith(columns: readonly (readonly number[])[]): Compliance {
  const n = columns.length;
  const compliance = createCompliance(unitPlate('small-deflection', {}, { breaks: [1, 2], elements: n - 1 || 1 }));
  compliance.columns.fill(0);
  compliance.known.fill(1);
  for (const [j, column] of columns.entries()) {
    for (const [i, c] of column.entries()) compliance.columns[j * compliance.plate.nodes + i] = c;
  }
  return compliance;
}

/** All nodes of one body over a rigid ground: gap = q + M λ. */
function overGround(M: readonly (readonly number[])[], q: readonly number[]) {
  const body = bodyWith(M);
  const problem = createContactProblem(pairsOf(M.map((_, i) => ({ below: RIGID_SIDE, above: [0, i] }))), [body]);
  problem.freeGap.set(q);
  return problem;
}

/** The answer by trying every set of closed pairs. */
function bruteForce(M: readonly (readonly number[])[], q: readonly number[]): number[] {
  const n = q.length;
  for (let set = 0; set < 2 ** n; set++) {
    const closed = q.map((_, i) => i).filter((i) => (set >> i) & 1);
    const force: number[] = new Array(n).fill(0);
    if (closed.length > 0) {
      const part = new Matrix(closed.map((i) => closed.map((j) => M[i][j])));
      const answer = solve(part, Matrix.columnVector(closed.map((i) => -q[i]))).to1DArray();
      for (const [k, i] of closed.entries()) force[i] = answer[k];
    }
    const gap = q.map((g, i) => g + force.reduce((sum, f, j) => sum + M[i][j] * f, 0));
    if (force.every((f) => f >= -1e-9) && gap.every((g) => g >= -1e-9)) return force;
  }
  throw new Error('no set holds');
}

const cents = (min: number, max: number) => fc.integer({ min: 100 * min, max: 100 * max }).map((v) => v / 100);
const problems = fc.integer({ min: 1, max: 7 }).chain((n) =>
  fc.record({
    G: fc.array(fc.array(cents(-1, 1), { minLength: n, maxLength: n }), { minLength: n, maxLength: n }),
    q: fc.array(cents(-2, 2), { minLength: n, maxLength: n }),
    start: fc.array(fc.constantFrom(0, 1), { minLength: n, maxLength: n }),
  }),
);
const gram = (G: readonly (readonly number[])[]) =>
  G.map((row, i) => G.map((other, j) => row.reduce((sum, v, k) => sum + v * other[k], i === j ? 0.1 : 0)));

describe('contact forces', () => {
  it('of one body on one stop: none where it clears, and what closes the gap where it does not', () => {
    for (const [q, wanted] of [
      [0.5, 0],
      [-0.5, 0.25],
    ]) {
      const problem = overGround([[2]], [q]);
      expect(solveContact(problem, GAP_TOLERANCE)).toBe('resolved');
      expect(problem.force[0]).toBeCloseTo(wanted, 8);
      expect(problem.gap[0]).toBeCloseTo(Math.max(q, 0), 12);
    }
  });

  it('are those that trying all sets finds, from any set to start with', () => {
    let mixed = 0;
    fc.assert(
      fc.property(problems, ({ G, q, start }) => {
        const M = gram(G);
        const wanted = bruteForce(M, q);
        const problem = overGround(M, q);
        problem.closed.set(start);
        expect(solveContact(problem, GAP_TOLERANCE)).toBe('resolved');
        for (const [i, force] of wanted.entries()) expect(problem.force[i]).toBeCloseTo(force, 5);
        for (let i = 0; i < q.length; i++) {
          expect(problem.force[i]).toBeGreaterThanOrEqual(0);
          expect(problem.gap[i]).toBeGreaterThanOrEqual(-GAP_TOLERANCE);
          expect(problem.gap[i] * problem.force[i]).toBe(0);
        }
        if (wanted.some((f) => f > 0) && wanted.some((f) => f === 0)) mixed++;
      }),
      { numRuns: 300 },
    );
    expect(mixed).toBeGreaterThan(60);
  });

  it('hold the least energy λᵀMλ/2 + qᵀλ that no other permitted forces go below', () => {
    fc.assert(
      fc.property(problems, fc.array(cents(0, 2), { minLength: 7, maxLength: 7 }), ({ G, q }, other) => {
        const M = gram(G);
        const energy = (f: ArrayLike<number>) =>
          q.reduce((sum, g, i) => sum + f[i] * (g + q.reduce((row, _, j) => row + M[i][j] * f[j], 0) / 2), 0);
        const problem = overGround(M, q);
        solveContact(problem, GAP_TOLERANCE);
        expect(energy(problem.force)).toBeLessThanOrEqual(energy(other) + 1e-6);
      }),
    );
  });

  it('press two bodies apart: the gap between opens by the lift of both', () => {
    // Body 0 below (compliance 1), body 1 above (compliance 3), interference 0.4: force 0.4 / (1 + 3).
    const bodies = [
      bodyWith([
        [1, 0],
        [0, 1],
      ]),
      bodyWith([
        [3, 0],
        [0, 3],
      ]),
    ];
    const problem = createContactProblem(pairsOf([{ below: [0, 0], above: [1, 1] }]), bodies);
    problem.freeGap[0] = -0.4;
    expect(solveContact(problem, GAP_TOLERANCE)).toBe('resolved');
    expect(problem.force[0]).toBeCloseTo(0.1, 8);
    expect(problem.lifts[1][1]).toBeCloseTo(0.3, 8);
    expect(problem.lifts[0][0]).toBeCloseTo(-0.1, 8);
  });

  it('pass through a pile: stop under body 0 under body 1 under a stop', () => {
    // Unit compliances, the pile too tall by 0.3 at each contact. By hand: [[1,-1,0],[-1,2,-1],[0,-1,1]] + proximal.
    const bodies = [
      bodyWith([
        [1, 0],
        [0, 1],
      ]),
      bodyWith([
        [1, 0],
        [0, 1],
      ]),
    ];
    const sides = [
      { below: RIGID_SIDE, above: [0, 0] },
      { below: [0, 0], above: [1, 0] },
      { below: [1, 0], above: RIGID_SIDE },
    ] as const;
    const problem = createContactProblem(pairsOf(sides), bodies);
    problem.freeGap.set([-0.3, -0.3, 0.8]);
    expect(solveContact(problem, GAP_TOLERANCE)).toBe('resolved');
    // λ₂ = 0; λ₀ - λ₁ = 0.3, 2λ₁ - λ₀ = 0.3: λ₀ = 0.9, λ₁ = 0.6; the last gap is 0.8 - 0.6.
    [0.9, 0.6, 0].forEach((force, c) => {
      expect(problem.force[c]).toBeCloseTo(force, 7);
    });
    expect(problem.gap[2]).toBeCloseTo(0.2, 7);
  });

  it('share a load between two contacts that are one: the proximal term keeps the matrix definite', () => {
    const problem = overGround(
      [
        [1, 1],
        [1, 1],
      ],
      [-1, -1],
    );
    problem.closed.fill(1);
    expect(solveContact(problem, GAP_TOLERANCE)).toBe('resolved');
    expect(problem.force[0] + problem.force[1]).toBeCloseTo(1, 7);
  });

  it('forget the proximal term where forces no longer change', () => {
    const problem = overGround(
      [
        [2, 1],
        [1, 3],
      ],
      [-1, -2],
    );
    for (let call = 0; call < 4; call++) solveContact(problem, GAP_TOLERANCE);
    // 2a + b = 1, a + 3b = 2: a = 0.2, b = 0.6.
    expect(problem.force[0]).toBeCloseTo(0.2, 13);
    expect(problem.force[1]).toBeCloseTo(0.6, 13);
  });
});

describe('statuses', () => {
  it('singular: a closed pair that gives no way at all', () => {
    const problem = overGround([[0]], [-1]);
    expect(solveContact(problem, GAP_TOLERANCE)).toBe('singular');
  });

  it('resolved where the closed pairs hold the negative modes of the tangents, and only there', () => {
    const held = () => {
      const problem = overGround([[-1]], [0.5]);
      problem.closed[0] = 1;
      return problem;
    };
    const problem = held();
    expect(solveContact(problem, GAP_TOLERANCE, 1)).toBe('resolved');
    // g = q + M λ = 0.5 - λ.
    expect(problem.force[0]).toBeCloseTo(0.5, 8);
    expect(solveContact(held(), GAP_TOLERANCE)).toBe('singular');
    expect(solveContact(held(), GAP_TOLERANCE, 2)).toBe('singular');
  });

  it('contact-not-resolved: compliances that are no longer mutual, so that no set holds', () => {
    // A force at 1 draws the gap at 0 down by 3, while one at 0 leaves 1 alone: sets {1} and {0, 1} send to each other.
    const problem = overGround(
      [
        [1, 0],
        [-3, 1],
      ],
      [1, -1],
    );
    expect(solveContact(problem, GAP_TOLERANCE)).toBe('contact-not-resolved');
  });
});
