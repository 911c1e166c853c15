/** How fast a waved shim converges with its elements, and what the harmonics of its lift and of its plane are worth. */
import { describe, expect, it } from 'vitest';
import { liftAround } from '../../src/solver/plate/periodic/circle-basis.ts';
import { equilibrate } from '../../src/solver/stack/equilibrate.ts';
import { createPeriodicSystem, type PeriodicSystem } from '../../src/solver/stack/periodic/periodic-system.ts';
import { onePortAPeriod } from '../../src/solver/stack/periodic/wave-pattern.ts';
import type { StackInput } from '../../src/solver/types.ts';

/** Case b of the continuum elements, see reference-cases/stack/fem-waves-three-ports. */
const STACK: StackInput = {
  clampRadius_m: 5e-3,
  shims: [{ outerRadius_m: 12e-3, thickness_m: 0.15e-3, youngsModulus_Pa: 206e9, poissonsRatio: 0.3 }],
  pressureZone: { innerRadius_m: 6.6e-3, outerRadius_m: 11.04e-3 },
};
const PATTERN = onePortAPeriod({ count: 3, coveredFraction: 0.75 });
const LOAD_PA = 0.48e6;
/** Of the continuum at that load [m]. */
const MEAN_M = 0.735835e-3;
const CREST_M = 1.26646e-3;

const systemOf = (harmonics: 1 | 2, elements = 16) => createPeriodicSystem(STACK, { ...PATTERN, harmonics, elements });

/** Rim of the shim at LOAD_PA, reached in four steps. */
function rim(system: PeriodicSystem): { mean: number; crest: number } {
  for (const share of [0.1, 0.3, 0.6, 1]) expect(equilibrate(system, share * LOAD_PA, 1).status).toBe('converged');
  const [{ x, nodes, layout, basis }] = system.plates;
  const lifts = Array.from({ length: basis.lifts }, (_, j) => x[(nodes - 1) * layout.perNode + j * layout.d]);
  return { mean: lifts.reduce((sum, w, j) => sum + w * basis.mean[j], 0), crest: liftAround(basis, lifts, 0) };
}

describe('a waved shim', () => {
  it('converges with its elements at order four, that of the energy of a cubic', () => {
    const [four, eight, sixteen, far] = [4, 8, 16, 64].map((elements) => rim(systemOf(1, elements)).mean);
    const errors = [four, eight, sixteen].map((mean) => Math.abs(mean / far - 1));
    expect(Math.log2(errors[0] / errors[1])).toBeGreaterThan(3.7);
    expect(Math.log2(errors[1] / errors[2])).toBeGreaterThan(3.7);
    // What eight elements, the default, leave.
    expect(errors[1]).toBeLessThan(5e-4);
  });

  it('comes nearer to the crest of the continuum with a second harmonic, and one is within two per cent', () => {
    const [one, two] = ([1, 2] as const).map((harmonics) => rim(systemOf(harmonics)));
    const off = (got: number, wanted: number) => Math.abs(got / wanted - 1);
    expect(off(one.mean, MEAN_M)).toBeLessThan(0.01);
    expect(off(two.mean, MEAN_M)).toBeLessThan(0.01);
    expect(off(one.crest, CREST_M)).toBeLessThan(0.02);
    expect(off(two.crest, CREST_M)).toBeLessThan(0.005);
    // The second harmonic hardly moves the mean, which the flow sees.
    expect(off(two.mean, one.mean)).toBeLessThan(0.01);
  });

  it('is a third too stiff without the second harmonic in its plane', () => {
    const system = systemOf(1);
    const [{ layout, basis, nodes, band, size }] = system.plates;
    const [body] = system.bodies;
    // u of 2φ and v of 2φ held at nothing, by a stiffness beyond any other.
    const held = [basis.lifts + 2, basis.lifts + basis.outs + 1].flatMap((f) =>
      Array.from({ length: nodes }, (_, n) => [0, 1].map((i) => n * layout.perNode + layout.slots[2 * f + i])).flat(),
    );
    const { assembleBand, assembleInternal } = body;
    Object.assign(body, {
      assembleInternal: () => {
        assembleInternal();
        for (const i of held) body.internal[i] = 0;
      },
      assembleBand: (push: number) => {
        assembleBand(push);
        for (const i of held) {
          for (let j = Math.max(0, i - layout.b); j < i; j++) band[i * (layout.b + 1) + layout.b - (i - j)] = 0;
          for (let j = i + 1; j <= Math.min(size - 1, i + layout.b); j++)
            band[j * (layout.b + 1) + layout.b - (j - i)] = 0;
        }
      },
    });
    const stiff = rim(system);
    expect(stiff.mean / MEAN_M).toBeLessThan(0.8);
  });
});
