/** The calculation by hand beside the program: pressures, openings and forces of each stroke. */
import type { Project } from '../../../src/model/project.ts';
import type { ForcePoint } from '../../../src/solver/index.ts';
import type { CartridgeByHand, MonotubeByHand } from './dampers.ts';
import { type ProgramPoints, programAt } from './program.ts';
import { inUnit, printed, row, type Sheet, stepValue, type Unit } from './sheet.ts';

interface Compared {
  readonly quantity: string;
  readonly unit: Unit;
  readonly hand: number;
  readonly of: (point: ForcePoint) => number;
}

export interface Stroke {
  readonly name: string;
  readonly compared: readonly Compared[];
  readonly program: ProgramPoints;
}

const bySheet = (quantity: string, unit: Unit, sheet: Sheet, symbol: string, of: Compared['of']): Compared => ({
  quantity,
  unit,
  hand: stepValue(sheet, symbol),
  of,
});

const piston = (sheet: Sheet): Compared[] => [
  bySheet('Δp of the piston', 'MPa', sheet, 'Δp', ({ pistonDrop_Pa }) => pistonDrop_Pa),
  bySheet('its opening h', 'mm', sheet, 'h', ({ seatOpening_m }) => seatOpening_m),
  bySheet('its bleed Q_b', 'mL/s', sheet, 'Q_b', ({ flows }) => flows.bleed_m3_s),
];

const atBase = (sheet: Sheet, symbol: string): Compared[] => [
  bySheet('Δp of the base', 'MPa', sheet, 'Δp', ({ base }) => base?.drop_Pa ?? Number.NaN),
  bySheet('its opening', 'mm', sheet, symbol, ({ base }) => base?.seatOpening_m ?? Number.NaN),
];

const force = (sheet: Sheet): Compared[] => [
  bySheet('**damping force**', 'N', sheet, 'F_damping', ({ dampingForce_N }) => dampingForce_N),
  bySheet('whole force', 'N', sheet, 'F', ({ force_N }) => force_N),
];

export const monotubeStrokes = (project: Project, { speeds }: MonotubeByHand): Stroke[] =>
  speeds.map(({ speed, sheet }) => ({
    name: `monotube, compression, ${speed} m/s`,
    compared: [...piston(sheet), ...force(sheet)],
    program: programAt(project, speed),
  }));

export const cartridgeStrokes = (project: Project, speed: number, hand: CartridgeByHand): Stroke[] => [
  {
    name: `cartridge, compression, ${speed} m/s`,
    compared: [
      ...piston(hand.compression.piston),
      ...atBase(hand.compression.base, 'h'),
      ...force(hand.compression.force),
    ],
    program: programAt(project, speed),
  },
  {
    name: `cartridge, rebound, ${speed} m/s`,
    compared: [
      ...piston(hand.reboundStroke.piston),
      ...atBase(hand.reboundStroke.check, 'x'),
      ...force(hand.reboundStroke.force),
    ],
    program: programAt(project, -speed),
  },
];

const HEADINGS = ['by hand', 'small deflection, no jets', 'small deflection', 'large deflection'];
const DIFFERENCES = ['hand to small, no jets', 'hand to small', 'hand to large'];

function cells({ unit, hand, of }: Compared, { withoutJets, small, large }: ProgramPoints): string[] {
  const values = [hand, ...[withoutJets, small, large].map(of)];
  const differences = values.slice(1).map((value) => (value === hand ? 0 : hand / value - 1));
  return [...values.map((value) => printed(inUnit({ value, unit }))), ...differences.map(percent)];
}

/** One digit behind the point; a zero has no sign. */
function percent(share: number): string {
  const text = (100 * Math.abs(share)).toFixed(1);
  return `${text === '0.0' ? '' : share < 0 ? '−' : '+'}${text} %`;
}

/** Every quantity of one stroke. */
export const strokeTable = ({ compared, program }: Stroke): string =>
  [
    row(['quantity', 'unit', ...HEADINGS, ...DIFFERENCES]),
    row(['---', '---', ...[...HEADINGS, ...DIFFERENCES].map(() => '---:')]),
    ...compared.map((one) => row([one.quantity, one.unit, ...cells(one, program)])),
  ].join('\n');

/** The damping force of every stroke [N]. */
export const summaryTable = (strokes: readonly Stroke[]): string =>
  [
    row(['damping force, N', ...HEADINGS, ...DIFFERENCES]),
    row(['---', ...[...HEADINGS, ...DIFFERENCES].map(() => '---:')]),
    ...strokes.map(({ name, compared, program }) => {
      const damping = compared.filter(({ quantity }) => quantity === '**damping force**');
      return row([name, ...damping.flatMap((one) => cells(one, program))]);
    }),
  ].join('\n');
