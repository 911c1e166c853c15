/** The table of the lifts of single shims, with every constant that goes into them. */
import { type Bending, rigidity } from './roark.ts';
import { printed, row } from './sheet.ts';

const HEADINGS = [
  'shim',
  'D, N·m',
  'load',
  'r₀',
  'r',
  'C8',
  'C9',
  'L9 or L17',
  'M, N',
  'F2',
  'F3',
  'L3 or L11',
  'w, mm',
];

/** Radii in mm; loads of 1 N/mm and 1 MPa, so that moments are in N and lifts in mm. */
export const bendingTable = (bendings: readonly Bending[]): string =>
  [
    row(HEADINGS),
    row(HEADINGS.map((_, i) => (i === 0 || i === 2 ? '---' : '---:'))),
    ...apart(bendings).map(({ plate, load, r0, r, C8, C9, L, M, F2, F3, G, lift }) => {
      const [name, moment, mm] = load === 'line' ? ['1l', 1e3, 1e6] : ['2l', 1e6, 1e9];
      const radii = [r0, r].map((radius) => String(Number((radius * 1e3).toFixed(3))));
      const numbers = [C8, C9, L, M * moment, F2, F3, G, lift * mm].map((value) => printed(value));
      return row([plate.name, printed(rigidity(plate)), name, ...radii, ...numbers]);
    }),
  ].join('\n');

/** A lift that is wanted twice is printed once. */
const apart = (bendings: readonly Bending[]): readonly Bending[] =>
  bendings.filter((one, i) => {
    const same = (other: Bending) => (['plate', 'load', 'r0', 'r'] as const).every((key) => one[key] === other[key]);
    return bendings.findIndex(same) === i;
  });
