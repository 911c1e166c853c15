import { describe, expect, it } from 'vitest';
import { changesOf } from '../../../scripts/lib/what-matters/changes.ts';
import { effectsOf } from '../../../scripts/lib/what-matters/effects.ts';
import { tableOf, tablesOf } from '../../../scripts/lib/what-matters/table.ts';
import type { Project } from '../../../src/model/project.ts';
import type { Valving } from '../../../src/model/stack.ts';
import { soundCartridge, soundProject } from '../../helpers/documents.ts';

const labels = (project = soundProject()) => changesOf(project).map(({ label }) => label);
const valvings = ({ builds }: Project) => Object.values(builds[0].valves) as Valving[];
const change = (label: string, project = soundProject()) => {
  const found = changesOf(project).find((one) => one.label.startsWith(label));
  if (!found) throw new Error(`no change ${label} in ${labels(project)}`);
  return found;
};

describe('what may be changed', () => {
  it('has the base of a damper with one only', () => {
    expect(labels().filter((label) => label.startsWith('base'))).toEqual([]);
    expect(labels(soundCartridge()).filter((label) => label.startsWith('base: '))).toHaveLength(5);
  });

  it('leaves the document as it is', () => {
    const project = soundProject();
    changesOf(project);
    expect(project).toEqual(soundProject());
  });

  it('makes every shim of both piston stacks thicker', () => {
    const { project } = change('piston: all shims').upper ?? {};
    const thicknesses = (document = soundProject()) =>
      valvings(document).flatMap(({ shims }) => shims.map(({ thickness_mm }) => thickness_mm));
    thicknesses(project).forEach((t, i) => {
      expect(t).toBeCloseTo(thicknesses()[i] + 0.01, 12);
    });
  });

  it('widens round ports by their area', () => {
    const project = soundProject();
    const ports = project.damper.valves.pistonRebound.ports;
    delete ports.area_mm2;
    ports.diameter_mm = 4;
    const changed = change('piston: port area', project).lower?.project.damper.valves.pistonRebound.ports.diameter_mm;
    expect(changed).toBeCloseTo(3.898718, 6); // 4 mm · √0.95
  });

  it('takes no gas below the atmosphere', () => {
    const project = soundProject();
    project.gas.gaugePressure_bar = 0.5;
    expect(change('gas', project).lower).toBeUndefined();
    expect(change('gas', project).upper?.project.gas.gaugePressure_bar).toBe(1.5);
  });

  it('leaves the only face shim in, in the direction where it is alone', () => {
    const project = soundProject();
    const { pistonCompression, pistonRebound } = project.builds[0].valves;
    pistonCompression.shims[0].count = 1;
    pistonRebound.shims[0].count = 3;
    const { lower, upper } = change('piston: one face shim', project);
    expect(lower?.without).toEqual([1]);
    const counts = [lower, upper].map((side) => valvings(side?.project ?? project).map(({ shims }) => shims[0].count));
    expect(counts).toEqual([
      [1, 2],
      [2, 4],
    ]);
  });
});

describe('what a change does', () => {
  const project = soundProject();
  project.damper.sealFriction_N = 50;
  const effects = effectsOf({ id: 'a-damper', title: 'a damper', project, speeds_m_s: [0.2] });
  const of = (label: string) => effects.changes.find((one) => one.label.startsWith(label));

  it('counts more friction as more resistance in both directions', () => {
    expect(of('friction')?.upper).toEqual([expect.closeTo(10, 6), expect.closeTo(10, 6)]);
    expect(of('friction')?.lower).toEqual([expect.closeTo(-10, 6), expect.closeTo(-10, 6)]);
  });

  it('counts more gas as more resistance in compression and less in rebound', () => {
    const [compression, rebound] = of('gas')?.upper ?? [];
    expect(compression).toBeGreaterThan(0);
    expect(rebound).toBeCloseTo(-Number(compression), 6);
  });
});

describe('the table', () => {
  const shares = [30, 20, 10, 9, 8, 7, 6, 0.5];
  const effects = {
    title: 'A damper',
    speeds_m_s: [0.1],
    damping_N: [100],
    changes: shares.map((N) => ({ label: `change ${N}`, lower: [-N], upper: [N / 2] })),
  };
  const rows = tableOf(effects).split('\n');

  it('puts the six largest in bold and the largest first', () => {
    expect(rows.slice(0, 4)).toEqual([
      '| change | 0.1 m/s compression |',
      '| --- | --- |',
      '| damping force, N | 100 |',
      '| change 30 | **−30 / +15 (30 %)** |',
    ]);
    expect(rows.filter((row) => row.includes('**'))).toHaveLength(6);
    expect(rows).toContain('| change 6 | −6 / +3 (6 %) |');
  });

  it('tells small changes in a line', () => expect(rows.at(-1)).toBe('Below 1 % everywhere: change 0.5.'));

  it('tells a side that cannot be, and one that did not solve', () => {
    const failed = { label: 'x', lower: [], upper: [{ reason: 'beyond the table' }] };
    const big = { label: 'y', lower: [5], upper: [] };
    expect(tableOf({ ...effects, changes: [big, failed] })).toContain('| y | **+5 / – (5 %)** |');
    expect(tableOf({ ...effects, changes: [big, failed] })).toContain('| x | – / beyond the table (0 %) |');
  });

  it('stands under the title of its damper', () =>
    expect(tablesOf([effects, effects])).toMatch(/^## A damper\n\n\| change[\s\S]*\n\n## A damper\n\n\| change/));
});
