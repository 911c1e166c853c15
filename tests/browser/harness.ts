/** A page of the bench for one test. Whatever goes wrong in the page fails the test, whether the test looks there or not. */
import { type BrowserContextOptions, type ConsoleMessage, chromium, type Page } from 'playwright-core';
import { inject } from 'vitest';

export interface PageOptions extends BrowserContextOptions {
  /** Opened before the test begins; `undefined` leaves the page empty. */
  readonly path?: string;
  /** Console messages that the test means to cause. */
  readonly expected?: readonly RegExp[];
}

/** The address of the bench, ending in a slash. */
export const benchAddress = (): string => inject('benchAddress');

/** The service worker would fetch every file for every test: only the tests of it let it in. */
const NO_WORKER = 'block';
const WORKER_KEPT_OUT = 'Service Worker registration blocked by Playwright';

/**
 * Opens the bench in a fresh browser context (no storage of an earlier test) and closes it afterwards.
 * Fails on a console error or warning, an uncaught error, a failed or refused request, or a request to another address.
 */
export async function withPage<T>(test: (page: Page) => Promise<T>, options: PageOptions = {}): Promise<T> {
  const { path = '', expected = [], ...contextOptions } = options;
  const browser = await chromium.connect(inject('browserAddress'));
  try {
    const context = await browser.newContext({ serviceWorkers: NO_WORKER, ...contextOptions });
    context.on('page', keysUntilDrawn);
    const page = await context.newPage();
    const problems = watch(page);
    await page.goto(benchAddress() + path);
    const result = await test(page);
    // One more question to the page: what it said before is here once it has answered.
    await page.evaluate(() => undefined);
    const unexpected = problems.filter((problem) => !expected.some((pattern) => pattern.test(problem)));
    if (unexpected.length > 0) throw new Error(`The page complained:\n${unexpected.join('\n')}`);
    return result;
  } finally {
    await browser.close();
  }
}

/**
 * The browser says that a key is pressed before the page has heard of it, and the quicker the test asks, the likelier it sees the page of before.
 * With this, a key is pressed or a word typed once the page has drawn what came of it.
 */
function keysUntilDrawn(page: Page): void {
  const { keyboard } = page;
  const [press, type] = [keyboard.press.bind(keyboard), keyboard.type.bind(keyboard)];
  const drawn = () =>
    page.evaluate(() => new Promise<void>((resolve) => requestAnimationFrame(() => setTimeout(resolve))));
  keyboard.press = (...key) => press(...key).then(drawn);
  keyboard.type = (...words) => type(...words).then(drawn);
}

function watch(page: Page): string[] {
  const problems: string[] = [];
  const report = (problem: string) => problems.push(problem);
  page.on('console', (message) => isTrouble(message) && report(`console ${message.type()}: ${message.text()}`));
  page.on('pageerror', (error) => report(`uncaught: ${error.stack ?? error.message}`));
  page.on('requestfailed', (request) => report(`failed: ${request.url()} ${request.failure()?.errorText ?? ''}`));
  page.on('response', (response) => {
    if (response.status() >= 400) report(`refused: ${response.url()} ${response.status()}`);
  });
  page.on('request', (request) => {
    if (isElsewhere(request.url())) report(`asked elsewhere: ${request.url()}`);
  });
  return problems;
}

const isTrouble = (message: ConsoleMessage): boolean =>
  ['error', 'warning'].includes(message.type()) && message.text() !== WORKER_KEPT_OUT;

const isElsewhere = (url: string): boolean => /^(https?|wss?):/.test(url) && !url.startsWith(benchAddress());
