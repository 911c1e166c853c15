import { describe, expect, it } from 'vitest';
import { InputError } from '../../src/units/fault.ts';
import {
  type CycleResult,
  type ForcesResult,
  isReplyTo,
  type LiftResult,
  PROTOCOL_VERSION,
  type Project,
  type WireReply,
} from '../../workers/protocol.ts';
import type { Solver } from '../../workers/solver.ts';
import { createSolverApi } from '../../workers/solver-api.ts';
import { curve, FAULT, fakeSolver as solver, THEORIES } from './helpers/fake-solver.ts';
import { liftRequest, request } from './helpers/requests.ts';

type Point = ReturnType<Solver['forceCurveForBuild']>['points'][number];

const noProgress = () => {};
const raised = () => {
  const stopFlag = new SharedArrayBuffer(4);
  new Int32Array(stopFlag)[0] = 1;
  return stopFlag;
};

describe('createSolverApi', () => {
  it('fits, tells how far it is, and passes a refusal on', async () => {
    const told: number[] = [];
    const asked = {
      project: request('any').project,
      measurementIds: ['a', 'b'],
      names: ['portMomentum'],
      theory: 'small-deflection',
    } as const;
    const ask = (buildId: string) =>
      createSolverApi(solver).run({ runId: 4, job: { kind: 'fit', request: { ...asked, buildId } } }, (s) =>
        told.push(s),
      );
    const result = { status: 'too-few', reason: 'stock: 2 measurements for portMomentum' };
    expect([await ask('stock'), told]).toEqual([{ runId: 4, status: 'done', result }, [0.25]]);
    expect(await ask('unruly')).toMatchObject({ runId: 4, status: 'failed', error: { code: 'invalid-input' } });
  });

  it('says what a fit may change, and passes a refusal on', async () => {
    const ask = (buildId: string) => {
      const asked = { project: request('any').project, buildId };
      return createSolverApi(solver).run({ runId: 5, job: { kind: 'fit-choices', request: asked } }, noProgress);
    };
    expect(await ask('stock')).toMatchObject({
      runId: 5,
      status: 'done',
      result: { choices: [{ name: 'jetDischarge', source: 'stock' }] },
    });
    expect(await ask('unruly')).toMatchObject({ runId: 5, status: 'failed', error: { code: 'invalid-input' } });
  });

  it('says which protocol it speaks', async () => {
    expect(await createSolverApi(solver).hello('nobody-else')).toEqual({ protocol: PROTOCOL_VERSION });
  });

  it('hands the lift of the solver back under its run id', async () => {
    const reply = await createSolverApi(solver).run(
      { runId: 7, job: { kind: 'lift', request: liftRequest } },
      noProgress,
    );
    expect(reply).toMatchObject({ runId: 7, status: 'done', result: { theory: 'small-deflection' } });
    expect(((reply as { result: LiftResult }).result.points[0] as { reason: string }).reason).toBe('made by a test');
  });

  it('counts progress over all builds of a request', async () => {
    const seen: number[] = [];
    const job = {
      kind: 'force-curves',
      request: { ...request(''), buildIds: ['a', 'b'], speeds_m_s: [1, 2] },
    } as const;
    await createSolverApi(solver).run({ runId: 1, job }, (fraction) => seen.push(fraction));
    expect(seen).toEqual([0.25, 0.5, 0.75, 1]);
  });

  it('runs one start of a search: counts its steps, refuses with the fault, and stops when asked', async () => {
    const api = createSolverApi(solver);
    const settings = { seed: 1, steps: 4, answers: 1, theory: 'small-deflection' } as const;
    const asked = (buildId: string) => ({ buildId, places: [], aim: [], source: { kind: 'drawer' } }) as const;
    const job = (buildId: string) => {
      const of = { project: {} as Project, request: asked(buildId), settings, start: 3 };
      return { kind: 'search-start', request: of } as const;
    };
    const seen: number[] = [];
    const reply = await api.run({ runId: 1, job: job('a') }, (fraction) => seen.push(fraction));
    expect(reply).toMatchObject({ status: 'done', result: { start: 3, counts: { proposed: 4 } } });
    expect(seen).toEqual([0.25, 0.5, 0.75, 1]);
    const refused = await api.run({ runId: 2, job: job('unruly') }, noProgress);
    expect(refused).toMatchObject({ status: 'failed', error: { code: 'invalid-input', fault: FAULT } });
    const stopped = await api.run({ runId: 3, job: job('a'), stopFlag: raised() }, noProgress);
    expect(stopped).toEqual({ runId: 3, status: 'stopped' });
  });

  it('keeps a build whose id is a word of the language', async () => {
    const job = { kind: 'force-curves', request: request('__proto__') } as const;
    const reply = await createSolverApi(solver).run({ runId: 1, job }, noProgress);
    expect(Object.keys((reply as { result: { curves: object } }).result.curves)).toEqual(['__proto__']);
  });

  it('hands the position of the stroke on, and asks for bands where they are asked for', async () => {
    const seen: object[] = [];
    const watching: Solver = {
      ...solver,
      forceCurveForBuild: (_, __, options) => {
        seen.push(options);
        return curve(1);
      },
    };
    const asked = { ...request('a'), stroke_m: 0.02 };
    for (const kind of ['force-curves', 'force-bands'] as const)
      await createSolverApi(watching).run({ runId: 1, job: { kind, request: asked } }, noProgress);
    const plain = { speeds_m_s: [0.1], theory: 'small-deflection', stroke_m: 0.02 };
    expect(seen).toEqual([plain, { ...plain, bands: true }]);
  });

  it('sends of a banded curve the bands alone: none of its stacks, and nothing where the force has no band', async () => {
    const band = { status: 'converged', low_N: 1, high_N: 3, mostFrom: 'jetDischarge' } as const;
    const failed = { status: 'beyond-table', reason: 'jetDischarge: too far' } as const;
    const bands = [
      { ...band, parts: [{ coefficient: 'jetDischarge', down_N: 1, up_N: 1 }] },
      failed,
      undefined,
    ] as const;
    const banded: Solver = {
      ...solver,
      forceCurveForBuild: (_, buildId) => {
        if (buildId === 'unruly') throw new InputError(FAULT);
        const solved = bands.map(
          (each) => ({ status: 'converged', shaftSpeed_m_s: 1, band: each }) as unknown as Point,
        );
        return { ...curve(1), points: [...solved, { ...failed, shaftSpeed_m_s: 2 }] };
      },
    };
    const asked = { ...request('a'), buildIds: ['unruly', 'a'] };
    const reply = await createSolverApi(banded).run(
      { runId: 1, job: { kind: 'force-bands', request: asked } },
      noProgress,
    );
    expect((reply as { result: object }).result).toEqual({
      builds: {
        unruly: { status: 'failed', error: { code: 'invalid-input', message: expect.any(String), fault: FAULT } },
        a: { status: 'solved', bands: [band, failed, null, null] },
      },
    });
  });

  it('drives each build over time; one that is refused leaves the others their answers', async () => {
    const drive = { kind: 'sine', stroke_m: 0.05, frequency_Hz: 2, middle_m: 0.1 } as const;
    const asked = { project: {} as Project, buildIds: ['unruly', 'good'], drive, theory: 'small-deflection' } as const;
    const reply = await createSolverApi(solver).run({ runId: 1, job: { kind: 'cycle', request: asked } }, noProgress);
    expect((reply as { result: CycleResult }).result.cycles).toEqual({
      unruly: { status: 'failed', error: { code: 'invalid-input', message: expect.any(String), fault: FAULT } },
      good: { status: 'unfinished', reason: 'good ends early' },
    });
  });

  it('hands the forces of each build back, at the position asked for; one that is refused leaves the others theirs', async () => {
    const asked = { ...request('unruly'), buildIds: ['unruly', 'good'], speeds_m_s: [-1, 1], stroke_m: 0.03 };
    const reply = await createSolverApi(solver).run({ runId: 1, job: { kind: 'forces', request: asked } }, noProgress);
    expect((reply as { result: ForcesResult }).result.builds).toEqual({
      unruly: { status: 'failed', error: { code: 'invalid-input', message: expect.any(String), fault: FAULT } },
      good: {
        status: 'solved',
        forces: { shaftSpeed_m_s: [-1, 1], force_N: [0.03, 0.03], gasForce_N: [0, 0], reasons: [], theories: THEORIES },
      },
    });
  });

  it('solves no build once it is asked to stop', async () => {
    let calls = 0;
    const counting: Solver = {
      ...solver,
      forceCurveForBuild: () => {
        calls += 1;
        return curve(1);
      },
    };
    const job = { kind: 'force-curves', request: request('a') } as const;
    const reply = await createSolverApi(counting).run({ runId: 1, job, stopFlag: raised() }, noProgress);
    expect(reply).toEqual({ runId: 1, status: 'stopped' });
    expect(calls).toBe(0);
  });
});

describe('isReplyTo', () => {
  const reply: WireReply = { runId: 3, status: 'failed', error: { code: 'solver-failed', message: 'no' } };
  it.each([
    [reply, true],
    [{ ...reply, runId: 4 }, false],
    [{ runId: 3, status: 'failed' }, false],
    [{ runId: 3, status: 'stopped' }, true],
    [{ runId: 3, status: 'done', result: {} }, true],
    [{ runId: 3, status: 'done' }, false],
    [{ runId: 3, status: 'perhaps' }, false],
    [null, false],
  ])('%j: %s', (value, expected) => {
    expect(isReplyTo(3, value)).toBe(expected);
  });
});
