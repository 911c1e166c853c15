/** The aim page: chassis, sag, damping ratio, and an aim made in each of the three ways. */
import type { Page } from 'playwright-core';
import { describe, expect, it } from 'vitest';
import type { Project } from '../../src/model/project.ts';
import { aimWords } from '../../src/ui/text/aim.ts';
import { pageWords } from '../../src/ui/text/pages.ts';
import { barriers, demoText, drop, kept, onBench } from './bench-page.ts';
import { onFork } from './fork-page.ts';
import type { PageOptions } from './harness.ts';

const reading = (page: Page, id: string) => page.locator(`[data-reading="${id}"] dd`);
const field = (page: Page, label: string) => page.getByLabel(label, { exact: true });
const press = (page: Page, name: string) => page.getByRole('button', { name, exact: true }).click();
const firstNumber = (written: string | null): number => Number.parseFloat((written ?? '').replace('−', '-'));
const points = (page: Page) => page.locator('.aim-handle');
const typed = (page: Page, row: number) => field(page, aimWords.table.row(aimWords.aims.force, row));

/** The aim page of the demo, its chassis as given. */
const onAim = (test: (page: Page) => Promise<void>, chassis?: object, options: PageOptions = {}) =>
  onBench(async (page) => {
    if (chassis) {
      const project: Project = { ...JSON.parse(demoText()), name: 'Aimed', chassis };
      await drop(page, 'aimed.shimwright.json', JSON.stringify(project));
    }
    await page.evaluate(() => {
      location.hash = '#aim';
    });
    await page.getByRole('heading', { name: aimWords.chassis.title, exact: true }).waitFor();
    if (chassis) {
      const { vehicleSprungMass_kg = '' } = chassis as Partial<Project['chassis']>;
      const mass = page.locator('[data-dimension=vehicleSprung] input');
      await expect.poll(() => mass.inputValue()).toBe(String(vehicleSprungMass_kg));
    }
    await test(page);
  }, options);

/** Straight through one coil, no preload: with the gas of the demo's damper left over, all by hand. */
const PLAIN = {
  vehicleSprungMass_kg: 50,
  riderSprungMass_kg: 50,
  wheelTravel_mm: 70,
  motionRatio: { kind: 'constant', shaftPerWheel: 1 },
  spring: { kind: 'coil', rate_N_mm: 20, preload_mm: 0 },
};

describe('the chassis', () => {
  it('says what is missing, and reads sag and frequency once it is there', () =>
    onAim(async (page) => {
      await page
        .getByText(
          aimWords.readings.missing('the sprung mass of the vehicle, the wheel travel, the motion ratio and a spring'),
        )
        .waitFor();
      await page.locator('[data-dimension=vehicleSprung] input').fill('100');
      await page.getByText(aimWords.readings.missing('the wheel travel, the motion ratio and a spring')).waitFor();
    }, {}));

  it('sags to where springs and gas hold the load', () =>
    onAim(async (page) => {
      await reading(page, 'laden').waitFor();
      const [still, laden] = await Promise.all(['static', 'laden'].map((id) => reading(page, id).textContent()));
      // 12 bar on a rod of 16 mm push 241 N at first; the coil takes what is left of 490 N and of 981 N at 20 N/mm.
      expect(firstNumber(still)).toBeGreaterThan(9);
      expect(firstNumber(still)).toBeLessThan(12.5);
      expect(firstNumber(laden)).toBeGreaterThan(30);
      expect(firstNumber(laden)).toBeLessThan(37);
      // sqrt(20,000 / 100) / 2 pi = 2.25 Hz, and a little for the gas.
      const frequency = firstNumber(await reading(page, 'frequency').textContent());
      expect(frequency).toBeGreaterThan(2.25);
      expect(frequency).toBeLessThan(2.45);
    }, PLAIN));

  it('is a leaning leg beside the boxes of a fork, its angle lettered, and a linkage elsewhere', async () => {
    await onAim(async (page) => {
      await page.locator('[data-sketch=chassis]').waitFor();
      expect(await page.locator('[data-dimension=legAngle]').count()).toBe(0);
    });
    await onFork(async (page) => {
      await page.evaluate(() => {
        location.hash = '#aim';
      });
      await page.locator('[data-sketch=chassis-fork]').waitFor();
      await page.getByText(aimWords.chassis.ratioInLeg).waitFor();
      await page.locator('[data-dimension=legAngle] input').fill('24');
      await kept(page);
      expect(await barriers(page, '.chassis-form')).toEqual([]);
    });
  });

  it('refuses what no chassis has at its field, and undoes an edit', () =>
    onAim(async (page) => {
      const travel = page.locator('[data-dimension=wheelTravel] input');
      await travel.fill('-5');
      await page.locator('.fault[data-code="document.range"]').waitFor();
      await travel.fill('90');
      await page.locator('.fault').waitFor({ state: 'detached' });
      await travel.blur();
      await page.keyboard.press('Control+z');
      await expect.poll(() => travel.inputValue()).toBe('160');
    }));
});

describe('the damping ratio', () => {
  it('of a build is told at the speed cursor in both ways', () =>
    onAim(async (page) => {
      const cells = page.locator('[data-table="damping-ratio"] tbody tr').nth(1).locator('td');
      await cells.first().waitFor();
      const numbers = (await cells.allTextContents()).map(firstNumber);
      expect(numbers).toHaveLength(3);
      expect(numbers[0]).toBeGreaterThan(numbers[1]);
      expect(numbers[2]).toBeLessThan(0);
    }));
});

