/** `npm run -s bench -- [--json] [NAME …]`: times the named cases, or all of them. Ends with 1 when a result is wrong. */
import { runBench } from './bench-case.ts';
import { BENCH_CASES } from './cases.ts';
import { YARDSTICK } from './yardstick.ts';

const words = process.argv.slice(2);
const names = words.filter((word) => word !== '--json');
const unknown = names.filter((name) => !BENCH_CASES.some((bench) => bench.name === name));

if (unknown.length > 0) {
  console.error(`no case ${unknown.join(', ')}; the cases are ${BENCH_CASES.map(({ name }) => name).join(', ')}`);
  process.exitCode = 2;
} else {
  try {
    const chosen = BENCH_CASES.filter(({ name, longRuns }) =>
      names.length === 0 ? longRuns === undefined : names.includes(name),
    );
    const options = { now: () => performance.now(), warmUps: 20, runs: 50 };
    const results = chosen.map((bench) => [bench.name, runBench(bench, options)] as const);
    const yardstick_ms = runBench(YARDSTICK, options).median_ms;
    if (words.includes('--json'))
      console.log(
        JSON.stringify(
          { format: 'shimwright/bench', version: 1, yardstick_ms, ...Object.fromEntries(results) },
          null,
          2,
        ),
      );
    else
      for (const [name, { median_ms, p95_ms, perSecond, verdict }] of results)
        console.log(
          `${name}: ${median_ms.toFixed(2)} ms median, ${p95_ms.toFixed(2)} ms p95${perSecond ? `, ${perSecond.toFixed(0)} a second` : ''}${verdict ? `; ${verdict}` : ''}`,
        );
  } catch (error) {
    console.error(error instanceof Error ? error.message : error);
    process.exitCode = 1;
  }
}
