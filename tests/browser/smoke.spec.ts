import { expect, it } from 'vitest';
import { benchAddress, withPage } from './harness.ts';

it('the bench opens, says its name and complains about nothing', () =>
  withPage(async (page) => {
    expect(await page.title()).toMatch(/Shimwright/);
    await page.getByRole('main').waitFor();
  }));

it('the page is isolated, so that a running calculation can be asked to stop', () =>
  withPage(async (page) => {
    expect(await page.evaluate(() => globalThis.crossOriginIsolated)).toBe(true);
  }));

it('nothing from elsewhere, and no text, becomes code', () =>
  withPage(
    async (page) => {
      await page.evaluate(() => {
        const script = document.createElement('script');
        script.textContent = 'globalThis.cameFromText = true';
        document.head.append(script);
      });
      expect(await page.evaluate(() => 'cameFromText' in globalThis)).toBe(false);
    },
    { expected: [/Content Security Policy/] },
  ));

it('the harness fails a test whose page complains', async () => {
  const complain = (act: () => unknown) => withPage((page) => page.evaluate(act));
  await expect(complain(() => console.warn('a planted warning'))).rejects.toThrow(/a planted warning/);
  await expect(complain(() => fetch('no-such-file.json'))).rejects.toThrow(/no-such-file\.json 404/);
  const late = (page: Parameters<Parameters<typeof withPage>[0]>[0]) =>
    page.evaluate(
      () =>
        new Promise((resolve) => {
          setTimeout(() => {
            setTimeout(resolve);
            throw new Error('a planted error');
          });
        }),
    );
  await expect(withPage(late)).rejects.toThrow(/a planted error/);
});

it('every answer carries the headers that shut the page in', async () => {
  const { headers } = await fetch(benchAddress());
  const policy = headers.get('Content-Security-Policy') ?? '';
  expect(policy).toMatch(/default-src 'none'/);
  expect(policy).not.toMatch(/unsafe-eval|https?:|\*/);
  expect(headers.get('X-Content-Type-Options')).toBe('nosniff');
});
