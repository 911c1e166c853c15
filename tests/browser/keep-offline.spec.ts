import { cpSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Page } from 'playwright-core';
import { describe, expect, it } from 'vitest';
import { BENCH_FOLDER } from '../../scripts/lib/build.mjs';
import { listOfflineFiles } from '../../scripts/lib/offline-files.mjs';
import { createStaticServer, listenFrom } from '../../scripts/lib/static-server.mjs';
import { text } from '../../src/ui/text/en.ts';
import { keeping } from '../../src/ui/text/keeping.ts';
import { barriers, cell, force, fromMenu, kept, settled } from './bench-page.ts';
import { benchAddress, withPage } from './harness.ts';
import { secondTab } from './keep-page.ts';

const DESK = { viewport: { width: 1440, height: 900 } };
const ALLOWED = { ...DESK, serviceWorkers: 'allow' } as const;

/** A page that opens anew takes its time. */
const PATIENT = { timeout: 15_000 };
/** The browser fetches the icon of a tab past the service worker; every failed request is named by its address besides. */
const NO_ICON = [/mark\.svg net::ERR_INTERNET_DISCONNECTED/, /^console error: .*net::ERR_INTERNET_DISCONNECTED$/];
/** Asked for on purpose, to see that there is no network. */
const CUT_OFF = [/not-in-the-cache/, /^console error: Failed to load resource: net::ERR_FAILED$/];
const OFFLINE = { ...ALLOWED, expected: [...NO_ICON, ...CUT_OFF] };

const count = (page: Page): Promise<string> => cell(page, 0, 'count').inputValue();
const bar = (page: Page) => page.locator('[data-bar=update]');

/** Everything is in the cache, and the page will be served from there. */
const offlineReady = (page: Page): Promise<unknown> =>
  page.evaluate(async () => {
    const { active } = await navigator.serviceWorker.ready;
    if (active?.state !== 'activated')
      await new Promise((done) => active?.addEventListener('statechange', done, { once: true }));
  });

describe('without a network', () => {
  it('the bench opens again, solves, draws its charts, and keeps edits', () =>
    withPage(async (page) => {
      await settled(page);
      await cell(page, 0, 'count').fill('3');
      await kept(page);
      await offlineReady(page);
      await page.context().setOffline(true);
      await page.reload();
      await settled(page);
      expect(await count(page)).toBe('3');
      expect(await page.evaluate(() => fetch('not-in-the-cache').then(String, () => 'cut off'))).toBe('cut off');
      expect(await page.evaluate(() => globalThis.crossOriginIsolated)).toBe(true);
      const before = await force(page);
      await cell(page, 0, 'thickness_mm').fill('0.1 + 0.3');
      await expect.poll(() => force(page)).not.toBe(before);
      await kept(page);
      await page.reload();
      await settled(page);
      expect(await cell(page, 0, 'thickness_mm').inputValue()).toBe('0.4');
      expect(await page.locator('.saving.failed').count()).toBe(0);
    }, OFFLINE));

  it('a new tab opens too, and a demo not looked at before', () =>
    withPage(async (first) => {
      await settled(first);
      await offlineReady(first);
      await first.context().setOffline(true);
      const page = await secondTab(first);
      await fromMenu(page, keeping.projects.open);
      await page
        .getByRole('dialog')
        .getByRole('button', { name: /Mountain-bike/ })
        .click();
      await page.getByRole('dialog').waitFor({ state: 'detached' });
      await kept(page);
      await settled(page);
    }, OFFLINE));
});

describe('what is kept for it', () => {
  it('is every built file, each under the hash of its content; the version follows from them', async () => {
    const script = await (await fetch(`${benchAddress()}service-worker.js`)).text();
    const built = JSON.parse(/^const FILES = (\{.*\});\n/.exec(script)?.[1] ?? '{}');
    expect(built).toEqual(listOfflineFiles(BENCH_FOLDER));
    const paths = built.files.map(({ path }: { path: string }) => path);
    for (const part of [
      /^index\.html$/,
      /^assets\/index-.*\.js$/,
      /plotly-.*\.js$/,
      /solver\.worker-.*\.js$/,
      /\.css$/,
    ])
      expect(paths.filter((path: string) => part.test(path)).length).toBeGreaterThan(0);
    for (const { path, hash } of built.files) {
      const bytes = await (await fetch(benchAddress() + path)).arrayBuffer();
      const digest = Buffer.from(await crypto.subtle.digest('SHA-256', bytes)).toString('hex');
      expect(`${path} ${digest}`).toBe(`${path} ${hash}`);
    }
  });

  it('is asked for anew each time where it has no hash in its name, and never where it has', async () => {
    const cacheOf = async (path: string) => (await fetch(benchAddress() + path)).headers.get('Cache-Control');
    expect(await cacheOf('service-worker.js')).toBe('no-cache');
    expect(await cacheOf('manifest.webmanifest')).toBe('no-cache');
    const hashed = listOfflineFiles(BENCH_FOLDER).files.filter(({ path }) => path.startsWith('assets/'));
    expect(await cacheOf(hashed[0].path)).toContain('immutable');
  });

  it('a page without leave for service workers works as before', () =>
    withPage(
      async (page) => {
        await settled(page);
        expect(await page.evaluate(() => caches.keys())).toEqual([]);
      },
      { ...DESK },
    ));
});

