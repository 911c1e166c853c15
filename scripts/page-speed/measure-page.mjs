/** Drives the built bench as a person would and reads off how long it takes. */
import { chromium } from 'playwright-core';
import { BENCH_FOLDER } from '../lib/build.mjs';
import { findChromium, NO_CHROMIUM } from '../lib/chromium.mjs';
import { createStaticServer, listenFrom } from '../lib/static-server.mjs';
import { editAndRedraw, firstPaint, isSettled, takeTasks, typeInto, watchTasks } from './in-page.mjs';
import { spreadOf } from './statistics.mjs';
import { busiestTask } from './trace-tasks.mjs';

/** @typedef {import('playwright-core').Page} Page */

/** What is typed: one shim changes one build, the temperature of the oil changes all. */
const EDITS = {
  oneBuild: { box: '[data-cell="0:thickness_mm"]', from: 0.25, step: 0.0005 },
  bothBuilds: { box: '.conditions .field:last-child input', from: 40, step: 0.25 },
};
const TABS = '.charts .chart-tabs button';
/** Between two edits, as a quick hand types; longer, so that what comes late is seen [ms]. */
const PAUSE_MS = 60;
const LATE_MS = 250;
/** Edits on each tab, and loads of the page. */
const TAB_EDITS = 8;
const LOADS = 7;
const DESK = { width: 1440, height: 900 };

/**
 * @template T
 * @param {(address: string, browser: import('playwright-core').Browser) => Promise<T>} run
 */
async function withBrowser(run) {
  const executablePath = findChromium();
  if (!executablePath) throw new Error(NO_CHROMIUM);
  const server = createStaticServer(BENCH_FOLDER);
  const browser = await chromium.launch({ executablePath, args: ['--no-sandbox', '--disable-gpu'] });
  try {
    return await run(await listenFrom(server, 0), browser);
  } finally {
    await browser.close();
    server.close();
    server.closeAllConnections();
  }
}

/**
 * A page of its own, with or without the bands of the curves.
 * @param {import('playwright-core').Browser} browser
 * @param {string} address
 * @param {'hidden' | 'shown'} bands
 */
async function openBench(browser, address, bands) {
  const context = await browser.newContext({ viewport: DESK, serviceWorkers: 'block' });
  await context.addInitScript(`localStorage.setItem('shimwright.bands', '${bands}')`);
  const page = await context.newPage();
  await page.goto(address);
  await page.locator('.plot-board path.js-line').first().waitFor();
  await page.waitForFunction(isSettled);
  await page.evaluate(watchTasks);
  return page;
}

let typedSoFar = 0;
/** Never the same number twice, or the answer would be at hand. @param {{ box: string, from: number, step: number }} edit */
function nextEdit({ box, from, step }) {
  typedSoFar += 1;
  return { box, typed: String(Number((from + step * typedSoFar).toFixed(6))) };
}

/**
 * @param {Page} page
 * @param {keyof typeof EDITS} which
 * @param {number} count
 */
async function measureEdits(page, which, count) {
  const times = [];
  for (let i = 0; i < count; i++) {
    times.push(await page.evaluate(editAndRedraw, nextEdit(EDITS[which])));
    await page.waitForTimeout(PAUSE_MS);
  }
  return spreadOf(times);
}

/** @param {Page} page */
async function editTab(page) {
  for (let i = 0; i < TAB_EDITS; i++) {
    await page.evaluate(typeInto, nextEdit(i % 2 === 0 ? EDITS.oneBuild : EDITS.bothBuilds));
    await page.waitForTimeout(LATE_MS);
    await page.waitForFunction(isSettled);
  }
  await page.waitForTimeout(LATE_MS);
}

/** The longest task of the page's thread while one tab is edited, by the clock (0 when none reached 50 ms) and by the processor. @param {Page} page */
async function longestTask(page) {
  const session = await page.context().newCDPSession(page);
  await page.waitForTimeout(LATE_MS);
  await page.evaluate(takeTasks);
  const busy_ms = await busiestTask(session, () => editTab(page));
  const tasks = await page.evaluate(takeTasks);
  await session.detach();
  return { longest_ms: Math.max(0, ...tasks), over50: tasks.length, busy_ms, edits: TAB_EDITS };
}

/** @param {Page} page */
async function measureTabs(page) {
  const tabs = [];
  for (const button of await page.locator(TABS).all()) {
    await button.click();
    await page.waitForFunction(isSettled);
    tabs.push({ tab: (await button.textContent()) ?? '', ...(await longestTask(page)) });
  }
  return tabs;
}

/** With every file at hand. @param {Page} page */
async function measureLoads(page) {
  const paints = [];
  for (let i = 0; i < LOADS; i++) {
    await page.reload();
    await page.waitForFunction(firstPaint);
    await page.waitForFunction(isSettled);
    const found = await page.evaluate(firstPaint);
    if (found) paints.push(found);
  }
  return {
    firstPaint: spreadOf(paints.map(({ paint_ms }) => paint_ms)),
    chartsLibraryBeforeFirstPaint: paints.some(({ libraryBeforeIt }) => libraryBeforeIt),
  };
}

/** @param {number} edits of each kind */
export const measurePage = (edits) =>
  withBrowser(async (address, browser) => {
    const plain = await openBench(browser, address, 'hidden');
    // The first edits warm up what the browser compiles when it is first run.
    await measureEdits(plain, 'bothBuilds', 5);
    const editToRedraw = {
      oneBuild: await measureEdits(plain, 'oneBuild', edits),
      bothBuilds: await measureEdits(plain, 'bothBuilds', edits),
    };
    const withoutBands = await measureTabs(plain);
    const loads = await measureLoads(plain);
    await plain.context().close();
    const banded = await openBench(browser, address, 'shown');
    const withBands = await measureTabs(banded);
    await banded.context().close();
    return { editToRedraw, longestTask: { withoutBands, withBands }, ...loads };
  });
