import { mkdtempSync, readFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Page } from 'playwright-core';
import { describe, expect, it } from 'vitest';
import { text } from '../../src/ui/text/en.ts';
import { keeping } from '../../src/ui/text/keeping.ts';
import { cell, demoText, diameters, drop, force, fromMenu, kept, onBench, settled } from './bench-page.ts';

const problem = (page: Page) => page.locator('.notice.problem');
const projectName = (page: Page) => page.getByLabel(text.bar.projectName).inputValue();

describe('files', () => {
  it.each([
    ['a file of 5 MB', () => `"${'x'.repeat(5 * 1024 * 1024)}"`, /MB|MiB/],
    ['a truncated file', () => demoText().slice(0, 900), /line \d+, column \d+/],
    ['a newer version', () => demoText().replace('"version": 1', '"version": 99'), /newer/],
    ['a file of something else', () => '{"format":"elsewhere","version":1}', /format/],
    ['an empty file', () => '', /empty/],
    [
      'a file with a shim smaller than the clamp',
      () => {
        const project = JSON.parse(demoText());
        project.builds[0].valves.pistonRebound.shims[0].outerDiameter_mm = 3;
        return JSON.stringify(project);
      },
      /shims\[0\]\.outerDiameter_mm.*clamp diameter/,
    ],
    [
      'a file with ports wider than the piston',
      () => {
        const project = JSON.parse(demoText());
        project.damper.valves.pistonRebound.ports.count = 100;
        return JSON.stringify(project);
      },
      /pistonRebound\.ports\..*face of the piston beside the rod/,
    ],
  ])('%s is refused with a reason, and nothing is lost', (_, content, reason) =>
    onBench(async (page) => {
      await cell(page, 0, 'count').fill('2');
      const [stack, name] = [await diameters(page), await projectName(page)];
      await drop(page, 'from-a-friend.json', content());
      await problem(page).waitFor();
      expect(await problem(page).textContent()).toMatch(reason);
      expect(await problem(page).textContent()).toContain(text.notices.notOpened('from-a-friend.json'));
      expect(await projectName(page)).toBe(name);
      expect(await diameters(page)).toEqual(stack);
      expect(await cell(page, 0, 'count').inputValue()).toBe('2');
      await kept(page);
      await page.reload();
      await settled(page);
      expect(await cell(page, 0, 'count').inputValue()).toBe('2');
    }),
  );

  it('a good file opens by drop, and undo brings the project before it back', () =>
    onBench(async (page) => {
      const before = await projectName(page);
      await drop(page, 'mine.json', demoText().replace(/"name": "[^"]*"/, '"name": "Mine"'));
      await expect.poll(() => projectName(page)).toBe('Mine');
      await page.locator('.notice').getByRole('button', { name: text.notices.undo }).click();
      expect(await projectName(page)).toBe(before);
    }));

  it('a name that looks like a page stays a name', () =>
    onBench(async (page) => {
      const hostile = '<img src=x onerror=alert(1)><b>bold</b>';
      const project = JSON.parse(demoText());
      project.name = hostile;
      project.builds[1].name = hostile;
      await drop(page, 'hostile.json', JSON.stringify(project));
      await expect.poll(() => projectName(page)).toBe(hostile);
      await settled(page);
      expect(await page.locator('.build-name').nth(1).textContent()).toBe(hostile);
      expect(await page.locator('.builds img, .builds b, .drawing img, .readout b').count()).toBe(0);
    }));

  it('a saved copy is the project, whole, with fields that this version does not know', () =>
    onBench(async (page) => {
      const project = { ...JSON.parse(demoText()), fromTheFuture: { kept: true } };
      await drop(page, 'mine.json', JSON.stringify(project));
      await page.locator('.notice').first().waitFor();
      await cell(page, 0, 'count').fill('3');
      const download = page.waitForEvent('download');
      await fromMenu(page, text.bar.saveFile);
      const copy = join(mkdtempSync(join(tmpdir(), 'shimwright-')), 'copy.json');
      await (await download).saveAs(copy);
      const saved = JSON.parse(readFileSync(copy, 'utf8'));
      expect((await download).suggestedFilename()).toMatch(/\.shimwright\.json$/);
      project.builds[1].valves.pistonCompression.shims[0].count = 3;
      expect(saved).toEqual(project);
    }));
});

describe('work kept on this machine', () => {
  it('a browser without storage says so and works on', () =>
    onBench(async (page) => {
      await page.addInitScript(() => {
        Object.defineProperty(globalThis, 'indexedDB', { value: undefined });
      });
      await page.reload();
      await settled(page);
      expect(await page.locator('[data-bar=trouble]').textContent()).toContain(keeping.trouble.missing);
      const before = await force(page);
      await cell(page, 0, 'thickness_mm').fill('0.4');
      await expect.poll(() => force(page)).not.toBe(before);
    }));
});
