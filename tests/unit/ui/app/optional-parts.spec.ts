import { beforeEach, describe, expect, it } from 'vitest';
import type { Project, ValvePlace } from '../../../../src/model/project.ts';
import { validateProject } from '../../../../src/model/validate.ts';
import { forceCurveForBuild } from '../../../../src/solver/index.ts';
import {
  baseBleedOf,
  baseNeedleOf,
  coilAdjusterOf,
  needleOf,
  poppetAdjusterOf,
  poppetOf,
} from '../../../../src/ui/app/build-parts.ts';
import { FRICTION_LAW, HYDRAULIC_STOP, PISTON_BAND, SEPARATOR } from '../../../../src/ui/app/damper-parts.ts';
import {
  type OptionalPart,
  withoutPart,
  withPartChanged,
  withStartedPart,
} from '../../../../src/ui/app/optional-parts.ts';
import { commit, project, replaceProject, startWith } from '../../../../src/ui/app/store.ts';
import { demos, FORK, REAR, RESERVOIR, readDemo } from '../helpers/demos.ts';

const put = (next: Project): void => commit(next, { label: 'part' });
const open = (file: string): string => {
  const document = readDemo(file);
  startWith(document, file);
  replaceProject({ ...document, name: 'A copy to edit' }, 'copy', file);
  return document.builds[0].id;
};
const statesOf = (document: Project, buildId: string): string[] =>
  forceCurveForBuild(document, buildId, { speeds_m_s: [-0.3, 0.3], theory: 'small-deflection' }).points.map(
    ({ status }) => status,
  );

/** Put in afresh, where it is already there too. */
const started = <T extends object>(document: Project, part: OptionalPart<T>): Project => {
  const bare = part.put(document, undefined);
  return part.put(bare, part.start(bare));
};

describe.each(demos())('starting values in %s', (_, document) => {
  const { id } = document.builds[0];
  it.each([
    ['piston band', PISTON_BAND],
    ['friction law', FRICTION_LAW],
    ['hydraulic stop', HYDRAULIC_STOP],
    ['separator', SEPARATOR],
  ] as [string, OptionalPart<object>][])('a %s fits, and the damper solves with it', (_name, part) => {
    const next = started(document, part);
    expect(validateProject(next).ok).toBe(true);
    expect(part.of(next)).toBeDefined();
    expect(statesOf(next, id)).toEqual(['converged', 'converged']);
    expect(part.of(part.put(next, undefined))).toBeUndefined();
  });

  it('a needle fits a bleed of one hole, and no other', () => {
    const bleed = (count: number): Project => {
      const [build, ...rest] = document.builds;
      return { ...document, builds: [{ ...build, bleed: { ...build.bleed, count } }, ...rest] };
    };
    const [one, two] = [1, 2].map((count) => started(bleed(count), needleOf(id)));
    expect(validateProject(one).ok).toBe(true);
    expect(statesOf(one, id)).toEqual(['converged', 'converged']);
    const refused = validateProject(two);
    expect(!refused.ok && refused.faults[0].code).toBe('bleed.needle.one-hole');
  });
});

describe('parts of a base valve', () => {
  it.each([FORK, RESERVOIR])('%s: bleed, needle, poppet and adjuster start with values that solve', (file) => {
    const document = readDemo(file);
    const { id } = document.builds[0];
    const bleed = started(document, baseBleedOf(id));
    const needle = started(bleed, baseNeedleOf(id));
    const poppet = started(needle, poppetOf(id));
    const whole = started(poppet, poppetAdjusterOf(id));
    expect(validateProject(whole).ok).toBe(true);
    expect(whole.builds[0].basePoppet?.adjuster?.clickCount).toBe(20);
    expect(whole.builds[0].baseBleed?.needle?.clicks).toBe(10);
    expect(whole.builds[1]).toEqual(document.builds[1]);
    expect(statesOf(whole, id)).toEqual(['converged', 'converged']);
  });
});

describe('a part that is put in and taken out', () => {
  let id = '';
  beforeEach(() => {
    id = open(REAR);
  });

  it('comes back as it was taken out', () => {
    put(withStartedPart(HYDRAULIC_STOP));
    put(withPartChanged(HYDRAULIC_STOP, { length_mm: 7 }));
    put(withoutPart(HYDRAULIC_STOP));
    expect('hydraulicStop' in project.value.damper).toBe(false);
    put(withStartedPart(HYDRAULIC_STOP));
    expect(project.value.damper.hydraulicStop?.length_mm).toBe(7);
  });

  it('starts afresh where what was taken out no longer fits', () => {
    put(withStartedPart(HYDRAULIC_STOP));
    const { travel_mm } = project.value.damper;
    put(withPartChanged(HYDRAULIC_STOP, { length_mm: travel_mm }));
    put(withoutPart(HYDRAULIC_STOP));
    put({ ...project.value, damper: { ...project.value.damper, travel_mm: travel_mm - 1 } });
    put(withStartedPart(HYDRAULIC_STOP));
    expect(project.value.damper.hydraulicStop?.length_mm).toBeLessThan(travel_mm - 1);
    expect(validateProject(project.value).ok).toBe(true);
  });

  it('is changed only where it is there', () => {
    const before = project.value;
    expect(withPartChanged(PISTON_BAND, { length_mm: 3 })).toBe(before);
  });

  it('belongs to its build alone', () => {
    const other = project.value.builds[1].id;
    put(needleOf(id).put(project.value, undefined));
    put(needleOf(other).put(project.value, undefined));
    put(withStartedPart(needleOf(id)));
    expect(needleOf(id).of(project.value)?.clickCount).toBe(20);
    expect(needleOf(other).of(project.value)).toBeUndefined();
  });

  it('an adjuster of a coil spring needs the spring', () => {
    const place: ValvePlace = 'pistonCompression';
    const part = coilAdjusterOf(id, place);
    expect(withStartedPart(part)).toEqual(project.value);
    const [build, ...rest] = project.value.builds;
    const { shims } = build.valves[place];
    const coilSpring = { diameter_mm: shims[shims.length - 1].outerDiameter_mm - 1, rate_N_mm: 10, preload_N: 20 };
    const valves = { ...build.valves, [place]: { ...build.valves[place], coilSpring } };
    put({ ...project.value, builds: [{ ...build, valves }, ...rest] });
    put(withStartedPart(part));
    expect(validateProject(project.value).ok).toBe(true);
    // 20 N at 10 N/mm is 2 mm: a twentieth of it each click.
    expect(part.of(project.value)).toEqual({ travelPerClick_mm: 0.1, clicks: 0, clickCount: 20 });
  });
});
