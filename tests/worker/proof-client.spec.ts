import { readdirSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { reportOn } from '../../src/proof/report.ts';
import { proofCases } from '../../workers/proof-cases.ts';
import { type CaseReport, runProof, SolverError } from '../../workers/proof-client.ts';
import { spawnFixture } from './helpers/node-worker.ts';

function run(way: string) {
  const heard: [CaseReport, number][] = [];
  const { finished, stop } = runProof((report, total) => heard.push([report, total]), spawnFixture('proof', way));
  return { heard, finished, stop };
}

const failureOf = (promise: Promise<unknown>): Promise<SolverError> =>
  promise.then(
    () => {
      throw new Error('it did not fail');
    },
    (error) => error,
  );

describe('the proof’s worker', () => {
  it('hands over case by case, a spoilt one among them, before the run ends', async () => {
    const { heard, finished } = run('as it is');
    expect(await finished).toBe(2);
    expect(heard.map(([report, total]) => [report.status, total])).toEqual([
      ['unreadable', 2],
      ['judged', 2],
    ]);
  });

  it('gives the numbers that the same case gives in this thread', async () => {
    const { heard, finished } = run('as it is');
    await finished;
    const here = reportOn(proofCases.find(({ folder }) => folder === 'hydraulics/sharp-orifice')!);
    expect(heard[1][0]).toEqual(here);
  });

  it('that ends in the middle is told, and what it reported stays', async () => {
    const { heard, finished } = run('exits');
    expect(await failureOf(finished)).toMatchObject({ name: 'SolverError', code: 'worker-crashed' });
    expect(heard).toHaveLength(1);
  });

  it('that cannot load its cases says so', async () => {
    const error = await failureOf(run('cannot load').finished);
    expect(error).toMatchObject({ code: 'solver-failed', message: 'no cases here' });
  });

  it('that is stopped settles as closed, with another one alive', async () => {
    const [stuck, other] = [run('never ends'), run('as it is')];
    stuck.stop();
    expect((await failureOf(stuck.finished)).code).toBe('closed');
    expect(await other.finished).toBe(2);
  });

  it('that does not start settles too', async () => {
    const { finished } = runProof(
      () => {},
      () => {
        throw new Error('no worker here');
      },
    );
    const error = await failureOf(finished);
    expect(error).toBeInstanceOf(SolverError);
    expect(error.message).toMatch(/no worker here/);
  });
});

describe('the bundled cases', () => {
  it('are every folder of reference-cases, each with its three texts', () => {
    const folders = (path: string) =>
      readdirSync(path, { withFileTypes: true })
        .filter((entry) => entry.isDirectory())
        .map(({ name }) => name);
    const stored = folders('reference-cases').flatMap((field) =>
      folders(`reference-cases/${field}`).map((id) => `${field}/${id}`),
    );
    expect(proofCases.map(({ folder }) => folder)).toEqual(stored.sort());
    expect(proofCases.filter((texts) => !texts.case || !texts.expected || !texts.source)).toEqual([]);
  });
});
