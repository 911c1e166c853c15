/** The check of every lesson against the solver: the start and wrong answers do not pass, the stored answer does. */
import { describe, expect, it } from 'vitest';
import type { Project } from '../../../../src/model/project.ts';
import { validateProject } from '../../../../src/model/validate.ts';
import { DEFAULT_THEORY, type ForceCurve, forceCurveForBuild } from '../../../../src/solver/index.ts';
import { solvedSpeeds } from '../../../../src/ui/app/speeds.ts';
import { LESSONS } from '../../../../src/ui/lessons/catalogue.ts';
import { check } from '../../../../src/ui/lessons/check.ts';
import { OWN_BUILD, START_BUILD, startDocument } from '../../../../src/ui/lessons/document.ts';
import type { Lesson } from '../../../../src/ui/lessons/lesson.ts';
import { REAR, readDemo } from '../helpers/demos.ts';
import { ANSWERS } from './answers.ts';

const NAMES = { project: 'Lesson', notes: '', own: 'Yours', start: 'As it was' };
const startOf = (lesson: Lesson): Project => startDocument(lesson, readDemo(REAR), NAMES);

function solve(document: Project, top_m_s = 2): ForceCurve {
  const checked = validateProject(document);
  if (!checked.ok) throw new Error(JSON.stringify(checked.faults));
  return forceCurveForBuild(document, OWN_BUILD, { speeds_m_s: solvedSpeeds(top_m_s), theory: DEFAULT_THEORY });
}

const judge = (lesson: Lesson, start: Project, now: Project) =>
  check(lesson, { start, now, startCurve: solve(start), curve: solve(now) });

describe.each(LESSONS.map((lesson) => [lesson.id, lesson] as const))('the lesson "%s"', (id, lesson) => {
  const start = startOf(lesson);
  const { right, wrong } = ANSWERS[id];

  it('is not answered by its start, in which nothing has strayed', () => {
    const verdict = judge(lesson, start, start);
    expect(verdict).toMatchObject({ isMet: false, strayed: [], ownIsGone: false });
    expect(verdict.findings.every(({ measured }) => measured !== undefined)).toBe(true);
    for (const { goal, measured } of verdict.findings) if (goal.kind === 'force') expect(measured).toBe(0);
  });

  it('is answered by the stored answer', () => {
    const verdict = judge(lesson, start, right(start));
    expect(verdict).toMatchObject({ isMet: true, strayed: [], ownIsGone: false });
  });

  it.each(wrong.map((each, n) => [n, each] as const))('is not answered by wrong answer %i, and says why', (_, each) => {
    const verdict = judge(lesson, start, each.edit(start));
    expect(verdict.isMet).toBe(false);
    if (typeof each.finds === 'string') return expect(verdict.strayed).toContain(each.finds);
    expect(verdict.strayed).toEqual([]);
    for (const [goal, state] of Object.entries(each.finds)) expect(verdict.findings[Number(goal)].state).toBe(state);
  });
});

describe('a check', () => {
  const lesson = LESSONS.find(({ id }) => id === 'face') as Lesson;
  const start = startOf(lesson);
  const answer = ANSWERS.face.right(start);
  const [startCurve, curve] = [solve(start), solve(answer)];

  it('is not met by a curve that the solver does not have', () => {
    const verdict = check(lesson, { start, now: answer, startCurve });
    expect(verdict.isMet).toBe(false);
    expect(verdict.findings.map(({ state, measured }) => [state, measured])).toEqual([
      ['not-solved', undefined],
      ['not-solved', undefined],
    ]);
  });

  it('is not met by a point that did not solve', () => {
    const failed = curve.points.map(({ shaftSpeed_m_s }) => ({
      status: 'not-converged' as const,
      shaftSpeed_m_s,
      reason: 'planted',
    }));
    const verdict = check(lesson, { start, now: answer, startCurve, curve: { ...curve, points: failed } });
    expect(verdict.findings[0].state).toBe('not-solved');
  });

  it('says so when the charts end before the speed it asks about', () => {
    const short = { start, now: answer, startCurve: solve(start, 0.2), curve: solve(answer, 0.2) };
    expect(check(lesson, short).findings[0]).toMatchObject({ state: 'beyond-chart' });
    expect(check(lesson, short).isMet).toBe(false);
  });

  it('says so when the build it looks at was deleted', () => {
    const now = { ...start, builds: start.builds.filter(({ id }) => id !== OWN_BUILD) };
    expect(check(lesson, { start, now, startCurve })).toEqual({
      isMet: false,
      findings: [],
      strayed: [],
      ownIsGone: true,
    });
  });

  it('tells of a change to the build that is compared with, though the answer is right', () => {
    const builds = answer.builds.map((build) =>
      build.id === START_BUILD ? { ...build, bleed: { ...build.bleed, diameter_mm: 1 } } : build,
    );
    const verdict = check(lesson, { start, now: { ...answer, builds }, startCurve, curve });
    expect(verdict).toMatchObject({ isMet: false, strayed: ['other-build'] });
    expect(verdict.findings.every(({ state }) => state === 'met')).toBe(true);
  });
});
