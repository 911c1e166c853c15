/** Steps of a calculation by hand: a symbol, how it comes about, and its value in SI, printed in the unit of the workshop. */

/** What one of each is in SI. */
const SI = {
  '': 1,
  mm: 1e-3,
  'mm²': 1e-6,
  mL: 1e-6,
  'mL/s': 1e-6,
  'm/s': 1,
  'mm²/s': 1e-6,
  mPa·s: 1e-3,
  'kg/m³': 1,
  kPa: 1e3,
  MPa: 1e6,
  N: 1,
  N·m: 1,
  'N/mm': 1e3,
  'mm per MPa': 1e-9,
  'mm per N/mm': 1e-6,
  'N/mm per MPa': 1e-3,
  'Pa·s/m³': 1,
  'Pa·s²/m⁶': 1,
} as const;

export type Unit = keyof typeof SI;

export interface Step {
  readonly symbol: string;
  readonly how: string;
  /** In SI. */
  readonly value: number;
  readonly unit: Unit;
}

export interface Sheet {
  readonly steps: Step[];
  /** Writes a step down and gives its value back. */
  readonly put: (symbol: string, how: string, value: number, unit: Unit) => number;
}

export function newSheet(): Sheet {
  const steps: Step[] = [];
  const put = (symbol: string, how: string, value: number, unit: Unit): number => {
    steps.push({ symbol, how, value, unit });
    return value;
  };
  return { steps, put };
}

export const inUnit = ({ value, unit }: Pick<Step, 'value' | 'unit'>): number => value / SI[unit];

export function stepValue({ steps }: Pick<Sheet, 'steps'>, symbol: string): number {
  const step = steps.find((one) => one.symbol === symbol);
  if (!step) throw new Error(`no step ${symbol}`);
  return step.value;
}

/** Four digits; powers of ten as people write them. */
export function printed(value: number, digits = 4): string {
  if (value === 0) return '0';
  const size = Math.abs(value);
  if (size >= 1e6 || size < 1e-4) {
    const [mantissa, power] = value.toExponential(digits - 1).split('e');
    return `${minus(mantissa)}·10${superscript(Number(power))}`;
  }
  const rounded = Number(value.toPrecision(digits));
  const decimals = Math.max(0, digits - 1 - Math.floor(Math.log10(Math.abs(rounded))));
  return minus(rounded.toFixed(decimals));
}

const minus = (text: string): string => text.replace('-', '−');
const superscript = (power: number): string =>
  String(power).replace(/[-\d]/g, (sign) => (sign === '-' ? '⁻' : '⁰¹²³⁴⁵⁶⁷⁸⁹'[Number(sign)]));

export const row = (cells: readonly string[]): string => `| ${cells.join(' | ')} |`;

/** One table of several sheets with the same steps, a column each; a step that one does not need is a dash there. */
export function stepTable(headings: readonly string[], sheets: readonly Pick<Sheet, 'steps'>[]): string {
  const most = sheets.reduce((a, b) => (b.steps.length > a.steps.length ? b : a));
  const known = new Set(most.steps.map(({ symbol }) => symbol));
  for (const { symbol } of sheets.flatMap(({ steps }) => steps))
    if (!known.has(symbol)) throw new Error(`the step ${symbol} is not in the longest column`);
  const cell = (symbol: string, { steps }: Pick<Sheet, 'steps'>) => {
    const step = steps.find((one) => one.symbol === symbol);
    return step ? printed(inUnit(step)) : '–';
  };
  return [
    row(['symbol', 'from', 'unit', ...headings]),
    row(['---', '---', '---', ...headings.map(() => '---:')]),
    ...most.steps.map(({ symbol, how, unit }) =>
      row([symbol, how, unit, ...sheets.map((sheet) => cell(symbol, sheet))]),
    ),
  ].join('\n');
}
