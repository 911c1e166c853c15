import { describe, expect, it } from 'vitest';
import type { Project } from '../../../../src/model/project.ts';
import { isCurrent, questionOf, type Study, searchedProject } from '../../../../src/ui/search/study.ts';
import { plantedStudy } from '../../../helpers/search-studies.ts';

const { project, request } = plantedStudy();

function studyOf(change: Partial<Study> = {}): Study {
  const settings = { seed: 1, steps: 10, answers: 5, theory: 'large-deflection' } as const;
  const of = searchedProject(project, request.buildId);
  const form = {} as Study['form'];
  return { id: 'a', project: of, request, settings, starts: 4, aimName: 'Planted', form, ...change };
}

const withBuilds = (change: (build: Project['builds'][number]) => Project['builds'][number]): Project => ({
  ...project,
  builds: project.builds.map(change),
});

describe('a search', () => {
  it('takes the build, its damper and the drawer along, and no other build', () => {
    const of = searchedProject(project, request.buildId);
    expect(of.builds.map(({ id }) => id)).toEqual([request.buildId]);
    expect(of.drawer).toEqual(project.drawer);
    expect(of.damper).toEqual(project.damper);
  });

  it('is of the project as it is, until build, damper or drawer are edited; names and other builds do not matter', () => {
    const study = studyOf();
    expect(isCurrent(study, project)).toBe(true);
    expect(
      isCurrent(
        study,
        withBuilds((build) => ({ ...build, name: 'Other', notes: 'why' })),
      ),
    ).toBe(true);
    const elsewhere = withBuilds((build) => (build.id === request.buildId ? build : { ...build, valves: {} as never }));
    expect(isCurrent(study, elsewhere)).toBe(true);
    expect(isCurrent(study, { ...project, drawer: project.drawer.slice(1) })).toBe(false);
    expect(isCurrent(study, { ...project, damper: { ...project.damper, travel_mm: 1 } })).toBe(false);
    expect(
      isCurrent(
        study,
        withBuilds((build) => ({ ...build, valves: {} as never })),
      ),
    ).toBe(false);
    expect(isCurrent(study, { ...project, builds: [] })).toBe(false);
  });

  it('is the same question with more starts, and another with another seed, aim or limit', () => {
    const question = questionOf(studyOf());
    expect(questionOf(studyOf({ starts: 9, aimName: 'x' }))).toBe(question);
    const { settings } = studyOf();
    expect(questionOf(studyOf({ settings: { ...settings, seed: 2 } }))).not.toBe(question);
    expect(questionOf(studyOf({ request: { ...request, aim: request.aim.slice(1) } }))).not.toBe(question);
    expect(questionOf(studyOf({ request: { ...request, limits: { maxShims: 3 } } }))).not.toBe(question);
  });
});
