/**
 * The equation for metering orifices is no law for a damper: it holds in pipes of 50 mm and more at Reynolds numbers from 5000 up. It
 * stands here, and not in the solver, to say so with numbers.
 */
import { describe, expect, it } from 'vitest';
import { DEFAULT_COEFFICIENTS } from '../../src/solver/restriction/coefficients.ts';
import { drilledHole } from '../../src/solver/restriction/drilled-hole.ts';
import { roundHoles } from '../../src/solver/restriction/round-holes.ts';

/** Discharge coefficient by Reader-Harris & Gallagher, ISO 5167-2 (excerpt read), corner taps, pipes of at least 71.12 mm. */
function orificeMeter(beta: number, Re: number): number {
  const A = ((19000 * beta) / Re) ** 0.8;
  return (
    0.5961 +
    0.0261 * beta ** 2 -
    0.216 * beta ** 8 +
    0.000521 * ((1e6 * beta) / Re) ** 0.7 +
    (0.0188 + 0.0063 * A) * beta ** 3.5 * (1e6 / Re) ** 0.3 +
    ((0.043 + 0.08 - 0.123) * (1 - 0.11 * A) * beta ** 4) / (1 - beta ** 4)
  );
}

const REYNOLDS = [5e3, 1e4, 3e4, 1e5, 1e6, 1e7, 1e8];

/** Coefficient of a round hole of the solver over the ideal velocity at a Reynolds number on it. */
function ours(slenderness: number, Re: number): number {
  const d = 2e-3;
  const oil = { density_kg_m3: 860, dynamicViscosity_Pa_s: 0.0129 };
  const V = (Re * oil.dynamicViscosity_Pa_s) / (oil.density_kg_m3 * d);
  const hole = roundHoles({ count: 1, diameter_m: d, length_m: slenderness * d });
  const flow = drilledHole(hole, oil, DEFAULT_COEFFICIENTS).flow((oil.density_kg_m3 * V * V) / 2);
  return (flow.status === 'converged' ? flow.value : Number.NaN) / (hole.area_m2 * V);
}

describe('the equation for metering orifices', () => {
  // Source: ISO 5167-2:2003, Table A.1 (rows 0.10 and 0.50 from memory), and computed independently.
  it.each<[number, number[]]>([
    [0.1, [0.6006, 0.599, 0.5976, 0.5969, 0.5965, 0.5964, 0.5964]],
    [0.5, [0.6276, 0.6186, 0.6109, 0.6069, 0.6038, 0.6027, 0.6022]],
    [0.75, [0.6663, 0.6394, 0.6174, 0.606, 0.5965, 0.5927, 0.5909]],
  ])('gives its printed coefficients at beta %f', (beta, printed) => {
    for (const [i, C] of printed.entries()) expect(Math.abs(orificeMeter(beta, REYNOLDS[i]) - C)).toBeLessThan(6e-5);
  });

  it('gives 0.600008512 at the worked point of a public library', () => {
    // Source: documentation of the library: D 73.91 mm, d 22.2 mm, Re 115331.66, corner taps (excerpt).
    expect(Math.abs(orificeMeter(0.0222 / 0.07391, 115_331.66) - 0.600008512)).toBeLessThan(5e-9);
  });

  it('agrees with the sharp edge of the solver where it holds, and with nothing in a damper', () => {
    expect(Math.abs(orificeMeter(0.1, 1e6) / ours(0.02, 1e6) - 1)).toBeLessThan(0.03);
    // A sharp bleed at a crawl: Reynolds numbers a hundred times below its range.
    expect(orificeMeter(0.1, 30) / ours(0.02, 30)).toBeGreaterThan(1.4);
    // A piston port is long: its jet lies against its wall again.
    expect(ours(3, 1e4) / orificeMeter(0.3, 1e4)).toBeGreaterThan(1.25);
  });
});
