/** `shimwright lift`: lift and stress of one stack, of a stack file or of a project, at a list of pressures. */
import {
  type ConvergedLift,
  type LiftPoint,
  type LiftResult,
  type StackInput,
  solveLift,
  type TheoryChoice,
  type Wave,
  type Waviness,
} from '../../solver/index.ts';
import { fromSI } from '../../units/convert.ts';
import { pascalsFromMegapascals } from '../../units/si.ts';
import { EXIT, type Form, type Outcome, type Request } from '../command.ts';
import { stackToLift } from '../lift-stack.ts';
import { numberList } from '../number-list.ts';
import { csv } from '../render/csv.ts';
import { json } from '../render/json.ts';
import type { Column } from '../render/rows.ts';
import { type Cell, type Heading, textTable } from '../render/text-table.ts';
import { fallbackInWords, theoryOf } from '../theories.ts';
import { PEAK_KEYS, peakTable, type ShimPeak, setWarnings, shimPeaks, strengthRemarks } from './shim-peak.ts';

export const PRESSURES = 'pressures-MPa';
export const STRESS = 'stress';

const mm = (length_m: number): number => fromSI(length_m, 'length', 'mm');
const MPa = (stress_Pa: number): number => fromSI(stress_Pa, 'stress', 'MPa');

/** One point as the JSON has it: where the solve failed, every number but the pressure is null. */
interface Row {
  readonly pressure_MPa: number;
  readonly status: string;
  readonly faceEdgeLift_mm: number | null;
  readonly zoneEdgeLift_mm: number | null;
  readonly seatOpening_mm: number | null;
  readonly shimEdgeLift_mm: readonly number[] | null;
  readonly shimStress_MPa: readonly number[] | null;
  readonly shimClampStress_MPa: readonly number[] | null;
  /** Rise of the hub; only for a stack with a float. */
  readonly hubRise_mm?: number | null;
  /** Only where the solver tested the state for it. */
  readonly waviness?: Waviness;
  /** Of the port-periodic theory: rim of the face shim round the circle; 0 waves where it is round. */
  readonly meanEdgeLift_mm?: number | null;
  readonly minEdgeLift_mm?: number | null;
  readonly maxEdgeLift_mm?: number | null;
  readonly waves?: number | null;
  /** Only when asked for; null where the solve failed. */
  readonly shimPeak?: readonly ShimPeak[] | null;
}

function numbersOf(point: ConvergedLift, floats: boolean): Omit<Row, 'pressure_MPa' | 'status'> {
  return {
    faceEdgeLift_mm: mm(point.faceEdgeLift_m),
    zoneEdgeLift_mm: mm(point.zoneEdgeLift_m),
    seatOpening_mm: mm(point.seatOpening_m),
    shimEdgeLift_mm: point.shimEdgeLift_m.map(mm),
    shimStress_MPa: point.shimStress_Pa.map(MPa),
    shimClampStress_MPa: point.shimClampStress_Pa.map(MPa),
    ...(floats && { hubRise_mm: mm(point.hubRise_m) }),
    ...(point.waviness && { waviness: point.waviness }),
    ...(point.wave && waveNumbers(point.faceEdgeLift_m, point.wave)),
  };
}

const waveNumbers = (mean_m: number, { minEdgeLift_m, maxEdgeLift_m, waves }: Wave) => ({
  meanEdgeLift_mm: mm(mean_m),
  minEdgeLift_mm: mm(minEdgeLift_m),
  maxEdgeLift_mm: mm(maxEdgeLift_m),
  waves,
});

const NO_WAVE = { meanEdgeLift_mm: null, minEdgeLift_mm: null, maxEdgeLift_mm: null, waves: null };

const NO_NUMBERS: ReturnType<typeof numbersOf> = {
  faceEdgeLift_mm: null,
  zoneEdgeLift_mm: null,
  seatOpening_mm: null,
  shimEdgeLift_mm: null,
  shimStress_MPa: null,
  shimClampStress_MPa: null,
};

