import { describe, expect, it } from 'vitest';
import { cliJson } from '../helpers/cli-json.ts';
import { fixturePath, PROJECT_FIXTURE, STACK_FIXTURE, soundCartridge, soundProject } from '../helpers/documents.ts';
import { runHere } from '../helpers/run-cli.ts';

const AT = ['--pressures-MPa', '0.2,0.8'];

describe.concurrent('shimwright lift of a stack in a project', () => {
  it.each([
    ['compression', 'pistonCompression'],
    ['rebound', 'pistonRebound'],
    ['base', 'baseCompression'],
  ] as const)('bends the %s stack as a stack file with the same sizes', async (place, key) => {
    const project = soundCartridge();
    const [build] = project.builds;
    const { ports, pressureZone, seat } = project.damper.valves[key]!;
    const { seatHeight_mm, ...valving } = build.valves[key]!;
    const file = {
      ...{ format: 'shimwright/stack', version: 1, name: place },
      ...{ ...valving, pressureZone, seat: { ...seat, height_mm: seatHeight_mm } },
      ...(ports.coveredFraction && { ports: { count: ports.count, coveredFraction: ports.coveredFraction } }),
    };
    const [ofProject, ofFile] = await Promise.all([
      cliJson(['lift', ...AT, '--stack', place], project),
      cliJson(['lift', ...AT], file),
    ]);
    expect(ofProject.points[1].faceEdgeLift_mm).toBeGreaterThan(ofProject.points[0].faceEdgeLift_mm);
    expect(ofProject).toEqual(ofFile);
  });

  it('takes the build that is named', async () => {
    const project = soundProject();
    const [first] = project.builds;
    const { pistonRebound } = first.valves;
    const shims = pistonRebound.shims.map((shim) => ({ ...shim, thickness_mm: 2 * shim.thickness_mm }));
    project.builds.push({
      ...first,
      id: 'thick',
      valves: { ...first.valves, pistonRebound: { ...pistonRebound, shims } },
    });
    const lifts = (...words: string[]) => cliJson(['lift', ...AT, '--stack=rebound', ...words], project);
    const [before, after] = await Promise.all([lifts(), lifts('--build=thick')]);
    expect(after.points[1].faceEdgeLift_mm).toBeLessThan(before.points[1].faceEdgeLift_mm / 3);
  });

  it.each([
    [PROJECT_FIXTURE, [], '--stack: got a project, which has several stacks, wanted compression or rebound'],
    [PROJECT_FIXTURE, ['--stack=base'], '--stack: got no base stack in this damper, wanted compression or rebound'],
    [PROJECT_FIXTURE, ['--stack=mid'], '--stack: got "mid", wanted compression or rebound or base'],
    [PROJECT_FIXTURE, ['--stack=rebound', '--build=none'], 'no such build'],
    [STACK_FIXTURE, ['--stack=rebound'], '--stack is of a project; this file holds one stack'],
    [STACK_FIXTURE, ['--build=stock'], '--build is of a project; this file holds one stack'],
  ])('refuses %s with %j', async (name, words, message) => {
    const { exit, talk } = await runHere(['lift', fixturePath(name), ...AT, ...words]);
    expect(exit).toBe(2);
    expect(talk.join('\n')).toContain(message);
  });
});
