/** What the page asks for, what its policy stops, and that nothing becomes code that did not come as code. */
import { existsSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Page } from 'playwright-core';
import { describe, expect, it } from 'vitest';
import { BENCH_FOLDER } from '../../scripts/lib/build.mjs';
import { text } from '../../src/ui/text/en.ts';
import { pageWords } from '../../src/ui/text/pages.ts';
import { proofWords } from '../../src/ui/text/proof.ts';
import { cell, onBench, settled } from './bench-page.ts';
import { benchAddress, withPage } from './harness.ts';

/** Breaches of the policy as the browser itself reports them, of page and workers. */
async function breachesOf(page: Page): Promise<string[]> {
  const breaches: string[] = [];
  const browser = await page.context().newCDPSession(page);
  browser.on('Audits.issueAdded', ({ issue }) => {
    const found = issue.details.contentSecurityPolicyIssueDetails;
    if (found)
      breaches.push(`${found.violatedDirective} ${found.blockedURL ?? found.contentSecurityPolicyViolationType}`);
  });
  await browser.send('Audits.enable');
  return breaches;
}

/** Every view once, with an edit, a chart of each kind, the proof and its results as files. */
async function useEverything(page: Page): Promise<void> {
  await settled(page);
  for (const name of Object.values(text.chart.tabs)) await page.getByRole('button', { name, exact: true }).click();
  await cell(page, 0, 'count').fill('2');
  for (const group of await page.locator('details > summary').all()) await group.click();
  await settled(page);
  await page.getByRole('link', { name: pageWords.pages.proof.name, exact: true }).click();
  await page.locator('.run-status[data-phase=done]').waitFor();
  for (const name of [proofWords.run.csv, proofWords.run.json]) {
    const saved = page.waitForEvent('download');
    await page.getByRole('button', { name, exact: true }).click();
    await (await saved).cancel();
  }
  await page.getByRole('link', { name: pageWords.pages.bench.name, exact: true }).click();
  await settled(page);
}

/** A path below the bench's folder, or the whole address when it leads elsewhere. */
const placeOf = (address: string): string =>
  address.startsWith(benchAddress()) ? address.slice(benchAddress().length).replace(/#.*$/, '') : address;

describe('the policy', () => {
  it('is never breached while every view is used, and all that is asked for are files of the build', () =>
    withPage(
      async (page) => {
        page.setDefaultTimeout(15_000);
        const asked = new Map<string, string>();
        page.context().on('request', (request) => asked.set(request.url(), request.method()));
        const breaches = await breachesOf(page);
        await page.goto(benchAddress());
        await useEverything(page);
        const places = [...asked.keys()]
          .filter((url) => !url.startsWith('blob:'))
          .map(placeOf)
          .sort();
        process.stdout.write(
          `\nEvery request of the bench\n${places.map((place) => `  ${place || '(page)'}\n`).join('')}`,
        );
        expect(breaches).toEqual([]);
        expect(places.filter((place) => !existsSync(join(BENCH_FOLDER, place)))).toEqual([]);
        expect(new Set(asked.values())).toEqual(new Set(['GET']));
        for (const part of ['plotly', 'solver.worker', 'proof.worker', 'proof-cases']) {
          expect(
            places.some((place) => place.includes(part)),
            part,
          ).toBe(true);
        }
      },
      { path: 'mark.svg', serviceWorkers: 'block', expected: [/favicon\.ico/, /status of 404/] },
    ));

  it('stops what comes from elsewhere, and text that would become code, and each breach is reported', () =>
    onBench(
      async (page) => {
        const breaches = await breachesOf(page);
        const outcome = await page.evaluate(async () => {
          const far = 'https://elsewhere.example/x';
          for (const kind of ['img', 'script', 'iframe'] as const) {
            document.body.append(Object.assign(document.createElement(kind), { src: far }));
          }
          document.head.append(Object.assign(document.createElement('link'), { rel: 'stylesheet', href: far }));
          // What a test evaluates is let through; what it leaves for later is not.
          const code = await new Promise((resolve) => {
            setTimeout(() => {
              try {
                resolve(Reflect.construct(Function, ['return 1'])());
              } catch (error) {
                resolve((error as Error).name);
              }
            });
          });
          return {
            code,
            fetched: await fetch(far).then(
              () => 'done',
              (error) => error.name,
            ),
          };
        });
        expect(outcome).toMatchObject({ code: 'EvalError', fetched: 'TypeError' });
        const directives = () => new Set(breaches.map((breach) => breach.split(' ')[0]));
        for (const directive of [
          'img-src',
          'script-src-elem',
          'frame-src',
          'style-src-elem',
          'connect-src',
          'script-src',
        ]) {
          await expect.poll(directives).toContain(directive);
        }
      },
      { expected: [/Content Security Policy/, /elsewhere\.example/, /Refused to/] },
    ));

  it('holds in both workers too', () =>
    onBench(
      async (page) => {
        await page.getByRole('link', { name: pageWords.pages.proof.name, exact: true }).click();
        const proof = await page.waitForEvent('worker');
        const refusals = await Promise.all(
          [page.workers()[0], proof].map((worker) =>
            worker.evaluate(async () => {
              const code = await new Promise((resolve) => {
                setTimeout(() => {
                  try {
                    resolve(Reflect.construct(Function, ['return 1'])());
                  } catch (error) {
                    resolve((error as Error).name);
                  }
                });
              });
              const fetched = await fetch('https://elsewhere.example/x').catch((error) => error.name);
              return [code, fetched];
            }),
          ),
        );
        expect(refusals).toEqual([
          ['EvalError', 'TypeError'],
          ['EvalError', 'TypeError'],
        ]);
      },
      { expected: [/Content Security Policy/, /elsewhere\.example/, /Refused to/] },
    ));

  it('stands in the page too, for a server that sends no headers', () =>
    withPage(
      async (page) => {
        await page.route(benchAddress(), async (route) => {
          const response = await route.fetch();
          await route.fulfill({ response, headers: { 'content-type': 'text/html' } });
        });
        const answer = await page.goto(benchAddress());
        expect(answer?.headers()).not.toHaveProperty('content-security-policy');
        await settled(page);
        const fetched = await page.evaluate(() => fetch('https://elsewhere.example/x').catch((error) => error.name));
        expect(fetched).toBe('TypeError');
        const held = await page.locator('meta[http-equiv=Content-Security-Policy]').getAttribute('content');
        expect(held?.split('; ')).toEqual(expect.arrayContaining(["default-src 'none'", "script-src 'self'"]));
      },
      {
        path: 'mark.svg',
        serviceWorkers: 'block',
        expected: [/Content Security Policy/, /elsewhere\.example/, /Refused to/, /favicon\.ico/, /status of 404/],
      },
    ));

  it('finds a page without a script, a style or an address in its text', () => {
    const page = readFileSync(join(BENCH_FOLDER, 'index.html'), 'utf8');
    const scripts = [...page.matchAll(/<script\b([^>]*)>([^<]*)/g)];
    expect(scripts.length).toBeGreaterThan(0);
    expect(scripts.filter(([, attributes, text]) => !/src="\.\//.test(attributes) || text.trim() !== '')).toEqual([]);
    expect(page).not.toMatch(/<style|\son\w+=|https?:|javascript:|(src|href)="(?!\.\/)/);
  });
});