/**
 * @param pressure_MPa as it was asked for, so that the echo is exact
 * @param has which numbers the result has beside the usual ones: the rise of a float, the waves of the rim
 */
export function liftRow(point: LiftPoint, pressure_MPa: number, has: { floats?: boolean; waves?: boolean } = {}): Row {
  const head = { pressure_MPa, status: point.status };
  const floats = has.floats === true;
  if (point.status === 'converged') return { ...head, ...numbersOf(point, floats) };
  return { ...head, ...NO_NUMBERS, ...(floats && { hubRise_mm: null }), ...(has.waves && NO_WAVE) };
}

const HUB_RISE: Column<Row> = {
  key: 'hubRise_mm',
  heading: ['hub rise', 'mm'],
  read: ({ hubRise_mm }) => hubRise_mm ?? null,
};
const WAVINESS: readonly Column<Row>[] = [
  { key: 'waviness.margin', heading: 'wave margin', read: ({ waviness }) => waviness?.margin ?? null },
  { key: 'waviness.waves', heading: 'waves', read: ({ waviness }) => waviness?.waves ?? null },
];
const WAVE: readonly Column<Row>[] = [
  { key: 'meanEdgeLift_mm', heading: ['mean edge', 'mm'], read: (row) => row.meanEdgeLift_mm ?? null },
  { key: 'minEdgeLift_mm', heading: ['least edge', 'mm'], read: (row) => row.minEdgeLift_mm ?? null },
  { key: 'maxEdgeLift_mm', heading: ['greatest edge', 'mm'], read: (row) => row.maxEdgeLift_mm ?? null },
  { key: 'waves', heading: 'waves', read: ({ waves }) => waves ?? null },
];

/** Columns that only some results have: the rise of a float, the waviness where it was tested, the waves where they were followed. */
const moreColumns = (rows: readonly Row[]): Column<Row>[] => [
  ...(rows.some(({ hubRise_mm }) => hubRise_mm !== undefined) ? [HUB_RISE] : []),
  ...(rows.some(({ waviness }) => waviness) ? WAVINESS : []),
  ...(rows.some(({ waves }) => waves !== undefined) ? WAVE : []),
];

function asText(rows: readonly Row[], width: number): string {
  const header: Heading[] = [
    ['pressure', 'MPa'],
    'status',
    ['face edge', 'mm'],
    ['zone edge', 'mm'],
    ['seat opening', 'mm'],
    ['stress', 'MPa'],
    'in shim',
  ];
  const more = moreColumns(rows);
  const cells = rows.map((row): Cell[] => {
    const stress = row.shimStress_MPa && Math.max(...row.shimStress_MPa);
    const shim = stress === null ? null : (row.shimStress_MPa?.indexOf(stress) ?? 0) + 1;
    return [...NUMBERS.map((key) => row[key]), stress, shim, ...more.map(({ read }) => read(row))];
  });
  const table = textTable([...header, ...more.map(({ heading = '' }) => heading)], cells, { width });
  return isStressed(rows) ? `${table}\n${peakTable(rows, width)}` : table;
}

const isStressed = (rows: readonly Row[]): boolean => rows.some(({ shimPeak }) => shimPeak !== undefined);

const LISTS = ['shimEdgeLift_mm', 'shimStress_MPa', 'shimClampStress_MPa'] as const;
const NUMBERS = ['pressure_MPa', 'status', 'faceEdgeLift_mm', 'zoneEdgeLift_mm', 'seatOpening_mm'] as const;

