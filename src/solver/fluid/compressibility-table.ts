/** What the compression of oil hangs on and no size of a damper gives: value, the range it is known to, and where it comes from. */
import type { CoefficientEntry } from '../restriction/coefficients.ts';

export const COMPRESSIBILITY_TABLE = {
  bulkModulus_Pa: {
    value: 1.5e9,
    low: 1.4e9,
    high: 2e9,
    unit: 'Pa',
    meaning: 'bulk modulus of the oil without air',
    source:
      'mineral oil, 1.4 to 2.0 GPa (textbook range, from memory); it falls with temperature, so a hot damper lies near the low end',
  },
  airFraction: {
    value: 0.005,
    low: 0,
    high: 0.02,
    unit: '-',
    meaning: 'free air in the oil, share by volume at atmospheric pressure',
    source:
      'common practice: a damper that was bled with care and has a separator keeps next to none, one whose oil meets its gas works 1 or 2 % into it',
  },
  airExponent: {
    value: 1,
    low: 1,
    high: 1.4,
    unit: '-',
    meaning: 'polytropic exponent of the free air: 1 isothermal, 1.4 adiabatic',
    source:
      'own: heat crosses a bubble of 0.2 mm radius at 1 MPa within about R^2/(pi^2 a) = 2 ms (a = 2.2e-6 m2/s), short beside a stroke; textbooks take 1.4 for fast changes (Merritt 1967, from memory)',
  },
} as const satisfies Record<string, CoefficientEntry>;

export type CompressibilityName = keyof typeof COMPRESSIBILITY_TABLE;
