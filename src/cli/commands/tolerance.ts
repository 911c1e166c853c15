/** `shimwright tolerance`: how far the force scatters when parts, oil and gas lie off what is drawn, and what it scatters from. */
import { decodeProject } from '../../model/codec.ts';
import {
  type Spread,
  TOLERANCE_NAMES,
  type ToleranceName,
  toleranceForBuild,
  tolerancesOfProject,
} from '../../solver/index.ts';
import { EXIT, type Outcome, type Request, UsageError, type Values } from '../command.ts';
import { SPEEDS } from '../curve-points.ts';
import { readDocument } from '../input.ts';
import { numberList } from '../number-list.ts';
import { findBuild, headOf } from '../occasions.ts';
import { type Asked, type Column, type Row, renderRows } from '../render/rows.ts';
import { theoryOf, theoryTalk } from '../theories.ts';
import { shownTolerances, tolerancesOf } from '../tolerance-list.ts';

export const SAMPLES = 'samples';
export const SEED = 'seed';
export const TOLERANCES = 'tolerances';
export const DEFAULTS = { [SAMPLES]: 64, [SEED]: 1, [SPEEDS]: '-1,-0.3,-0.1,0.1,0.3,1' } as const;

interface Scattered {
  readonly drawn_N: number | null;
  readonly spread: Spread;
}

export async function tolerance({ file, values, width }: Request): Promise<Outcome> {
  const project = await readDocument(file, decodeProject);
  const build = findBuild(project, values);
  const speeds_m_s = numberList(values.get(SPEEDS) ?? DEFAULTS[SPEEDS], SPEEDS, { unit: 'm/s' });
  const settings = { samples: whole(values, SAMPLES, 4), seed: whole(values, SEED, 0) };
  const tolerances = tolerancesOf(values.get(TOLERANCES), TOLERANCES);
  const theory = theoryOf(values);
  const answer = toleranceForBuild(project, build.id, { speeds_m_s, theory, tolerances, ...settings });
  const head = {
    format: 'shimwright/tolerance',
    version: 1,
    theory,
    theories: answer.theories,
    ...headOf(project, build, values),
    ...settings,
    tolerances: shownTolerances({ ...tolerancesOfProject(project), ...tolerances }),
  };
  const rows = speeds_m_s.map((value, i) => rowOf(value, answer.drawn_N[i], answer.spreads[i]));
  return {
    exit: rows.every(({ item }) => item && item.spread.without === 0) ? EXIT.done : EXIT.failed,
    result: renderRows(rows, COLUMNS, head, { values, width }),
    talk: [
      ...theoryTalk(theory, answer.theories),
      ...answer.refusals.map((why) => `some samples have no force: ${why}`),
    ],
  };
}

function rowOf(value: number, drawn_N: number | null, spread: Spread | null): Row<Scattered> {
  const asked: Asked[] = [{ key: 'shaftSpeed_m_s', heading: ['speed', 'm/s'], value, words: `${value} m/s` }];
  return spread ? { asked, status: 'solved', item: { drawn_N, spread } } : { asked, status: 'no-band' };
}

const COLUMNS: readonly Column<Scattered>[] = [
  { key: 'force_N', heading: ['as drawn', 'N'], read: ({ drawn_N }) => drawn_N },
  { key: 'forceP5_N', heading: ['5th of 100', 'N'], read: ({ spread }) => spread.p5 },
  { key: 'forceP50_N', heading: ['median', 'N'], read: ({ spread }) => spread.p50 },
  { key: 'forceP95_N', heading: ['95th of 100', 'N'], read: ({ spread }) => spread.p95 },
  { key: 'deviation_N', heading: ['standard deviation', 'N'], read: ({ spread }) => spread.deviation },
  { key: 'mostFrom', heading: 'most from', read: ({ spread }) => mostFrom(spread) },
  { key: 'withoutForce', read: ({ spread }) => spread.without },
  ...TOLERANCE_NAMES.flatMap((name, group): Column<Scattered>[] => [
    { key: `${name}FirstOrder`, read: ({ spread }) => spread.shares[group].first },
    { key: `${name}Total`, read: ({ spread }) => spread.shares[group].total },
  ]),
];

/** By its total share, which errs less in few samples; none where nothing scatters. */
function mostFrom({ shares }: Spread): ToleranceName | null {
  const most = Math.max(...shares.map(({ total }) => total));
  return most > 0 ? TOLERANCE_NAMES[shares.findIndex(({ total }) => total === most)] : null;
}

function whole(values: Values, option: typeof SAMPLES | typeof SEED, from: number): number {
  const text = values.get(option);
  if (text === undefined) return DEFAULTS[option];
  const [value] = numberList(text, option, { from, upTo: 1e6, single: true });
  if (!Number.isInteger(value)) throw new UsageError(`--${option}: got ${text}, wanted a whole number`);
  return value;
}
