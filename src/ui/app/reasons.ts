/** Why a solve gave no answer, as the person reads it: a reason of the solver, or a refusal of what it was asked. */
import type { WireError } from '../../../workers/protocol.ts';
import { faultInWords } from './apply.ts';
import { inReaderUnits } from './quantities.ts';

/** Kept as it came: units may change while it stands on the page. */
export type Failure = Pick<WireError, 'message' | 'fault'>;

export const errorInWords = ({ message, fault }: Failure): string =>
  fault ? `${fault.path}: ${faultInWords(fault).message}` : inReaderUnits(message);
