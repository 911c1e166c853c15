/** The static curve of one build at every speed and under every setting that was asked for. */
import type { Build, Project } from '../model/project.ts';
import { type FailedForce, type ForcePoint, forceCurveForBuild, theoriesOf } from '../solver/index.ts';
import type { Values } from './command.ts';
import { numberList } from './number-list.ts';
import { occasionsOf } from './occasions.ts';
import { gauge_bar } from './quantities.ts';
import { type Asked, type Row, whereOf } from './render/rows.ts';
import { fallbackInWords, type TheoriesOfCurve, theoriesOfCurve, theoryOf } from './theories.ts';

export const SPEEDS = 'speeds-m-s';

export interface AskedPoint extends TheoriesOfCurve {
  readonly asked: readonly Asked[];
  readonly point: ForcePoint | FailedForce;
}

export function curvePoints(
  project: Project,
  build: Build,
  values: Values,
  { bands = false }: { readonly bands?: boolean } = {},
): AskedPoint[] {
  const speeds_m_s = numberList(values.get(SPEEDS) ?? '', SPEEDS, { unit: 'm/s' });
  const options = { speeds_m_s, theory: theoryOf(values), bands };
  return occasionsOf(project, build, values).flatMap(({ asked, project: then, stroke_m }) => {
    const curve = forceCurveForBuild(then, build.id, { ...options, stroke_m });
    const used = theoriesOfCurve(curve, theoriesOf(curve));
    return curve.points.map((point, i) => ({ asked: [speedAsked(speeds_m_s[i]), ...asked], point, ...used }));
  });
}

const speedAsked = (value: number): Asked => ({
  key: 'shaftSpeed_m_s',
  heading: ['speed', 'm/s'],
  value,
  words: `${value} m/s`,
});

/** The row of a point, empty where it failed. */
export const rowOf = ({ asked, point, theories }: AskedPoint): Row<ForcePoint & Pick<TheoriesOfCurve, 'theories'>> =>
  point.status === 'converged'
    ? { asked, status: point.status, item: { ...point, theories } }
    : { asked, status: point.status };

/** Which stacks have round numbers for want of waved ones, once for every setting of the day. */
export const fallbacksOf = (points: readonly AskedPoint[]): string[] => [
  ...new Set(
    points.flatMap(({ asked: [, ...setting], fallbacks }) =>
      fallbacks.map(([place, fallback]) => {
        const where = setting.length > 0 ? `${whereOf(setting)}: ` : '';
        return `${where}${place} stack: ${fallbackInWords(fallback)}`;
      }),
    ),
  ),
];

/** Why a point failed; nothing for one that converged. */
export const failureOf = ({ asked, point }: AskedPoint): string[] =>
  point.status === 'converged' ? [] : [`${whereOf(asked)}: ${point.status}: ${point.reason}`];

/** That oil pulls apart, and what would prevent it. */
export function airReleaseOf({ asked, point }: AskedPoint): string[] {
  if (point.status !== 'converged' || !point.airRelease) return [];
  const needed = gauge_bar(point.gasPressureNeeded_Pa).toFixed(1);
  const effect = 'air comes out of the oil, the force is limited';
  return [`${whereOf(asked)}: ${effect}; ${needed} bar gauge of gas would prevent it`];
}

/** Which paths cavitate: the force there is higher than is counted. */
export function cavitationOf({ asked, point }: AskedPoint): string[] {
  if (point.status !== 'converged') return [];
  const named = (where: string, paths: ForcePoint['cavitating'] = []) => paths.map(({ path }) => `the ${where}${path}`);
  const all = [...named('', point.cavitating), ...named('base ', point.base?.cavitating)];
  if (all.length === 0) return [];
  return [`${whereOf(asked)}: cavitation at ${all.join(', ')}: less passes there than is counted`];
}

/** Once, beside any advice of more gas. */
export const gasCautionOf = (points: readonly AskedPoint[]): string[] =>
  points.some(({ point }) => point.status === 'converged' && point.airRelease)
    ? [
        "gas under pressure can kill: let it out before opening, charge with nitrogen only, never above the maker's pressure; the maker's manual comes first",
      ]
    : [];