describe('an aim', () => {
  it('is drawn from a build, moved by keys and by hand, and undone', () =>
    onAim(async (page) => {
      await press(page, aimWords.make.make);
      await points(page).first().waitFor();
      const last = await points(page).count();
      const before = firstNumber(await typed(page, last).inputValue());
      await points(page).last().focus();
      await page.keyboard.press('Shift+ArrowUp');
      await expect.poll(async () => firstNumber(await typed(page, last).inputValue())).toBeCloseTo(before + 50, 1);
      const box = await points(page).last().boundingBox();
      if (!box) throw new Error('no handle');
      await page.mouse.move(box.x + 12, box.y + 12);
      await page.mouse.down();
      await page.mouse.move(box.x - 20, box.y + 60, { steps: 4 });
      await page.mouse.up();
      expect(firstNumber(await typed(page, last).inputValue())).toBeLessThan(before);
      await page.keyboard.press('Control+z');
      await expect.poll(async () => firstNumber(await typed(page, last).inputValue())).toBeCloseTo(before + 50, 1);
    }));

  it('is a change of a build, that far from it and told how it was made', () =>
    onAim(async (page) => {
      await press(page, aimWords.make.ways.change);
      await page.locator('[data-change="0"] select').nth(1).selectOption({ label: aimWords.make.ranges.all });
      await press(page, aimWords.make.make);
      await page.locator('[data-origin=change]').waitFor();
      expect(await page.locator('[data-origin=change]').textContent()).toContain('15 %');
      const share = page.locator('[data-table=distance] tbody tr').nth(1).locator('td').nth(1);
      // Off by 0.15 F of 1.15 F: 13.0 %.
      await expect.poll(async () => firstNumber(await share.textContent())).toBeCloseTo(13, 0);
    }));

  it('asks by damping ratio for what is then read off it, and stands on the force chart of the bench', () =>
    onAim(async (page) => {
      await reading(page, 'critical').waitFor();
      await press(page, aimWords.make.ways.ratio);
      await press(page, aimWords.make.make);
      await page.locator('[data-origin=damping-ratio]').waitFor();
      const critical = firstNumber(await reading(page, 'critical').textContent());
      const speeds = await page
        .getByLabel(/^Shaft speed, row/)
        .evaluateAll((all) => all.map((each) => Number((each as HTMLInputElement).value)));
      const row = speeds.indexOf(0.1) + 1;
      // Shaft and wheel are one here: F = 0.3 c_crit 0.1 m/s.
      expect(firstNumber(await typed(page, row).inputValue())).toBeCloseTo(0.03 * critical, 0);
      await page.getByRole('link', { name: pageWords.pages.bench.name, exact: true }).click();
      await page.locator('.names text', { hasText: aimWords.aims.label(aimWords.make.names.ratio) }).waitFor();
    }, PLAIN));
});

describe('a point of an aim under a finger', () => {
  /** One finger down beside a point, up by some pixels, and off. */
  async function push(page: Page, at: { x: number; y: number }, by: number): Promise<void> {
    const session = await page.context().newCDPSession(page);
    const touch = (type: 'touchStart' | 'touchMove', y: number) =>
      session.send('Input.dispatchTouchEvent', { type, touchPoints: [{ x: at.x, y }] });
    await touch('touchStart', at.y);
    for (let step = 1; step <= 5; step++) await touch('touchMove', at.y - (by * step) / 5);
    await session.send('Input.dispatchTouchEvent', { type: 'touchEnd', touchPoints: [] });
    await session.detach();
  }
  const centres = (page: Page) =>
    points(page).evaluateAll((all) =>
      all.map((each) => {
        const { x, y, width, height } = each.getBoundingClientRect();
        return { x: x + width / 2, y: y + height / 2 };
      }),
    );
  const forces = (page: Page) =>
    points(page).evaluateAll((all) => all.map((each) => Number(each.getAttribute('aria-valuenow'))));

  it('has a reach of 44 pixels, in which the nearest point is taken; beyond it the page scrolls', () =>
    onAim(
      async (page) => {
        await press(page, aimWords.make.make);
        await points(page).first().waitFor();
        await page.locator('.aim-plot').evaluate((plot) => plot.scrollIntoView({ block: 'center' }));
        const reach = await page.locator('.aim-reach').last().boundingBox();
        expect([reach?.width, reach?.height]).toEqual([44, 44]);
        const [at, before] = [await centres(page), await forces(page)];
        const last = at.length - 1;
        await push(page, { x: at[last].x - 18, y: at[last].y + 18 }, 40);
        await expect.poll(async () => (await forces(page))[last]).toBeGreaterThan(before[last]);
        expect((await forces(page)).slice(0, last)).toEqual(before.slice(0, last));
        // Two points whose reaches overlap, pressed between them, nearer to the first.
        const [, two] = [...at.keys()]
          .map((i) => [i, i + 1])
          .filter(([i, j]) => at[j] && Math.abs(at[i].x - at[j].x) < 40);
        const [a, b] = two.map((i) => at[i]);
        const now = await forces(page);
        await push(page, { x: a.x * 0.7 + b.x * 0.3, y: a.y * 0.7 + b.y * 0.3 }, 30);
        await expect.poll(async () => (await forces(page))[two[0]]).not.toBe(now[two[0]]);
        expect((await forces(page))[two[1]]).toBe(now[two[1]]);
        const [top, still] = [await page.evaluate(() => scrollY), await forces(page)];
        await push(page, { x: at[last].x, y: at[last].y - 120 }, 100);
        await expect.poll(() => page.evaluate(() => scrollY)).toBeGreaterThan(top);
        expect(await forces(page)).toEqual(still);
      },
      undefined,
      { viewport: { width: 390, height: 844 }, hasTouch: true, isMobile: true },
    ));
});
