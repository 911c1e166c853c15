/** Reads the print file of CalculiX (`.dat`): blocks of numbers, each with what it holds, of which set, at what time. */

export interface PrintBlock {
  readonly quantity: 'displacements' | 'total force' | 'stresses';
  readonly set: string;
  readonly time: number;
  readonly rows: readonly (readonly number[])[];
}

const HEAD = /^ *(displacements|total force|stresses) \(.*\) for set (\S+) and time +(\S+)$/;

/** @throws Error with the line that holds no numbers */
export function readPrintFile(text: string): PrintBlock[] {
  const blocks: (PrintBlock & { readonly rows: number[][] })[] = [];
  for (const line of text.split('\n')) {
    const head = HEAD.exec(line.trimEnd());
    if (head) {
      const [, quantity, set, time] = head;
      blocks.push({ quantity: quantity as PrintBlock['quantity'], set, time: toNumber(time, line), rows: [] });
    } else if (line.trim() !== '') {
      blocks.at(-1)?.rows.push(
        line
          .trim()
          .split(/\s+/)
          .map((field) => toNumber(field, line)),
      );
    }
  }
  return blocks;
}

/** Fortran leaves out the E of an exponent of three digits: 1.5-104. */
function toNumber(field: string, line: string): number {
  const value = Number(field.replace(/(\d)([+-]\d{3})$/, '$1E$2'));
  if (Number.isFinite(value)) return value;
  throw new Error(`print file: "${field}" is no number in "${line.trim()}"`);
}
