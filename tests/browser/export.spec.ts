import { describe, expect, it } from 'vitest';
import { text } from '../../src/ui/text/en.ts';
import { barriers, demoText, drop, onBench, settled } from './bench-page.ts';
import { choose, fetched, menu, notice, pngSize, readSvg, rows } from './export-page.ts';

const words = text.export;
const CLIPBOARD = ['clipboard-read', 'clipboard-write'];

describe('the export menu', () => {
  it('opens, moves, chooses and closes by keys, and breaks no rule of reach', () =>
    onBench(async (page) => {
      const button = menu(page, 'readout');
      await button.focus();
      await page.keyboard.press('Enter');
      const focused = () => page.evaluate(() => document.activeElement?.getAttribute('data-export'));
      expect(await focused()).toBe('copy-readings');
      expect(await barriers(page)).toEqual([]);
      await page.keyboard.press('ArrowDown');
      expect(await focused()).toBe('readings-csv');
      await page.keyboard.press('ArrowDown');
      expect(await focused()).toBe('copy-readings');
      await page.keyboard.press('End');
      expect(await focused()).toBe('readings-csv');
      await page.keyboard.press('Escape');
      expect(await page.locator('.export-list').count()).toBe(0);
      expect(await button.evaluate((element) => element === document.activeElement)).toBe(true);
      await button.click();
      await button.click();
      expect(await page.locator('.export-list').count()).toBe(0);
      await page.keyboard.press('ArrowDown');
      const arriving = page.waitForEvent('download');
      await page.keyboard.press('End');
      await page.keyboard.press('Enter');
      expect((await arriving).suggestedFilename()).toMatch(/-readings\.csv$/);
    }));

  it('stays on a narrow page', () =>
    onBench(
      async (page) => {
        for (const sheet of ['chart', 'readout', 'section'] as const) {
          await menu(page, sheet).click();
          const box = await page.locator('.export-list').boundingBox();
          expect(box?.x).toBeGreaterThanOrEqual(0);
          expect((box?.x ?? 0) + (box?.width ?? 0)).toBeLessThanOrEqual(390);
          await page.keyboard.press('Escape');
        }
      },
      { viewport: { width: 390, height: 844 } },
    ));
});

describe('the readings', () => {
  it('go to the clipboard as they stand on the page', () =>
    onBench(
      async (page) => {
        const shown = await page.locator('[data-way=rebound] [data-row=force] td').allTextContents();
        await choose(page, 'readout', 'copy-readings');
        await expect.poll(() => notice(page).textContent()).toContain(words.copied);
        const lines = (await page.evaluate(() => navigator.clipboard.readText()))
          .split('\n')
          .map((row) => row.split('\t'));
        const forces = lines.filter(([name]) => name === 'Force, N').map(([, ...cells]) => cells);
        expect(forces[1]).toEqual(shown.map((cell) => cell.replace('−', '-')));
        expect(forces[1].every((cell) => Number(cell) < 0)).toBe(true);
        expect(lines.flat()).toContain(text.chart.estimate);
        expect(lines.flat()).toContain(words.invented);
      },
      { permissions: CLIPBOARD },
    ));

  it('where copying is refused, that is told, with the file instead', () =>
    onBench(async (page) => {
      await page.evaluate(() => {
        navigator.clipboard.writeText = () => Promise.reject(new Error('refused'));
      });
      await choose(page, 'readout', 'copy-readings');
      await page.locator('.notice.problem').waitFor();
      const arriving = page.waitForEvent('download');
      await page.locator('.notice.problem').getByRole('button', { name: words.readingsCsv }).click();
      expect((await arriving).suggestedFilename()).toMatch(/-readings\.csv$/);
    }));

  it('arrive as a file that a spreadsheet takes for UTF-8', () =>
    onBench(async (page) => {
      const { name, bytes } = await fetched(page, 'readout', 'readings-csv');
      expect([...bytes.subarray(0, 3)]).toEqual([0xef, 0xbb, 0xbf]);
      expect(bytes.toString('utf8')).toContain('Force, N');
      await expect.poll(() => notice(page).textContent()).toContain(words.saved(name));
    }));
});

