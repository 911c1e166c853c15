import type { InputFault, SolverErrorCode } from './protocol.ts';

/** Every way in which a request to the solver ends without a result. */
export class SolverError extends Error {
  override readonly name = 'SolverError';
  readonly code: SolverErrorCode;
  /** Where in the input, when the code is `invalid-input`. */
  readonly fault?: InputFault;

  constructor(code: SolverErrorCode, message: string, fault?: InputFault) {
    super(message);
    this.code = code;
    if (fault) this.fault = fault;
  }
}
