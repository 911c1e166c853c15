import { describe, expect, it } from 'vitest';
import { InputError } from '../../src/units/fault.ts';
import type { Job, Project } from '../../workers/protocol.ts';
import type { Solver } from '../../workers/solver.ts';
import { createSolverApi } from '../../workers/solver-api.ts';

const FAULT = { code: 'gas.volume.too-small', path: 'gas', got: '1', wanted: 'more than 2' };

const solver: Pick<Solver, 'chassisReading' | 'wantedCurve'> = {
  chassisReading: ({ name }, { wheelTravel_mm }) => {
    if (name === 'unruly') throw new InputError(FAULT);
    return { status: 'incomplete', missing: wheelTravel_mm === undefined ? [] : ['spring'] };
  },
  wantedCurve: (_, { speeds_m_s }) => ({ status: 'wanted', force_N: speeds_m_s }),
};

describe('the jobs of the chassis', () => {
  it('hand back what the solver reads, or why it does not', async () => {
    const run = (job: Job) => createSolverApi(solver as Solver).run({ runId: 1, job }, () => {});
    const project = { name: 'good' } as Project;
    const asked = { project, wheelTravel_mm: 30, curves: {} };
    expect(await run({ kind: 'chassis', request: asked })).toMatchObject({ result: { missing: ['spring'] } });
    const unruly = { ...asked, project: { name: 'unruly' } as Project };
    expect(await run({ kind: 'chassis', request: unruly })).toMatchObject({
      status: 'failed',
      error: { fault: FAULT },
    });
    const goal = { lowSpeedRatio: 0.3, highSpeedRatio: 0.1, kneeSpeed_m_s: 0.2 };
    const request = { project, wheelTravel_mm: 30, compression: goal, rebound: goal, speeds_m_s: [0.1] };
    expect(await run({ kind: 'wanted-curve', request })).toMatchObject({ result: { force_N: [0.1] } });
  });
});