describe('the chart', () => {
  it('arrives as SVG with title, builds, units and how far to trust it; as PNG of twice its size', () =>
    onBench(async (page) => {
      const { name, bytes } = await fetched(page, 'chart', 'chart-svg');
      expect(name).toMatch(/-force\.svg$/);
      await expect.poll(() => notice(page).textContent()).toContain(words.saved(name));
      const svg = await readSvg(page, bytes.toString('utf8'));
      expect(svg).toMatchObject({ root: 'svg', acting: 0, outside: [] });
      const names = await page.locator('.build-name').allTextContents();
      const project = await page.getByLabel(text.bar.projectName).inputValue();
      const wanted = [project, text.chart.tabs.force, ...names, text.chart.forceAxis('N'), text.chart.speedAxis('m/s')];
      for (const each of [...wanted, 'Estimates.', text.chart.compression, text.chart.rebound, words.invented])
        expect(svg.words.replaceAll('\u00a0', ' ')).toContain(each);
      const png = await fetched(page, 'chart', 'chart-png');
      expect(pngSize(png.bytes)).toEqual([svg.width * 2, svg.height * 2]);
    }));

  it('is for a light page though the screen is dark', () =>
    onBench(
      async (page) => {
        const dark = await fetched(page, 'chart', 'chart-svg');
        await page.emulateMedia({ colorScheme: 'light' });
        await page.locator(':root[data-theme=light]').waitFor({ state: 'attached' });
        const light = await fetched(page, 'chart', 'chart-svg');
        const [a, b] = [await readSvg(page, dark.bytes.toString()), await readSvg(page, light.bytes.toString())];
        expect(a.colours).toEqual(b.colours);
      },
      { colorScheme: 'dark' },
    ));

  it('gives its data in the units on show, every solved speed', () =>
    onBench(async (page) => {
      const metric = rows((await fetched(page, 'chart', 'chart-csv')).bytes);
      expect(metric[0]).toMatch(/^"Shaft speed, m\/s",.*Force, compression, N"/);
      await page.getByRole('button', { name: text.bar.familyLong.imperial }).click();
      const imperial = rows((await fetched(page, 'chart', 'chart-csv')).bytes);
      expect(imperial[0]).toMatch(/^"Shaft speed, in\/s",.*Force, compression, lbf"/);
      expect(imperial).toHaveLength(metric.length);
      const last = (table: string[]): number[] => table[table.length - 1].split(',').map(Number);
      expect(last(metric)[0] / last(imperial)[0]).toBeCloseTo(0.0254, 6);
      expect(last(metric)[1] / last(imperial)[1]).toBeCloseTo(4.4482216, 4);
    }));

  it('gives the whole curve of the build on show, and the loops of the cycle', () =>
    onBench(async (page) => {
      const curve = rows((await fetched(page, 'chart', 'curve-csv')).bytes);
      expect(curve[0]).toContain('"Piston: flow shims, L/min"');
      expect(Number(curve[1].split(',')[0])).toBeLessThan(0);
      await page.getByRole('button', { name: text.chart.tabs.cycle, exact: true }).click();
      await page.locator('[data-cycle=done] .scatterlayer .trace').first().waitFor();
      const loops = await fetched(page, 'chart', 'chart-csv');
      expect(loops.name).toMatch(/-cycle\.csv$/);
      expect(rows(loops.bytes).length).toBeGreaterThan(50);
      const svg = await readSvg(page, (await fetched(page, 'chart', 'position-svg')).bytes.toString());
      expect(svg).toMatchObject({ acting: 0, outside: [] });
      expect(svg.words.replaceAll('\u00a0', ' ')).toContain(words.cyclePicture.position);
    }));
});

describe('the section', () => {
  it('arrives as SVG with its styles, its scale and its title block in it; as PNG of twice its size', () =>
    onBench(async (page) => {
      const { name, bytes } = await fetched(page, 'section', 'section-svg');
      expect(name).toMatch(/-section\.svg$/);
      const svg = await readSvg(page, bytes.toString('utf8'));
      expect(svg).toMatchObject({ root: 'svg', acting: 0, outside: [] });
      const block = await page.locator('.title-block dd').allTextContents();
      const plain = svg.words.replaceAll(/\s+/g, ' ');
      for (const value of block) expect(plain).toContain(value);
      expect(block[1]).toMatch(/: 1/);
      expect(svg.colours.join()).not.toMatch(/var\(|color-mix|currentcolor|light-dark/);
      const shims = await page.locator('.drawing .shim').count();
      const drawnShims = await page.evaluate((written) => {
        const parsed = new DOMParser().parseFromString(written, 'image/svg+xml');
        return [...parsed.querySelectorAll('path')].map((path) => path.getAttribute('d'));
      }, bytes.toString('utf8'));
      const onPage = await page
        .locator('.drawing .shim')
        .evaluateAll((paths) => paths.map((path) => path.getAttribute('d')));
      expect(shims).toBeGreaterThan(0);
      for (const d of onPage) expect(drawnShims).toContain(d);
      const png = await fetched(page, 'section', 'section-png');
      expect(pngSize(png.bytes)).toEqual([svg.width * 2, svg.height * 2]);
      await expect.poll(() => notice(page).textContent()).toContain(words.saved(png.name));
    }));

  it('is for a light page though the screen is dark, and the screen stays dark', () =>
    onBench(
      async (page) => {
        const dark = await fetched(page, 'section', 'section-svg');
        expect(await page.locator(':root[data-theme=dark]').count()).toBe(1);
        expect(await page.locator('.drawing svg').count()).toBe(1);
        await page.emulateMedia({ colorScheme: 'light' });
        await page.locator(':root[data-theme=light]').waitFor({ state: 'attached' });
        const light = await fetched(page, 'section', 'section-svg');
        expect(dark.bytes.toString()).toBe(light.bytes.toString());
      },
      { colorScheme: 'dark' },
    ));

  it('a picture that cannot be made is told', () =>
    onBench(async (page) => {
      await page.evaluate(() => {
        HTMLCanvasElement.prototype.toBlob = (done: BlobCallback) => done(null);
      });
      await choose(page, 'section', 'section-png');
      const problem = page.locator('.notice.problem');
      await problem.waitFor();
      expect(await problem.textContent()).toContain(words.notDrawn(words.noPicture));
    }));
});

describe('what must not happen', () => {
  it('a name that looks like a page or a formula acts nowhere', () =>
    onBench(async (page) => {
      const hostile = '=<a href="https://example.org/x">x</a><script>1</script>';
      const project = JSON.parse(demoText());
      project.name = hostile;
      project.builds[1].name = hostile;
      await drop(page, 'hostile.json', JSON.stringify(project));
      await expect.poll(() => page.getByLabel(text.bar.projectName).inputValue()).toBe(hostile);
      await settled(page);
      for (const [sheet, choice] of [
        ['chart', 'chart-svg'],
        ['section', 'section-svg'],
      ] as const) {
        const svg = await readSvg(page, (await fetched(page, sheet, choice)).bytes.toString());
        expect(svg).toMatchObject({ root: 'svg', acting: 0, outside: [] });
        expect(svg.words.replaceAll(/\s/g, '')).toContain(hostile.replaceAll(/\s/g, ''));
      }
      const table = rows((await fetched(page, 'chart', 'chart-csv')).bytes);
      expect(table[0]).toContain(`"'=<a href=""https://example.org/x"">`);
    }));

  it('with no build on show there is no picture and no table, and that is told', () =>
    onBench(async (page) => {
      for (const name of await page.locator('.build-name').allTextContents())
        await page.getByRole('switch', { name: text.builds.show(name), exact: true }).click();
      const refused = async (choice: string): Promise<void> => {
        await choose(page, 'chart', choice);
        const problem = page.locator('.notice.problem');
        await problem.waitFor();
        expect(await problem.textContent()).toContain(words.nothingSolved);
        await problem.getByRole('button', { name: text.notices.dismiss }).click();
      };
      for (const choice of ['chart-svg', 'chart-csv']) await refused(choice);
      await page.getByRole('button', { name: text.chart.tabs.cycle, exact: true }).click();
      for (const choice of ['position-svg', 'chart-csv']) await refused(choice);
    }));
});
