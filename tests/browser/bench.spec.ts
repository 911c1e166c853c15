import { describe, expect, it } from 'vitest';
import { text } from '../../src/ui/text/en.ts';
import {
  cell,
  demoText,
  diameters,
  drawnLines,
  force,
  kept,
  onBench,
  paste,
  plotted,
  pressIn,
  settled,
} from './bench-page.ts';

describe('the first view', () => {
  it('shows two curves each way, the bent stack, the theory, and that the demo is invented', () =>
    onBench(async (page) => {
      expect(await drawnLines(page)).toHaveLength(4);
      const shims = await page.locator('.drawing [data-row]').count();
      const counts = await page
        .locator('[data-cell$=":count"]')
        .evaluateAll((inputs) => inputs.map((input) => Number((input as HTMLInputElement).value)));
      expect(shims).toBe(2 * counts.reduce((sum, count) => sum + count, 0));
      expect(await page.locator('.title-block').textContent()).toContain(text.theory['port-periodic']);
      expect(await page.locator('.invented').textContent()).toBe(text.invented);
    }));

  it('loads the charts library after the bench stands, not with it', () =>
    onBench(async (page) => {
      // As it is served: while it runs, the page itself may add a link for what it is about to load.
      expect(await page.evaluate(async () => (await fetch(location.href)).text())).not.toMatch(/plotly/);
      const [painted, asked] = await page.evaluate(() => {
        const first = (entries: PerformanceEntryList) => entries.at(0)?.startTime;
        const isLibrary = ({ name }: PerformanceEntry) => name.includes('plotly');
        return [
          first(performance.getEntriesByName('first-contentful-paint')),
          first(performance.getEntriesByType('resource').filter(isLibrary)),
        ];
      });
      expect(painted).toBeGreaterThan(0);
      expect(asked).toBeGreaterThanOrEqual(painted as number);
    }));
});

describe('editing a shim', () => {
  it('changes the curve and the drawing without a button, and is still there after a reload', () =>
    onBench(async (page) => {
      const [lines, drawn, before] = [await plotted(page), await drawnLines(page), await force(page)];
      await cell(page, 0, 'thickness_mm').fill('0.2 + 0.15');
      await expect.poll(() => force(page)).not.toBe(before);
      const after = await force(page);
      expect(Number(after)).toBeGreaterThan(Number(before));
      await expect.poll(async () => (await plotted(page)).filter((line, i) => line !== lines[i]).length).toBe(1);
      expect(await drawnLines(page)).not.toEqual(drawn);
      await cell(page, 0, 'thickness_mm').blur();
      expect(await cell(page, 0, 'thickness_mm').inputValue()).toBe('0.35');
      await kept(page);
      await page.reload();
      await settled(page);
      expect(await cell(page, 0, 'thickness_mm').inputValue()).toBe('0.35');
      expect(await force(page)).toBe(after);
    }));

  it('a name or a note does not solve anything again', () =>
    onBench(async (page) => {
      const solved = await page.locator('.solver-message').textContent();
      await page.getByRole('button', { name: text.builds.edit, exact: true }).click();
      await page.getByLabel(text.builds.notes).fill('For roots.');
      await kept(page);
      expect(await page.locator('.solver-message').textContent()).toBe(solved);
    }));

  it.each([
    ['outerDiameter_mm', '5', /clamp diameter/],
    ['thickness_mm', '-0.1', /number/],
    ['thickness_mm', 'NaN', /fit/],
    ['thickness_mm', '0.1 kg', /mm/],
    ['thickness_mm', '6 furlongs', /furlongs/],
    ['count', '0', /at least|whole number/],
    ['count', '1.5', /whole number/],
  ] as const)('%s of %j is refused at its field; the last good curve stays', (column, typed, message) =>
    onBench(async (page) => {
      const [lines, before] = [await drawnLines(page), await force(page)];
      const field = cell(page, 0, column);
      const good = await field.inputValue();
      await field.fill(typed);
      const fault = page.locator('.shims .fault');
      await fault.waitFor();
      expect(await fault.textContent()).toMatch(message);
      expect(await field.getAttribute('aria-invalid')).toBe('true');
      expect(await field.getAttribute('aria-describedby')).toBe(await fault.getAttribute('id'));
      expect(await force(page)).toBe(before);
      expect(await drawnLines(page)).toEqual(lines);
      await pressIn(field, 'Escape');
      expect(await field.inputValue()).toBe(good);
      expect(await fault.count()).toBe(0);
    }),
  );

  it('a stack keeps at least one shim', () =>
    onBench(async (page) => {
      const remove = page.getByRole('button', { name: text.stack.remove(1), exact: true });
      while ((await diameters(page)).length > 1)
        await page
          .getByRole('button', { name: text.stack.remove((await diameters(page)).length), exact: true })
          .click();
      await remove.click();
      await page.locator('.notice.problem').waitFor();
      expect(await diameters(page)).toHaveLength(1);
    }));

  it('adds, duplicates, deletes, and takes each back', () =>
    onBench(async (page) => {
      const start = await diameters(page);
      await page.getByRole('button', { name: text.stack.duplicate(1), exact: true }).click();
      expect(await diameters(page)).toEqual([start[0], ...start]);
      await page.getByRole('button', { name: text.stack.add }).click();
      expect(await diameters(page)).toEqual([start[0], ...start, start.at(-1)]);
      await page.getByRole('button', { name: text.stack.remove(1), exact: true }).click();
      for (let i = 0; i < 3; i++) await page.keyboard.press('Control+z');
      expect(await diameters(page)).toEqual(start);
      await page.keyboard.press('Control+Shift+z');
      expect(await diameters(page)).toEqual([start[0], ...start]);
    }));

  it('moves rows by keys, and the keyboard goes along', () =>
    onBench(async (page) => {
      const start = await diameters(page);
      await cell(page, 1, 'thickness_mm').focus();
      await page.keyboard.press('Alt+ArrowDown');
      await expect.poll(() => diameters(page)).toEqual([start[0], start[2], start[1], ...start.slice(3)]);
      await expect
        .poll(() => page.evaluate(() => document.activeElement?.getAttribute('data-cell')))
        .toBe('2:thickness_mm');
      await page.keyboard.press('Alt+ArrowUp');
      await expect.poll(() => diameters(page)).toEqual(start);
    }));

  it('moves rows by dragging', () =>
    onBench(async (page) => {
      const start = await diameters(page);
      const grips = page.locator('.shims .grip');
      const [from, to] = [await grips.nth(2).boundingBox(), await grips.nth(1).boundingBox()];
      if (!from || !to) throw new Error('no rows');
      await page.mouse.move(from.x + 8, from.y + 8);
      await page.mouse.down();
      await page.mouse.move(to.x + 8, to.y + 8, { steps: 4 });
      await page.mouse.up();
      expect(await diameters(page)).toEqual([start[0], start[2], start[1], ...start.slice(3)]);
    }));

  it('typing a number is one step of undo', () =>
    onBench(async (page) => {
      const field = cell(page, 0, 'thickness_mm');
      const before = await field.inputValue();
      await field.focus();
      await page.keyboard.type('0.275');
      await field.blur();
      await page.keyboard.press('Control+z');
      expect(await field.inputValue()).toBe(before);
      expect(await page.getByRole('button', { name: text.bar.undo(), exact: true }).isDisabled()).toBe(true);
    }));
});

