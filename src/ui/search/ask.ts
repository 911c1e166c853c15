/** From what the page is set to, to the question that the solver gets. */

import type { AimPoint } from '../../model/aim.ts';
import { countOf } from '../../model/expand-shims.ts';
import type { Project, ShimRow, ValvePlace } from '../../model/project.ts';
import type { SearchRequest } from '../../model/search-request.ts';
import { inReaderUnits, showField } from '../app/quantities.ts';
import { errorInWords } from '../app/reasons.ts';
import { sideSolver } from '../app/side-solver.ts';
import type { TheoryChoice } from '../app/solved.ts';
import { searchWords as words } from '../text/search.ts';
import { aimById, aimSpeeds, changed, pointsFor, pointsOfForces } from './aim-points.ts';
import { rowKey, type SearchForm } from './form.ts';
import { type Study, searchedProject } from './study.ts';

/** Why there is no question, in words. */
export class NoQuestion extends Error {}

const buildName = ({ builds }: Project, id: string): string => builds.find((build) => build.id === id)?.name ?? '';

export function aimName(of: Project, { aim, change }: SearchForm): string {
  if (aim.kind === 'aim') return aimById(of, aim.id)?.name ?? '';
  const name = buildName(of, aim.id);
  if (aim.kind === 'build') return words.aimKinds.build(name);
  const percent = `${change.percent > 0 ? '+' : ''}${change.percent}`;
  return words.changeName(name, percent, words.sides[change.side], showField('speed', change.speed_m_s));
}

/** @throws NoQuestion, SolverError */
export async function aimPoints(
  of: Project,
  { aim, change, places }: SearchForm,
  theory: TheoryChoice,
  top_m_s: number,
  signal?: AbortSignal,
): Promise<AimPoint[]> {
  if (aim.kind === 'aim') {
    const found = aimById(of, aim.id);
    if (!found) throw new NoQuestion(words.aimGone);
    return pointsFor(found.points, places);
  }
  const request = { project: of, buildIds: [aim.id], speeds_m_s: aimSpeeds(places, top_m_s), theory };
  const { builds } = await sideSolver().forces(request, { channel: 'search-aim', ...(signal && { signal }) });
  const answer = builds[aim.id];
  const name = buildName(of, aim.id);
  if (answer.status === 'failed') throw new NoQuestion(words.aimUnsolved(name, errorInWords(answer.error)));
  const points = pointsOfForces(answer.forces);
  if (!points) throw new NoQuestion(words.aimUnsolved(name, answer.forces.reasons.map(inReaderUnits).join('; ')));
  return aim.kind === 'change' ? changed(points, change) : points;
}

/** Rows that are ticked, equal sizes together. */
function keptRows(of: Project, { buildId, keep, places }: SearchForm): SearchRequest['keep'] {
  const build = of.builds.find(({ id }) => id === buildId);
  const entries = places.map((place): [ValvePlace, ShimRow[]] => {
    const valving = build?.valves[place];
    const rows = new Map<string, ShimRow>();
    for (const [i, { count, ...row }] of (valving?.shims ?? []).entries()) {
      if (!valving || !keep.includes(rowKey(place, i, valving))) continue;
      const key = JSON.stringify(row);
      rows.set(key, { ...row, count: countOf({ count }) + countOf(rows.get(key) ?? { count: 0 }) });
    }
    return [place, [...rows.values()]];
  });
  return Object.fromEntries(entries.filter(([, rows]) => rows.length > 0));
}

/** @throws NoQuestion, SolverError */
export async function askedStudy(
  of: Project,
  form: SearchForm,
  theory: TheoryChoice,
  top_m_s: number,
): Promise<Omit<Study, 'id'>> {
  if (form.places.length === 0) throw new NoQuestion(words.noStacks);
  const aim = await aimPoints(of, form, theory, top_m_s);
  if (aim.length === 0) throw new NoQuestion(words.aimOtherWay);
  const { buildId, places, keepFace, limits, outerDiameters_mm, thicknesses_mm } = form;
  const project = searchedProject(of, buildId);
  const unlimited: SearchRequest = {
    buildId,
    places,
    aim,
    source: form.source === 'drawer' ? { kind: 'drawer' } : { kind: 'catalogue', outerDiameters_mm, thicknesses_mm },
    keep: keptRows(of, form),
    keepFace,
  };
  const present = await sideSolver().searchPresent(
    { project, request: unlimited, theory },
    { channel: 'search-present' },
  );
  return {
    project,
    present,
    request: { ...unlimited, limits: form.reservesAsNow ? { ...limits, ...present.usualReserves } : limits },
    settings: { seed: form.seed, steps: form.steps, answers: 5, theory },
    starts: form.starts,
    aimName: aimName(of, form),
    form,
  };
}
