/** What runs inside the page: it is sent there as text, and so uses nothing from outside. */

/** Notes every task of the page's thread of 50 ms or more, from now on. */
export function watchTasks() {
  /** @type {number[]} */
  const tasks = [];
  const page = /** @type {{ longTasks?: () => number[] } & typeof globalThis} */ (globalThis);
  const note = (/** @type {PerformanceEntryList} */ entries) => {
    for (const { duration } of entries) tasks.push(duration);
  };
  const observer = new PerformanceObserver((list) => note(list.getEntries()));
  observer.observe({ type: 'longtask' });
  page.longTasks = () => {
    note(observer.takeRecords());
    return tasks.splice(0);
  };
}

export const takeTasks = () => /** @type {{ longTasks?: () => number[] }} */ (globalThis).longTasks?.() ?? [];

/**
 * Types into a box and waits until every curve of the chart is that of the new number.
 * @param {{ box: string, typed: string }} edit
 * @returns {Promise<number>} from the key to the curves in the page, ready for the next frame [ms]
 */
export function editAndRedraw({ box, typed }) {
  const input = /** @type {HTMLInputElement} */ (document.querySelector(box));
  const plot = /** @type {Element} */ (document.querySelector('.plot'));
  const curves = () => [...plot.querySelectorAll('path.js-line')].map((path) => path.getAttribute('d')).join();
  const before = curves();
  return new Promise((resolve) => {
    const started = performance.now();
    const seen = new MutationObserver(() => {
      if (plot.classList.contains('stale') || curves() === before) return;
      seen.disconnect();
      resolve(performance.now() - started);
    });
    seen.observe(plot, { subtree: true, childList: true, attributes: true });
    input.value = typed;
    input.dispatchEvent(new InputEvent('input', { bubbles: true }));
  });
}

/**
 * Types into a box, without waiting.
 * @param {{ box: string, typed: string }} edit
 */
export function typeInto({ box, typed }) {
  const input = /** @type {HTMLInputElement} */ (document.querySelector(box));
  input.value = typed;
  input.dispatchEvent(new InputEvent('input', { bubbles: true }));
}

/** Everything on show belongs to what is typed: curves, readings, their bands where there are any, and cycles. */
export function isSettled() {
  if (document.querySelector('.plot.stale, .readings td.stale, [data-cycle]:not([data-cycle=done])')) return false;
  return [...document.querySelectorAll('[data-row=band] td')].every((cell) => /\d/.test(cell.textContent ?? ''));
}

/** When the first paint was, and whether the charts library was asked for before it [ms]. */
export function firstPaint() {
  const paint = performance.getEntriesByName('first-contentful-paint')[0]?.startTime;
  if (paint === undefined) return undefined;
  const library = performance.getEntriesByType('resource').find(({ name }) => name.includes('plotly'));
  return { paint_ms: paint, libraryBeforeIt: library !== undefined && library.startTime < paint };
}
