/** The onset of waves round the circle of a whole stack, from a person's stack file. */
import { validateStackFile } from '../../model/validate.ts';
import { z } from '../../model/zod.ts';
import { stackFromFile } from '../../solver/from-model.ts';
import { findWavinessOnset } from '../../solver/stack/waviness/find-onset.ts';
import { formatFault, InputError } from '../../units/fault.ts';
import { pascalsFromMegapascals } from '../../units/si.ts';
import { evaluated, evaluator, failed } from '../evaluator.ts';

const schema = z.strictObject({ greatestPressure_MPa: z.number().positive(), stack: z.unknown() });

/** `onsetPressure` [MPa], `onsetLift` (lift of the face shim over its thickness) and `waves`. */
export const wavinessOnset = evaluator(schema, ({ greatestPressure_MPa, stack }) => {
  const checked = validateStackFile(stack);
  if (!checked.ok) {
    const [fault] = checked.faults;
    throw new InputError({ ...fault, path: `input.stack.${fault.path}`, wanted: formatFault(fault) });
  }
  const onset = findWavinessOnset(stackFromFile(checked.document), pascalsFromMegapascals(greatestPressure_MPa));
  if (onset.status === 'stable') return failed(`no onset up to ${greatestPressure_MPa} MPa`);
  if (onset.status !== 'found') return failed(onset.reason);
  const { pressure_Pa, liftOverThickness: onsetLift, waves } = onset;
  return evaluated({ onsetPressure: pressure_Pa / 1e6, onsetLift, waves });
});
