/** Shape of a fit. */
import { listOf, numberIn, record, textUpTo, wholeNumber } from './fields.ts';
import { FIT_COEFFICIENTS } from './fit.ts';
import { z } from './zod.ts';

const name = z.literal(FIT_COEFFICIENTS, { error: `one of ${FIT_COEFFICIENTS.join(', ')}` });
const value = numberIn({ from: -1e6, upTo: 1e6 });
const THEORIES = ['auto', 'small-deflection', 'large-deflection', 'port-periodic'] as const;

export const fitSchema = record({
  measurements: listOf(textUpTo(100), 100),
  theory: z.literal(THEORIES, { error: '"auto", "small-deflection", "large-deflection" or "port-periodic"' }),
  coefficients: listOf(
    record({ name, physical: value, value, low: value, high: value, leftOpen: numberIn({ from: 0, upTo: 1e6 }) }),
    FIT_COEFFICIENTS.length,
  ),
  untold: listOf(listOf(name, FIT_COEFFICIENTS.length), FIT_COEFFICIENTS.length),
  scatter_N: numberIn({ from: 0, upTo: 1e6 }),
  pointCount: wholeNumber(1, 1_000_000),
});
