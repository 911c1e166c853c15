/** The plan of a shim: what it shades and marks, its shim, its cursor, its table, its picture files. */
import type { Page } from 'playwright-core';
import { describe, expect, it } from 'vitest';
import { text } from '../../src/ui/text/en.ts';
import { barriers, demoText, onBench, pressIn, SCREENS } from './bench-page.ts';
import { fetched, pngSize, readSvg } from './export-page.ts';
import { cursor, onFourPorts, onWaves } from './wave-page.ts';

const words = text.plan;
const demo = JSON.parse(demoText());
/** The build on show is the second of the demo. */
const { shims } = demo.builds[1].valves.pistonCompression;

const toPlan = async (page: Page): Promise<void> => {
  await page.locator('.section').getByRole('button', { name: words.drawingWhy.plan }).click();
  await page.locator('[data-figure=plan] svg').waitFor();
};
const plan = (page: Page) => page.locator('[data-figure=plan]');
const marks = (page: Page, kind: string) => plan(page).locator(`[data-mark=${kind}]`).count();
/** Numbers of a row of the table: of its last circle, the rim. */
const rim = async (page: Page): Promise<number[]> =>
  (await page.locator('.plan-numbers tbody tr').last().locator('td').allTextContents()).map(Number);
const cutAngles = (page: Page): Promise<number[]> =>
  plan(page)
    .locator('.cut')
    .evaluateAll((arms) =>
      arms.map((arm) => {
        const [x0, y0, x1, y1] = (arm.getAttribute('d') ?? '').split(/[ML ]/).filter(Boolean).map(Number);
        return Math.round((Math.atan2(y0 - y1, x1 - x0) * 180) / Math.PI);
      }),
    );

