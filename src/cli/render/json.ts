/** A result another program reads: pretty, one line break at the end. */
export const json = (value: unknown): string => `${JSON.stringify(value, null, 2)}\n`;
