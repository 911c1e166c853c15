import { Buffer } from 'node:buffer';
import type { Page } from 'playwright-core';
import { describe, expect, it } from 'vitest';
import type { Project } from '../../src/model/project.ts';
import { text } from '../../src/ui/text/en.ts';
import { keeping } from '../../src/ui/text/keeping.ts';
import { pageWords } from '../../src/ui/text/pages.ts';
import { recordWords as words } from '../../src/ui/text/record.ts';
import { barriers, fromMenu, kept, SCREENS } from './bench-page.ts';
import { box, onFork } from './fork-page.ts';
import { storedIn } from './keep-page.ts';
import { addPhoto, go, openRecord } from './record-page.ts';

const done = (page: Page): Promise<void> => page.getByRole('button', { name: words.markDone, exact: true }).click();
const step = (page: Page) => page.locator('.record-step');
const stepNow = (page: Page): Promise<string | null> => step(page).getAttribute('data-step');
const stateOf = (page: Page, view: string): Promise<string | null> =>
  page.locator(`[data-view="${view}"]`).getAttribute('data-state');

/** The newest saved document that is called like the fork. */
async function saved(page: Page): Promise<Project> {
  await kept(page);
  const { projects, texts } = await storedIn(page);
  const documents = projects.map(({ id, head }) => texts.find((t) => t.project === id && t.revision === head));
  const all = documents.map((each) => JSON.parse(each?.projectText ?? '{}') as Project);
  return all.find(({ damper }) => damper.layout === 'cartridge') as Project;
}

const stock = ({ builds, baselineBuild }: Project) => builds.find(({ id }) => id === baselineBuild);

async function threadOn(page: Page, diameter: string, thickness: string, count: string): Promise<void> {
  await box(page, words.wire.diameter).fill(diameter);
  await box(page, words.wire.thickness).fill(thickness);
  await box(page, words.wire.count).fill(count);
  await page.getByRole('button', { name: words.wire.thread, exact: true }).click();
}

describe('the teardown record of a fork', () => {
  it('is walked from clicks to seals, in the order in which it comes apart, into the document', () =>
    onFork(async (page) => {
      await openRecord(page);
      const order = await page
        .locator('.rail ol [data-view]')
        .evaluateAll((all) => all.map((each) => (each as HTMLElement).dataset.view));
      expect(order).toEqual([
        ...['machine', 'clicks', 'gas', 'head', 'springs', 'oil', 'rod', 'reboundStack', 'compressionStack'],
        ...['pistonFaces', 'baseStack', 'baseFace', 'refillCheck', 'wear'],
      ]);
      await box(page, words.facts.machine).fill('Fieldfare 250 (invented)');
      await box(page, words.facts.runTime).fill('42');
      await done(page);
      expect(await stepNow(page)).toBe('clicks');
      const needle = text.adjusterOf('cartridge', 'base-needle');
      await box(page, words.clicks.found(needle)).fill('9');
      await done(page);
      await box(page, text.damper.gasPressure).fill('0.1');
      await done(page);
      await page.getByRole('button', { name: words.torques.add }).click();
      await box(page, words.wear.entry(words.torques.fresh.head ?? '', words.torques.torque)).fill('31');
      await done(page);
      await page.getByRole('button', { name: words.springs.add }).click();
      await box(page, words.wear.entry(words.springs.fresh(1), words.springs.rate)).fill('4.6');
      await done(page);
      await box(page, words.facts.oilVolume).fill('310');
      await page.getByRole('button', { name: words.markSkipped, exact: true }).click();
      await box(page, text.damper.rod).fill('12.5');
      await done(page);
      for (let left = 0; left < 6; left++) await done(page);
      await page.getByRole('button', { name: words.wear.add }).click();
      const seal = words.wear.fresh(1);
      await box(page, words.wear.entry(seal, words.wear.inner)).fill('36');
      await box(page, words.wear.entry(seal, words.wear.outer)).fill('48');
      await box(page, words.wear.entry(seal, words.wear.width)).fill('8');
      await page.getByText(words.wear.toMatch('36 × 48 × 8 mm')).waitFor();
      await done(page);
      await page.getByRole('heading', { name: words.missing.title }).waitFor();
      expect([await stateOf(page, 'machine'), await stateOf(page, 'oil'), await stateOf(page, 'wear')]).toEqual([
        ...['done', 'skipped', 'done'],
      ]);
      const document = await saved(page);
      expect(document.damper.rodDiameter_mm).toBe(12.5);
      expect(document.gas.gaugePressure_bar).toBe(0.1);
      expect(stock(document)?.baseBleed?.needle?.clicks).toBe(9);
      expect(document.record).toMatchObject({
        machine: 'Fieldfare 250 (invented)',
        runTime_h: 42,
        clicksAsFound: { 'base-needle': 9 },
        torques: [{ torque_N_m: 31 }],
        springs: [{ rate_N_mm: 4.6 }],
        oilOut: { volume_mL: 310 },
        wearParts: [{ innerDiameter_mm: 36, outerDiameter_mm: 48, width_mm: 8 }],
        steps: { machine: { state: 'done' }, oil: { state: 'skipped' } },
      });
    }));

  it('takes the odometer in miles where the rest is in inches, and keeps kilometres', () =>
    onFork(async (page) => {
      await openRecord(page);
      await go(page, 'machine');
      await box(page, words.facts.distance).fill('1000');
      await page.getByLabel(text.bar.familyLong.imperial).first().click();
      await expect.poll(() => box(page, words.facts.distance).inputValue()).toBe('621.37');
      await box(page, words.facts.distance).fill('1000');
      // Source: the international mile of 1959, 1.609344 km.
      await expect.poll(async () => (await saved(page)).record?.distance_km).toBeCloseTo(1609.344, 6);
    }));

  it('threads a stack on a wire as it comes off, and lays it into the baseline build piston side first', () =>
    onFork(async (page) => {
      const before = stock(await saved(page))?.valves.pistonRebound.shims;
      await openRecord(page);
      await go(page, 'reboundStack');
      await threadOn(page, '12', '0.2', '1');
      await threadOn(page, '20', '0.1', '4');
      await page.getByRole('button', { name: words.wire.takeOver }).click();
      await page.getByText(words.wire.takenOver).waitFor();
      const document = await saved(page);
      expect(stock(document)?.valves.pistonRebound.shims).toEqual([
        { outerDiameter_mm: 20, thickness_mm: 0.1, count: 4 },
        { outerDiameter_mm: 12, thickness_mm: 0.2, count: 1 },
      ]);
      expect(document.record?.shimsOff?.pistonRebound?.firstOff).toBe('far-from-piston');
      await page.locator('h2#record-step').click();
      await page.keyboard.press('Control+z');
      expect(stock(await saved(page))?.valves.pistonRebound.shims).toEqual(before);
    }));
});