describe('the plan of a waved shim', () => {
  it('stands in place of the section, and marks as many crests and troughs as the stack has waves', () =>
    onWaves(async (page) => {
      const waves = Number((await page.locator('.cut-name .name').first().textContent())?.match(/\d+/)?.[0]);
      expect(waves).toBeGreaterThan(1);
      await toPlan(page);
      expect(await page.locator('[data-figure=section]').count()).toBe(0);
      expect([await marks(page, 'crest'), await marks(page, 'trough')]).toEqual([waves, waves]);
      const ports = demo.damper.valves.pistonCompression.ports.count;
      expect(await plan(page).locator('[data-port]').count()).toBe(ports);
      const legend = await plan(page).locator('.plan-legend').textContent();
      expect(legend).toContain(words.waves(waves));
      expect(legend).toContain(words.groove);
      expect(await plan(page).textContent()).toContain(words.anywhere);
    }));

  it('tells of its rim what the section tells: crest, mean and trough', () =>
    onWaves(async (page) => {
      const figure = async (name: string) =>
        Number.parseFloat(
          (await page
            .locator('.parts [data-of=shim-0] td span')
            .filter({ hasText: name })
            .locator('b')
            .textContent()) ?? '',
        );
      const { rimLift } = text.sectionParts;
      const told = [
        await figure(text.wave.at.crest(rimLift)),
        await figure(text.wave.ofMean(rimLift)),
        await figure(text.wave.at.trough(rimLift)),
      ];
      await toPlan(page);
      expect(await rim(page)).toEqual(told);
      for (const [i, kind] of ['crest', 'mean', 'trough'].entries())
        expect(await plan(page).locator(`[data-rim=${kind}] text`).textContent()).toContain(told[i].toFixed(3));
    }));

  it('is shaded deeper where it stands higher, with a line and a number where one shade meets the next', () =>
    onWaves(async (page) => {
      await toPlan(page);
      const shares = await plan(page)
        .locator('.lift path')
        .evaluateAll((bands) => bands.map((band) => Number(band.getAttribute('data-share'))));
      expect(shares.length).toBeGreaterThan(5);
      expect(shares).toEqual([...shares].sort((a, b) => a - b));
      expect(await plan(page).locator('.lift-line').count()).toBe(shares.length - 1);
      const [crest] = await rim(page);
      const numbers = (await plan(page).locator('.lift-number').allTextContents()).map(Number);
      expect(numbers.length).toBeGreaterThan(1);
      for (const number of numbers) expect(number).toBeLessThan(crest);
    }));

  it('shows where the section is cut: straight through three waves, bent by 45 degrees through four', async () => {
    await onWaves(async (page) => {
      await toPlan(page);
      expect((await cutAngles(page)).map(Math.abs)).toEqual([180, 0]);
    });
    await onFourPorts(async (page) => {
      await toPlan(page);
      const [crest, trough] = await cutAngles(page);
      expect(Math.abs(crest)).toBe(180);
      expect(Math.abs(trough)).toBe(45);
      expect(await plan(page).locator('.plan-legend').textContent()).toContain(words.covered('65 %'));
      expect(await plan(page).textContent()).not.toContain(words.anywhere);
    });
  });

  it('moves with the speed cursor, and turns to another shim by keys', () =>
    onWaves(async (page) => {
      await toPlan(page);
      const before = await rim(page);
      await pressIn(cursor(page), 'ArrowLeft');
      await expect.poll(async () => (await rim(page))[0]).toBeLessThan(before[0]);
      const choice = page.getByRole('combobox', { name: words.choose });
      expect(await choice.locator('option').count()).toBe(shims.length);
      await choice.focus();
      await page.keyboard.press('ArrowDown');
      await expect.poll(() => page.locator('.plan-numbers caption').textContent()).toBe(words.table(2));
      expect(await page.locator('.plan-numbers tbody tr').last().getAttribute('data-circle')).toBe(
        shims[1].outerDiameter_mm.toFixed(2),
      );
      expect((await rim(page))[0]).toBeLessThan(before[0]);
      expect(await plan(page).locator('.title-block').textContent()).toContain(`${shims[1].outerDiameter_mm}.00 mm`);
    }));

  it('goes into picture files of its own, with its note', () =>
    onWaves(async (page) => {
      await toPlan(page);
      const { name, bytes } = await fetched(page, 'section', 'plan-svg');
      expect(name).toMatch(/-plan\.svg$/);
      const file = await readSvg(page, bytes.toString('utf8'));
      expect(file).toMatchObject({ root: 'svg', acting: 0, outside: [] });
      expect(file.words).toContain(words.note);
      expect(file.words).toContain(words.legend('mm'));
      expect(file.colours.join()).not.toMatch(/var\(|color-mix|color\(/);
      const png = await fetched(page, 'section', 'plan-png');
      const [width] = pngSize(png.bytes);
      expect(width).toBeGreaterThan(file.width);
    }));
});

describe('the plan of a round shim', () => {
  it('is rings without marks, with one number a circle', () =>
    onBench(async (page) => {
      await toPlan(page);
      expect([await marks(page, 'crest'), await marks(page, 'trough')]).toEqual([0, 0]);
      expect(await plan(page).locator('.plan-legend').textContent()).toContain(words.round);
      expect(await rim(page)).toHaveLength(1);
      // Every point of a line is as far from the axis.
      const [cx, cy] = await plan(page)
        .locator('.nut')
        .evaluate((nut) => [Number(nut.getAttribute('cx')), Number(nut.getAttribute('cy'))]);
      const line = (await plan(page).locator('.lift-line').first().getAttribute('d')) ?? '';
      const radii = [...line.matchAll(/[ML]([\d.]+) ([\d.]+)/g)].map(([, x, y]) =>
        Math.hypot(Number(x) - cx, Number(y) - cy),
      );
      expect(radii.length).toBeGreaterThan(50);
      expect(Math.max(...radii) - Math.min(...radii)).toBeLessThan(0.3);
    }));
});

describe('the plan in the large view', () => {
  it('stands beside the section, takes its place, and both can be exported', () =>
    onWaves(async (page) => {
      await page.getByRole('button', { name: text.sectionView.large }).click();
      const dialog = page.locator('dialog.large-section');
      const width = async (name: string) =>
        (await dialog.locator(`[data-figure=${name}] svg`).boundingBox())?.width ?? 0;
      expect(await width('section')).toBeGreaterThan(1.5 * (await width('plan')));
      await dialog.getByRole('button', { name: words.drawingWhy.plan }).click();
      await expect.poll(() => width('plan')).toBeGreaterThan(1.5 * (await width('section')));
      for (const which of ['plan', 'section'])
        expect((await fetched(page, 'section', `${which}-svg`)).name).toMatch(new RegExp(`-${which}\\.svg$`));
      await page.keyboard.press('Escape');
      await dialog.waitFor({ state: 'detached' });
      expect(await plan(page).count()).toBe(1);
    }));

  it.each(SCREENS)('has no barrier, and hangs over nowhere, at %i pixels, %s', (width, colorScheme) =>
    onWaves(
      async (page) => {
        await toPlan(page);
        expect(await barriers(page)).toEqual([]);
        const sheet = plan(page);
        expect(await sheet.evaluate(({ scrollWidth, clientWidth }) => scrollWidth - clientWidth)).toBe(0);
        await page.getByRole('button', { name: text.sectionView.large }).click();
        await page.locator('dialog [data-figure=section] svg').waitFor();
        expect(await barriers(page)).toEqual([]);
      },
      { viewport: { width, height: 900 }, colorScheme },
    ),
  );
});
