/** How long the tasks of the page's thread kept a processor busy: on a machine with other work, the clock on the wall tells more. */

/** @typedef {import('playwright-core').CDPSession} Session */
/** @typedef {{ name: string, ph: string, pid: number, tid: number, tdur?: number, args?: { name?: string } }} TraceEvent */

const CATEGORIES = ['toplevel', '__metadata'];
const TASK = 'ThreadControllerImpl::RunTask';
const PAGE_THREAD = 'CrRendererMain';

/**
 * The longest task of the page's thread while something runs, in processor time.
 * @param {Session} session
 * @param {() => Promise<void>} run
 * @returns {Promise<number>} [ms]
 */
export async function busiestTask(session, run) {
  /** @type {TraceEvent[]} */
  const events = [];
  /** @param {{ value: object[] }} chunk */
  const collect = ({ value }) => events.push(.../** @type {TraceEvent[]} */ (value));
  session.on('Tracing.dataCollected', collect);
  const traceConfig = { includedCategories: CATEGORIES, excludedCategories: ['*'] };
  await session.send('Tracing.start', { transferMode: 'ReportEvents', traceConfig });
  await run();
  const complete = new Promise((resolve) => session.once('Tracing.tracingComplete', resolve));
  await session.send('Tracing.end');
  await complete;
  session.off('Tracing.dataCollected', collect);
  return longestOf(events);
}

/** @param {readonly TraceEvent[]} events */
export function longestOf(events) {
  const thread = (/** @type {TraceEvent} */ { pid, tid }) => `${pid} ${tid}`;
  const named = events.filter(({ name, args }) => name === 'thread_name' && args?.name === PAGE_THREAD);
  const pages = new Set(named.map(thread));
  const tasks = events.filter((event) => event.name === TASK && event.ph === 'X' && pages.has(thread(event)));
  if (tasks.length === 0)
    throw new Error(`the trace has no ${TASK} of ${PAGE_THREAD}: this Chromium names them otherwise`);
  return Math.max(...tasks.map(({ tdur }) => (tdur ?? 0) / 1000));
}