describe('photos', () => {
  it('are made small, keep their caption over a reload, are deleted with undo, and stay out of the file', () =>
    onFork(async (page) => {
      await openRecord(page);
      await go(page, 'oil');
      await addPhoto(page);
      await page.getByText('1600 × 400').waitFor();
      await page.getByLabel(words.photos.caption(1)).fill('grey, metal in it');
      await kept(page);
      await page.reload();
      await page.getByRole('heading', { level: 1, name: words.title }).waitFor();
      expect(await page.locator('.photo').count()).toBe(0);
      await go(page, 'oil');
      expect(await page.getByLabel(words.photos.caption(1)).inputValue()).toBe('grey, metal in it');
      await page.getByRole('img', { name: 'grey, metal in it' }).waitFor();
      await page.getByRole('button', { name: words.photos.remove(1) }).click();
      await expect.poll(() => page.locator('.photo').count()).toBe(0);
      await page.getByRole('button', { name: words.photos.undo, exact: true }).first().click();
      await page.getByRole('img', { name: 'grey, metal in it' }).waitFor();
      const file = page.waitForEvent('download');
      await fromMenu(page, text.bar.saveFile);
      await file;
      await page.getByText(keeping.photosLeftOut(1)).waitFor();
    }));

  it('tell what is no picture', () =>
    onFork(async (page) => {
      await openRecord(page);
      const buffer = Buffer.from('no picture');
      await page.locator('.photo-picker input').setInputFiles({ name: 'a.png', mimeType: 'image/png', buffer });
      await page.getByText(words.photos.unreadable('a.png')).waitFor();
    }));
});

const shares = (page: Page): Promise<number[]> =>
  page.locator('[data-unknown]').evaluateAll((rows) =>
    rows.map((row) => {
      const [slow, fast] = [...row.querySelectorAll('.number-col')].map(({ textContent }) => {
        const percent = /± (\d+) %/.exec(textContent ?? '');
        return percent ? Number(percent[1]) : -1;
      });
      return Math.max(slow, fast);
    }),
  );
const solved = (page: Page): Promise<void> => page.locator('.missing .first').waitFor({ timeout: 90_000 });

describe('what is missing', () => {
  it('is solved, largest effect first, and shrinks with what is measured', () =>
    onFork(async (page) => {
      await openRecord(page);
      await go(page, 'missing');
      await solved(page);
      const percents = await shares(page);
      expect(percents.length).toBeGreaterThan(20);
      expect(percents).toEqual([...percents].sort((a, b) => b - a));
      // Air acts on the whole leg of the fork: 0.3 bar on it is far more than the damping at 0.1 m/s.
      const [first] = await page
        .locator('[data-unknown]')
        .evaluateAll((rows) => rows.map((row) => (row as HTMLElement).dataset.unknown));
      expect(first).toBe('gas');
      await page.locator('[data-unknown=gas] button').click();
      expect(await stepNow(page)).toBe('gas');
      await done(page);
      await go(page, 'rod');
      await page.getByRole('button', { name: words.markSkipped, exact: true }).click();
      await go(page, 'missing');
      await solved(page);
      // The list of before stands until the new one is solved.
      const bore = page.locator('[data-unknown=bore]');
      await expect.poll(() => bore.textContent()).toContain(words.missing.reasons.skipped);
      await solved(page);
      await expect.poll(() => page.locator('[data-unknown=gas]').count()).toBe(0);
      await expect.poll(async () => (await shares(page))[0]).toBeLessThan(percents[0]);
    }));
});

describe.each(SCREENS)('at %i pixels, %s', (width, colorScheme) => {
  it('every view is within the page and without barriers', () =>
    onFork(
      async (page) => {
        await openRecord(page);
        for (const view of ['machine', 'gas', 'reboundStack', 'wear', 'sheet']) {
          await go(page, view);
          await page.locator('#record-view h2').first().waitFor();
          if (view === 'wear') await page.getByRole('button', { name: words.wear.add }).click();
          expect([view, ...(await barriers(page))]).toEqual([view]);
          expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBe(width);
        }
        expect(await page.title()).toBe(pageWords.title(pageWords.pages.record.name, text.appName));
      },
      { viewport: { width, height: 900 }, colorScheme, reducedMotion: 'reduce' },
    ));
});
