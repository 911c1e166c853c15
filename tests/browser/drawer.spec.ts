import type { Page } from 'playwright-core';
import { describe, expect, it } from 'vitest';
import { drawerWords as words } from '../../src/ui/text/drawer.ts';
import { text } from '../../src/ui/text/en.ts';
import { kept, onBench } from './bench-page.ts';
import { openSearch } from './search-page.ts';

const total = async (page: Page): Promise<number> =>
  Number(await page.locator('[data-drawer-total]').getAttribute('data-drawer-total'));
const sizes = (page: Page): Promise<string[]> =>
  page
    .locator('.drawer-table tbody tr')
    .evaluateAll((rows) => rows.map((row) => [...row.querySelectorAll('input')].map(({ value }) => value).join('/')));
const give = (page: Page, content: string): Promise<void> =>
  page
    .locator('[data-drawer-file]')
    .setInputFiles({ name: 'drawer.csv', mimeType: 'text/csv', buffer: Buffer.from(content, 'utf8') });

async function add(page: Page, diameter: string, thickness: string, count: string): Promise<void> {
  const form = page.locator('.add-size');
  await form.getByLabel(words.diameter, { exact: true }).fill(diameter);
  await form.getByLabel(words.thickness, { exact: true }).fill(thickness);
  await form.getByLabel(words.count, { exact: true }).fill(count);
  await form.locator('[type=submit]').click();
}

describe('the drawer', () => {
  it('takes sizes in, counts them, lets them go, undoes it all, and is there after a reload', () =>
    onBench(async (page) => {
      await openSearch(page);
      await add(page, '28', '0.2', '3');
      await add(page, '34', '0.1', '5');
      await add(page, '28', '0.2', '2');
      await expect.poll(() => sizes(page)).toEqual(['34/0.1//5', '28/0.2//5']);
      await page.getByRole('button', { name: words.oneMore(2) }).click();
      await page.getByRole('button', { name: words.oneLess(1) }).click();
      await expect.poll(() => sizes(page)).toEqual(['34/0.1//4', '28/0.2//6']);
      expect(await page.locator('.drawer-table .used-by').nth(1).textContent()).toMatch(/\S \d/);
      await page.getByRole('button', { name: words.remove(1) }).click();
      await expect.poll(() => total(page)).toBe(6);
      await page.keyboard.press('Control+z');
      await expect.poll(() => total(page)).toBe(10);
      await kept(page);
      await page.reload();
      await expect.poll(() => sizes(page)).toEqual(['34/0.1//4', '28/0.2//6']);
    }));

  it('takes a written list in, and says at the line what it cannot read', () =>
    onBench(async (page) => {
      await openSearch(page);
      await page.getByRole('button', { name: words.paste }).click();
      await page.locator('.drawer textarea').fill('12 x 30 x 0.15\n4 x thirty');
      expect(await page.locator('.drawer .paste-box .fault').textContent()).toContain('line 2');
      await page.locator('.drawer textarea').fill('12 x 30 x 0.15\n4 x 16 x 0.1, 30 x 0.15');
      await page.locator('.drawer .paste-box [type=submit]').click();
      await expect.poll(() => sizes(page)).toEqual(['30/0.15//13', '16/0.1//4']);
    }));

  it('goes out as CSV and comes back; a file with a fault changes nothing', () =>
    onBench(async (page) => {
      await openSearch(page);
      await give(page, 'outerDiameter [in];thickness [mm];count;bore [mm]\n1,5;0,2;7;12\n1;0,15;2;\n');
      await expect.poll(() => sizes(page)).toEqual(['38.1/0.2/12/7', '25.4/0.15//2']);
      const arriving = page.waitForEvent('download');
      await page.getByRole('button', { name: words.save }).click();
      const chunks: Buffer[] = [];
      for await (const chunk of await (await arriving).createReadStream()) chunks.push(chunk as Buffer);
      const written = Buffer.concat(chunks).toString('utf8');
      expect(written.split('\r\n')[0]).toBe('outerDiameter [mm],thickness [mm],count,bore [mm]');
      await give(page, 'outerDiameter [mm],thickness [mm],count\n30,0.1,many\n');
      await expect.poll(() => page.locator('.notice').first().textContent()).toContain('line 2');
      expect(await total(page)).toBe(9);
      await page.getByRole('button', { name: words.remove(2) }).click();
      await give(page, written);
      await expect.poll(() => sizes(page)).toEqual(['38.1/0.2/12/7', '25.4/0.15//2']);
    }));

  it('refuses one size twice at the box, and speaks inches', () =>
    onBench(async (page) => {
      await openSearch(page);
      await give(page, 'outerDiameter [mm],thickness [mm],count\n25.4,0.1,1\n20,0.1,1\n');
      await page.getByLabel(words.field(words.diameter, 2), { exact: true }).fill('25.4');
      await page.locator('[data-code="drawer.same-size"]').waitFor();
      await page.keyboard.press('Escape');
      await page.getByRole('button', { name: text.bar.familyLong.imperial }).click();
      await expect.poll(async () => (await sizes(page))[0]).toMatch(/^1\//);
    }));
});
