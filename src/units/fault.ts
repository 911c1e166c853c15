/** What a refusal says: every layer throws the same InputError, so that a page can point at the input box. */

export interface InputFault {
  /** Stable code, for example `stack.shim.below-clamp`. */
  readonly code: string;
  /** Where in the input, for example `shims[2].outerDiameter_mm`. */
  readonly path: string;
  readonly got: string;
  readonly wanted: string;
  readonly unit?: string;
}

export class InputError extends Error {
  override readonly name = 'InputError';
  readonly fault: InputFault;

  constructor(fault: InputFault) {
    super(formatFault(fault));
    this.fault = fault;
  }
}

/** `shims[2].outerDiameter_mm: got 4 mm, wanted more than the clamp diameter 12 mm [stack.shim.below-clamp]` */
export function formatFault({ code, path, got, wanted, unit }: InputFault): string {
  const u = unit ? ` ${unit}` : '';
  return `${path}: got ${got}${u}, wanted ${wanted}${u} [${code}]`;
}
