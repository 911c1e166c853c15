/** Shape of what is written down about putting a build together. */
import { FIRST_STACKS } from './assembly.ts';
import { numberIn, record, textUpTo } from './fields.ts';
import { z } from './zod.ts';

/** Nothing in a damper is tightened more [N·m]. */
const torque_N_m = numberIn({ above: 0, upTo: 500 });
const line = textUpTo(200);

export const assemblySchema = record({
  firstStack: z.literal(FIRST_STACKS, { error: '"pistonCompression" or "pistonRebound"' }).optional(),
  pistonTorque_N_m: torque_N_m.optional(),
  baseTorque_N_m: torque_N_m.optional(),
  torqueSource: line.optional(),
  threadLocker: line.optional(),
  notes: textUpTo(2000).optional(),
});
