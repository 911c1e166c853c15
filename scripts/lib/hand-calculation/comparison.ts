/** The calculation by hand beside the program: pressures, openings and forces of each stroke. */
import type { ForcePoint } from '../../../src/solver/index.ts';
import type { Direction, StrokeByHand } from './dampers.ts';
import type { HandDemo } from './demos.ts';
import type { ProgramPoints } from './program.ts';
import { inUnit, printed, row, type Sheet, type Unit } from './sheet.ts';

interface Compared {
  readonly quantity: string;
  readonly unit: Unit;
  readonly hand: number;
  readonly of: (point: ForcePoint) => number;
}

const NONE = Number.NaN;

/** Nothing where the sheet has no such step. */
function bySheet(
  quantity: string,
  unit: Unit,
  sheet: Sheet | undefined,
  symbol: string,
  of: Compared['of'],
): Compared[] {
  const step = sheet?.steps.find((one) => one.symbol === symbol);
  return step ? [{ quantity, unit, hand: step.value, of }] : [];
}

const comparedOf = ({ piston, base, force }: StrokeByHand): Compared[] => [
  ...bySheet('Δp of the piston', 'MPa', piston, 'Δp', ({ pistonDrop_Pa }) => pistonDrop_Pa),
  ...bySheet('its opening h', 'mm', piston, 'h', ({ seatOpening_m }) => seatOpening_m),
  ...bySheet('its bleed Q_b', 'mL/s', piston, 'Q_b', ({ flows }) => flows.bleed_m3_s),
  ...bySheet('Δp of the base', 'MPa', base, 'Δp', (point) => point.base?.drop_Pa ?? NONE),
  ...bySheet('its opening h', 'mm', base, 'h', (point) => point.base?.seatOpening_m ?? NONE),
  ...bySheet('its poppet', 'mL/s', base, 'Q poppet', (point) => point.base?.flows.poppet_m3_s ?? NONE),
  ...bySheet('lift of the check x', 'mm', base, 'x', (point) => point.base?.seatOpening_m ?? NONE),
  ...bySheet('**damping force**', 'N', force, 'F_damping', ({ dampingForce_N }) => dampingForce_N),
  ...bySheet('whole force', 'N', force, 'F', ({ force_N }) => force_N),
];

const HEADINGS = [
  'by hand',
  'small deflection, no jets',
  'small deflection',
  'large deflection',
  'by default (`auto`)',
];
const DIFFERENCES = ['hand to small, no jets', 'hand to small', 'hand to large'];

function cells({ unit, hand, of }: Compared, { withoutJets, small, large, byDefault }: ProgramPoints): string[] {
  const values = [hand, ...[withoutJets, small, large, byDefault].map(of)];
  const differences = values.slice(1, 4).map((value) => (value === hand ? 0 : hand / value - 1));
  return [...values.map((value) => printed(inUnit({ value, unit }))), ...differences.map(percent)];
}

/** One digit behind the point; a zero has no sign. */
export function percent(share: number): string {
  const text = (100 * Math.abs(share)).toFixed(1);
  return `${text === '0.0' ? '' : share < 0 ? '−' : '+'}${text} %`;
}

/** Every quantity of the strokes of one direction. */
export const strokesTable = ({ hand, program }: HandDemo, direction: Direction): string =>
  [
    row(['v, m/s', 'quantity', 'unit', ...HEADINGS, ...DIFFERENCES]),
    row(['---:', '---', '---', ...[...HEADINGS, ...DIFFERENCES].map(() => '---:')]),
    ...hand.strokes.flatMap((stroke, i) =>
      stroke.direction === direction
        ? comparedOf(stroke).map((one) =>
            row([String(stroke.speed), one.quantity, one.unit, ...cells(one, program[i])]),
          )
        : [],
    ),
  ].join('\n');

/** The damping force of every stroke of every demo [N]. */
export const summaryTable = (demos: readonly HandDemo[]): string =>
  [
    row(['damping force, N', ...HEADINGS, ...DIFFERENCES]),
    row(['---', ...[...HEADINGS, ...DIFFERENCES].map(() => '---:')]),
    ...demos.flatMap(({ name, hand, program }) =>
      hand.strokes.flatMap((stroke, i) => {
        const damping = comparedOf(stroke).filter(({ quantity }) => quantity === '**damping force**');
        return damping.map((one) =>
          row([`${name}, ${stroke.direction}, ${stroke.speed} m/s`, ...cells(one, program[i])]),
        );
      }),
    ),
  ].join('\n');