describe('written lists', () => {
  it('a pasted list replaces the stack, and undo brings it back', () =>
    onBench(async (page) => {
      const start = await diameters(page);
      await paste(page, '#stack', '2 x 34 x 0.2\n20x.1\n30 x 0.15 (2), 18.2');
      await expect.poll(() => diameters(page)).toEqual(['34', '20', '30', '18']);
      expect(await cell(page, 2, 'count').inputValue()).toBe('2');
      await page.locator('.notice').getByRole('button', { name: text.notices.undo }).click();
      expect(await diameters(page)).toEqual(start);
    }));

  it('a message offers to undo its own edit, and so not while a later one stands', () =>
    onBench(async (page) => {
      const start = await diameters(page);
      const offered = page.locator('.notice').getByRole('button', { name: text.notices.undo });
      await paste(page, '#stack', '34 x 0.2, 20 x 0.1');
      await expect.poll(() => diameters(page)).toEqual(['34', '20']);
      await expect.poll(() => offered.count()).toBe(1);
      await cell(page, 1, 'count').fill('4');
      await expect.poll(() => offered.count()).toBe(0);
      await page.keyboard.press('Control+z');
      expect(await cell(page, 1, 'count').inputValue()).toBe('1');
      await offered.click();
      await expect.poll(() => diameters(page)).toEqual(start);
    }));

  it('a list with a slip changes nothing and says where the slip is', () =>
    onBench(async (page) => {
      const start = await diameters(page);
      await page.getByRole('button', { name: text.stack.paste }).click();
      await page.getByLabel(text.stack.pasteTitle).fill('34 x 0.2\nthree of the big ones');
      expect(await page.locator('.paste-box .fault').textContent()).toMatch(/line 2/);
      expect(await page.locator('.paste-box [type=submit]').isDisabled()).toBe(true);
      await page.getByLabel(text.stack.pasteTitle).fill('34 x 0.2\n5 x 0.1');
      await page.locator('.paste-box [type=submit]').click();
      expect(await page.locator('.notice.problem').textContent()).toMatch(/clamp diameter/);
      expect(await diameters(page)).toEqual(start);
    }));
});

describe('builds', () => {
  it('duplicate, rename, tell the difference, delete, take back', () =>
    onBench(async (page) => {
      const names = () => page.locator('.build-name').allInnerTexts();
      const start = await names();
      await page.getByRole('button', { name: text.builds.edit, exact: true }).click();
      await page.getByRole('button', { name: text.builds.duplicate, exact: true }).click();
      await expect.poll(names).toHaveLength(start.length + 1);
      await cell(page, 0, 'count').fill('2');
      const { builds } = JSON.parse(demoText());
      const [face] = builds[1].valves.pistonCompression.shims;
      await expect
        .poll(() => page.locator('.build.selected .difference').textContent())
        .toContain(`${face.outerDiameter_mm}`);
      await expect.poll(async () => (await drawnLines(page)).length).toBe(6);
      await page.getByRole('button', { name: text.builds.edit, exact: true }).click();
      await page.getByRole('button', { name: text.builds.delete, exact: true }).click();
      await expect.poll(names).toEqual(start);
      await page.locator('.notice').getByRole('button', { name: text.notices.undo }).click();
      await expect.poll(names).toHaveLength(start.length + 1);
    }));

  it('a hidden build leaves the charts and the readout', () =>
    onBench(async (page) => {
      await page.getByRole('switch').first().click();
      await expect.poll(async () => (await drawnLines(page)).length).toBe(2);
      expect(await page.locator('[data-way=compression] thead .number-col').count()).toBe(1);
    }));
});