/** Lists become columns of each shim: `shimStress_MPa[0]`, `shimPeak[0].face`. */
function asCsv(rows: readonly Row[], shimCount: number): string {
  const shims = Array.from({ length: shimCount }, (_, index) => index);
  const more = moreColumns(rows);
  const peaks = isStressed(rows) ? shims.flatMap((shim) => PEAK_KEYS.map((key) => ({ shim, key }))) : [];
  const header = [
    ...NUMBERS,
    ...LISTS.flatMap((list) => shims.map((shim) => `${list}[${shim}]`)),
    ...more.map(({ key }) => key),
    ...peaks.map(({ shim, key }) => `shimPeak[${shim}].${key}`),
  ];
  const cells = rows.map((row) => [
    ...NUMBERS.map((key) => row[key]),
    ...LISTS.flatMap((list) => shims.map((shim) => row[list]?.[shim] ?? null)),
    ...more.map(({ read }) => read(row)),
    ...peaks.map(({ shim, key }) => row.shimPeak?.[shim]?.[key] ?? null),
  ]);
  return csv(header, cells);
}

export async function lift({ file, values, width }: Request): Promise<Outcome> {
  const pressures_MPa = numberList(values.get(PRESSURES) ?? '', PRESSURES, { from: 0, unit: 'MPa' });
  const stack = await stackToLift(file, values);
  const pressures_Pa = pressures_MPa.map(pascalsFromMegapascals);
  const profiles = values.has(STRESS);
  // The closed state comes last: a swing starts from it.
  const asked = profiles ? [...pressures_Pa, 0] : pressures_Pa;
  const choice = theoryOf(values);
  const result = solveLift(stack, asked, { theory: choice, waviness: true, profiles });
  const { points: solved } = result;
  const points = solved.slice(0, pressures_Pa.length);
  const waves = result.theory === 'port-periodic';
  const rows = points.map((point, index) => {
    const row = liftRow(point, pressures_MPa[index], { floats: stack.float !== undefined, waves });
    return profiles ? { ...row, shimPeak: peaksOf(stack, solved[solved.length - 1], point) } : row;
  });
  return {
    exit: points.every((point) => point.status === 'converged') ? EXIT.done : EXIT.failed,
    result: render(rows, headOf(result, choice), stack.shims.length, { values, width }),
    talk: [
      ...theoryRemarks(result, choice),
      ...points.flatMap((point, index) => talkOf(point, pressures_MPa[index])),
      ...rows.flatMap(({ shimPeak, pressure_MPa }: Row) => setWarnings(shimPeak ?? [], pressure_MPa)),
      ...(profiles ? strengthRemarks(stack) : []),
    ],
  };
}

const peaksOf = (stack: StackInput, closed: LiftPoint, point: LiftPoint): ShimPeak[] | null =>
  point.status === 'converged' ? shimPeaks(stack, closed, point) : null;

/** `auto` also tells that it chose, and why the round theory stands in where it does. */
const headOf = ({ theory, fallback }: LiftResult, choice: TheoryChoice) => ({
  format: 'shimwright/lift',
  version: 1,
  theory,
  ...(choice === 'auto' && { theoryAsked: choice }),
  ...(fallback && { fallback }),
});

const theoryRemarks = ({ theory, fallback }: LiftResult, choice: TheoryChoice): string[] => [
  ...(choice === 'auto' ? [`theory: ${theory}`] : []),
  ...(fallback ? [fallbackInWords(fallback)] : []),
];

function render(
  rows: readonly Row[],
  head: ReturnType<typeof headOf>,
  shimCount: number,
  { values, width }: Form,
): string {
  if (values.has('json')) return json({ ...head, points: rows });
  return values.has('csv') ? asCsv(rows, shimCount) : asText(rows, width);
}

function talkOf(point: LiftPoint, pressure_MPa: number): string[] {
  if (point.status !== 'converged') return [`at ${pressure_MPa} MPa: ${point.status}: ${point.reason}`];
  if (!point.waviness || point.waviness.margin > 0) return [];
  const waves = `ruffles in ${point.waviness.waves} waves`;
  return [`at ${pressure_MPa} MPa: the rim ${waves}; the numbers are outside the proven range of the model`];
}
