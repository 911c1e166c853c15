import { readFileSync } from 'node:fs';
import { afterAll, describe, expect, it } from 'vitest';
import { decodeProject } from '../../src/model/codec.ts';
import { forceCurveForBuild, type LiftOptions, type StackInput, solveLift } from '../../src/solver/index.ts';
import { createSolverClient } from '../../workers/client.ts';
import { spawnFixture } from './helpers/node-worker.ts';

const client = createSolverClient({ spawn: spawnFixture('real-solver') });
afterAll(() => client.close());

const checked = decodeProject(readFileSync('tests/fixtures/project-v1.shimwright.json', 'utf8'));
if (!checked.ok) throw new Error('the fixture is not a project');
const project = checked.document;

/** `toStrictEqual` compares numbers by Object.is, in typed arrays too: bit for bit, -0 and 0 told apart. */
describe('the worker and a direct call give the same numbers, bit for bit', () => {
  it('force curves of every build', async () => {
    const options = { speeds_m_s: [-0.8, -0.1, 0, 0.02, 0.4, 1.5], theory: 'small-deflection' } as const;
    const buildIds = project.builds.map(({ id }) => id);
    const { curves } = await client.forceCurves({ project, buildIds, ...options });
    expect(Object.keys(curves)).toEqual(buildIds);
    for (const id of buildIds) {
      const curve = forceCurveForBuild(project, id, options);
      expect(curve.points.every((point) => point.status === 'converged')).toBe(true);
      expect(curves[id]).toStrictEqual({ status: 'solved', curve });
    }
  });

  it('lift of a stack', async () => {
    const shim = { youngsModulus_Pa: 206e9, poissonsRatio: 0.3, thickness_m: 0.00015 };
    const stack: StackInput = {
      clampRadius_m: 0.006,
      shims: [
        { ...shim, outerRadius_m: 0.015 },
        { ...shim, outerRadius_m: 0.011 },
      ],
      pressureZone: { innerRadius_m: 0.00825, outerRadius_m: 0.0138 },
    };
    const pressures_Pa = [1e4, 5e4, 2e5];
    const options: LiftOptions = { theory: 'small-deflection' };
    const direct = solveLift(stack, pressures_Pa, options);
    expect(direct.points.map(({ status }) => status)).toEqual(['converged', 'converged', 'converged']);
    expect(await client.lift({ stack, pressures_Pa, options })).toStrictEqual(direct);
  });

  it('a build that the project does not have is refused with its fault, in both', async () => {
    const request = { project, buildIds: ['no such build'], speeds_m_s: [0.1], theory: 'small-deflection' } as const;
    const { curves } = await client.forceCurves(request);
    const direct = () => forceCurveForBuild(project, 'no such build', request);
    expect(direct).toThrow(expect.objectContaining({ fault: expect.objectContaining({ code: 'build.unknown' }) }));
    expect(curves['no such build']).toMatchObject({
      error: { code: 'invalid-input', fault: { code: 'build.unknown' } },
    });
  });
});