/** Which of the two the page came from; the bench says nothing of it itself. */
const version = (page: Page): Promise<string> =>
  page.evaluate(() => document.querySelector<HTMLMetaElement>('meta[name=version]')?.content ?? 'first');

/** A bench of its own, whose files can change: a newer version of the first one. */
async function onOwnBench(test: (page: Page, publish: () => void, spoil: () => void) => Promise<void>): Promise<void> {
  const folder = mkdtempSync(join(tmpdir(), 'shimwright-bench-'));
  cpSync(BENCH_FOLDER, folder, { recursive: true });
  const server = createStaticServer(folder);
  const address = await listenFrom(server, 0);
  const [worker, page] = [join(folder, 'service-worker.js'), join(folder, 'index.html')];
  const body = readFileSync(worker, 'utf8').replace(/^const FILES = .*;\n/, '');
  const rename = (): void =>
    writeFileSync(
      page,
      readFileSync(page, 'utf8').replace('</title>', '</title><meta name="version" content="newer" />'),
    );
  const list = (): void => writeFileSync(worker, `const FILES = ${JSON.stringify(listOfflineFiles(folder))};\n${body}`);
  try {
    await withPage(
      async (first) => {
        await first.goto(address);
        await settled(first);
        await test(
          first,
          () => {
            rename();
            list();
          },
          () => {
            list();
            rename();
            writeFileSync(worker, readFileSync(worker, 'utf8').replace('"version":"', '"version":"x'));
          },
        );
      },
      {
        ...ALLOWED,
        path: 'mark.svg',
        expected: [/asked elsewhere/, /status of 404/, /favicon/, /another version of it/],
      },
    );
  } finally {
    server.close();
    server.closeAllConnections();
    rmSync(folder, { recursive: true, force: true });
  }
}

/** @returns what became of the newer version: `installed` waits to be taken, `redundant` was given up */
const askForUpdate = (page: Page): Promise<string | undefined> =>
  page.evaluate(async () => {
    const registration = await navigator.serviceWorker.getRegistration();
    await registration?.update();
    const newer = registration?.installing;
    if (newer) await new Promise((done) => newer.addEventListener('statechange', done, { once: true }));
    return newer?.state ?? registration?.waiting?.state;
  });

describe('a new version', () => {
  it('is offered, not forced; it comes when the person takes it, with the work', () =>
    onOwnBench(async (page, publish) => {
      await offlineReady(page);
      await page.reload();
      await settled(page);
      publish();
      expect(await askForUpdate(page)).toBe('installed');
      await bar(page).waitFor();
      expect(await bar(page).textContent()).toContain(keeping.update.waiting);
      expect(await barriers(page)).toEqual([]);
      await page.reload();
      await settled(page);
      expect(await version(page)).toBe('first');
      await bar(page).waitFor();
      await cell(page, 0, 'count').fill('6');
      await bar(page).getByRole('button', { name: keeping.update.now }).click();
      await expect.poll(() => version(page), PATIENT).toBe('newer');
      await settled(page);
      expect(await count(page)).toBe('6');
      expect(await bar(page).count()).toBe(0);
      expect(await page.evaluate(() => caches.keys())).toHaveLength(2);
    }));

  it('taken in one tab is told in another, which goes on with the version before', () =>
    onOwnBench(async (page, publish) => {
      await offlineReady(page);
      await page.reload();
      await settled(page);
      const second = await secondTab(page, undefined, page.url());
      publish();
      await askForUpdate(page);
      await bar(second).waitFor();
      await bar(second).getByRole('button', { name: keeping.update.now }).click();
      await expect.poll(() => version(second), PATIENT).toBe('newer');
      await expect.poll(() => bar(page).textContent(), PATIENT).toContain(keeping.update.taken);
      expect(await version(page)).toBe('first');
      await page.getByRole('button', { name: text.chart.tabs.paths, exact: true }).click();
      await settled(page);
    }));

  it('whose files do not fit together is not taken in', () =>
    onOwnBench(async (page, _publish, spoil) => {
      await offlineReady(page);
      await page.reload();
      await settled(page);
      spoil();
      expect(await askForUpdate(page)).toBe('redundant');
      await page.reload();
      await settled(page);
      expect(await version(page)).toBe('first');
      expect(await bar(page).count()).toBe(0);
    }));
});

describe('the installed bench', () => {
  it('has a manifest that the browser takes, with icons of the sizes that it says', () =>
    withPage(async (page) => {
      const session = await page.context().newCDPSession(page);
      const { errors, url } = await session.send('Page.getAppManifest');
      expect(errors).toEqual([]);
      const { icons, start_url } = await (await fetch(url)).json();
      expect(new URL(start_url, url).href).toBe(benchAddress());
      for (const { src, sizes, type } of icons) {
        const answer = await fetch(new URL(src, url));
        expect(answer.headers.get('Content-Type')).toBe(type);
        if (sizes === 'any') continue;
        const png = Buffer.from(await answer.arrayBuffer());
        // Width and height stand at bytes 16 and 20 of a PNG file (ISO/IEC 15948, the IHDR chunk).
        expect(`${png.readUInt32BE(16)}x${png.readUInt32BE(20)}`).toBe(sizes);
      }
      await offlineReady(page);
      const { installabilityErrors } = await session.send('Page.getInstallabilityErrors');
      expect(installabilityErrors.map(({ errorId }) => errorId).filter((id) => id !== 'in-incognito')).toEqual([]);
    }, ALLOWED));
});
