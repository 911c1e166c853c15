import { readdirSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { DEMOS } from '../../../src/demo/index.ts';
import { LAYOUTS } from '../../../src/model/project.ts';
import type { ForcePoint, StackTable, Theory } from '../../../src/solver/index.ts';
import {
  changeBetween,
  DEMO_FOLDER,
  demoCurve,
  loadDemo,
  pointAt,
  SPEEDS,
  THEORIES,
} from '../../helpers/demo-curves.ts';

/** Rim lift of the face shim, straight between the points of the table [m]. */
function liftAt({ points }: StackTable, pressure_Pa: number): number {
  const i = points.findIndex((point) => point.pressure_Pa >= pressure_Pa);
  const [low, high] = [points[i - 1], points[i]];
  const share = (pressure_Pa - low.pressure_Pa) / (high.pressure_Pa - low.pressure_Pa);
  return low.faceEdgeLift_m + share * (high.faceEdgeLift_m - low.faceEdgeLift_m);
}

describe('demo projects', () => {
  it('are all listed', () => {
    const files = readdirSync(DEMO_FOLDER).filter((name) => name.endsWith('.shimwright.json'));
    expect(DEMOS.map(({ file }) => file).sort()).toEqual(files.sort());
  });

  it.each(DEMOS)('$id is a valid project that says it is invented', ({ file, title }) => {
    const project = loadDemo(file);
    expect(project.invented).toBe(true);
    for (const text of [title, project.name, project.damper.name, project.fluid.name, project.notes.toLowerCase()]) {
      expect(text).toContain('invented');
    }
    expect(project.notes).toMatch(
      /^Invented: there is no .*\n\n(Rider|Driver): .*\n\nComplaint: .*\n\nReading of it: /s,
    );
    for (const { notes } of project.builds) expect(notes.length).toBeGreaterThan(40);
    // A revalve can be taken back.
    for (const { notes } of project.builds.slice(1)) expect(notes).toContain('The way back: ');
  });

  it('show every layout once, each with a stock build and a revalve', () => {
    const projects = DEMOS.map(({ file }) => loadDemo(file));
    expect(projects.map(({ damper }) => damper.layout).sort()).toEqual([...LAYOUTS].sort());
    for (const { builds, baselineBuild } of projects) {
      expect(builds).toHaveLength(2);
      expect(baselineBuild).toBe(builds[0].id);
      expect(builds[0].name).toBe('Stock, as it came out');
    }
  });

  const runs = DEMOS.flatMap(({ file }) =>
    loadDemo(file).builds.flatMap(({ id }) => THEORIES.map((theory): [string, string, Theory] => [file, id, theory])),
  );
  it.each(runs)('%s, build %s: every speed solves and force rises with it (%s)', (file, id, theory) => {
    const { points } = demoCurve(loadDemo(file), id, theory);
    expect(points.map(({ status }) => status)).toEqual(SPEEDS.map(() => 'converged'));
    const forces = (points as ForcePoint[]).map(({ force_N }) => force_N);
    for (let i = 1; i < forces.length; i++) expect(forces[i]).toBeGreaterThan(forces[i - 1]);
  });
});

describe('the trail motorcycle demo', () => {
  const project = loadDemo('larkspur-trail-rear.shimwright.json');

  it.each(THEORIES)('keeps its oil whole up to 2 m/s as it came out (%s)', (theory) => {
    for (const point of demoCurve(project, 'stock', theory).points) expect(point).toMatchObject({ airRelease: false });
  });

  it.each(THEORIES)('has forces of a light rear damper at 0.5 m/s and lifts of about two shims (%s)', (theory) => {
    // Range: common practice, no source; lift of two thicknesses is where rims begin to ruffle.
    const curve = demoCurve(project, 'stock', theory);
    expect(pointAt(curve, 0.5).dampingForce_N).toBeGreaterThan(300);
    expect(pointAt(curve, 0.5).dampingForce_N).toBeLessThan(600);
    expect(-pointAt(curve, -0.5).dampingForce_N).toBeGreaterThan(900);
    expect(-pointAt(curve, -0.5).dampingForce_N).toBeLessThan(2000);
    for (const [place, speed] of [
      ['compression', 0.5],
      ['rebound', -0.5],
    ] as const) {
      const shim = project.builds[0].valves[place === 'compression' ? 'pistonCompression' : 'pistonRebound'].shims[0];
      const lift_m = liftAt(curve.stacks[place], pointAt(curve, speed).shimPressure_Pa);
      expect(lift_m).toBeLessThan((2.2 * shim.thickness_mm) / 1000);
    }
  });

  it.each(THEORIES)('does with the revalve what its notes say (%s)', (theory) => {
    const [stock, revalve] = project.builds.map(({ id }) => demoCurve(project, id, theory));
    const change = changeBetween(stock, revalve);
    expect(change(0.5)).toBeLessThan(-0.15);
    expect(change(1)).toBeLessThan(-0.15);
    expect(change(-0.5)).toBeGreaterThan(0.05);
    expect(change(-0.5)).toBeLessThan(0.25);
  });
});
