/** The figures as lines to read, each with what is wanted beside it. */

/** @typedef {Awaited<ReturnType<typeof import('./measure-page.mjs').measurePage>> & { load: number }} Figures */
/** @typedef {ReturnType<typeof import('./statistics.mjs').spreadOf>} Spread */

const ms = (/** @type {number} */ value) => `${value.toFixed(0)} ms`;

/**
 * @param {string} what
 * @param {Spread} spread
 * @param {string} wanted
 */
const spreadLine = (what, { median_ms, p95_ms, most_ms, runs }, wanted) =>
  `${what.padEnd(34)} ${ms(median_ms)} median, ${ms(p95_ms)} p95, ${ms(most_ms)} most of ${runs} (${wanted})`;

/**
 * @param {string} bands
 * @param {Figures['longestTask']['withBands']} tabs
 */
const taskLines = (bands, tabs) =>
  tabs.map(({ tab, longest_ms, over50, busy_ms, edits }) => {
    const found = over50 === 0 ? 'under 50 ms' : `${ms(longest_ms)}, ${over50} of 50 ms or more`;
    return `${`  ${tab}, ${bands}`.padEnd(34)} ${ms(busy_ms)} of the processor; by the clock ${found}, in ${edits} edits`;
  });

/** @param {Figures} figures */
export function tableOf({ editToRedraw, longestTask, firstPaint, chartsLibraryBeforeFirstPaint, load }) {
  return [
    spreadLine('Edit to curves, one build changed', editToRedraw.oneBuild, 'wanted: 50 ms p95'),
    spreadLine('Edit to curves, both changed', editToRedraw.bothBuilds, 'wanted: 50 ms p95'),
    'Longest task of the page (wanted: none over 50 ms)',
    ...taskLines('without bands', longestTask.withoutBands),
    ...taskLines('with bands', longestTask.withBands),
    spreadLine('First paint, files at hand', firstPaint, 'wanted: 1000 ms'),
    `Charts library before first paint  ${chartsLibraryBeforeFirstPaint ? 'yes (wanted: no)' : 'no'}`,
    `Load of the machine at the start   ${load.toFixed(1)}`,
  ].join('\n');
}
