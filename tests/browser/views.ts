/**
 * Everything that a person can have before them: each page of the bench, each chart, each dialog. What holds for every view
 * (barriers, zoom, forced colours) is tested along this list; a page or dialog that is not on it fails `reach-barriers.spec.ts`.
 */
import type { Page } from 'playwright-core';
import { aimWords } from '../../src/ui/text/aim.ts';
import { compare } from '../../src/ui/text/compare.ts';
import { text } from '../../src/ui/text/en.ts';
import { keeping } from '../../src/ui/text/keeping.ts';
import { lessonsWords } from '../../src/ui/text/lessons.ts';
import { type PageId, pageWords } from '../../src/ui/text/pages.ts';
import { proofWords } from '../../src/ui/text/proof.ts';
import { cell, fromMenu, kept } from './bench-page.ts';

export interface View {
  readonly name: string;
  readonly page: PageId;
  /** Id of the heading that names the dialog which the view is. */
  readonly dialog?: string;
  /** The part of the page that the view is, where the rest is that of another view. */
  readonly part?: string;
  /** From the page, opened and drawn, to the view. */
  readonly open: (page: Page) => Promise<void>;
}

const button = (page: Page, name: string) => page.getByRole('button', { name, exact: true });
const chart = (tab: keyof typeof text.chart.tabs, ready: string): View => ({
  name: `chart: ${tab}`,
  page: 'bench',
  part: '.charts',
  open: async (page) => {
    await button(page, text.chart.tabs[tab]).click();
    await page.locator(ready).first().waitFor();
  },
});

/** Every fold open, and a fault at a field. */
async function unfolded(page: Page): Promise<void> {
  await page.evaluate(() => {
    for (const each of document.querySelectorAll('details')) each.open = true;
  });
  await button(page, text.builds.edit).click();
  await button(page, text.stack.paste).click();
  await cell(page, 0, 'thickness_mm').fill('-1');
  await page.locator('.shims .fault').waitFor();
}

const record = (view: string): View => ({
  name: `record: ${view}`,
  page: 'record',
  open: async (page) => {
    await page.locator(`[data-view=${view}]`).click();
    await page.locator('#record-view h2').first().waitFor();
    if (view === 'missing') await page.locator('[data-unknown]').first().waitFor();
  },
});

const MEASURED = 'speed [mm/s];force [N]\n-400;-520\n-80;-150\n80;400\n400;690\n';

export const VIEWS: readonly View[] = [
  { name: 'bench', page: 'bench', open: async () => undefined },
  { name: 'bench: everything unfolded, and a fault', page: 'bench', open: unfolded },
  chart('paths', '.plot[data-chart=paths]'),
  chart('pressures', '.plot[data-chart=pressures]'),
  chart('opening', '.plot[data-chart=opening]'),
  chart('shims', '.shim-bars tbody tr'),
  chart('effects', '.shim-effects tbody tr'),
  chart('temperature', '.sweep .plot'),
  chart('position', '.sweep .plot'),
  chart('clicks', '.charts'),
  chart('tolerance', '.share-table tbody tr'),
  chart('tolerance', '.charts .tolerance'),
  chart('cycle', '.cycle-readings'),
  {
    name: 'bench: peaks of the cycle',
    page: 'bench',
    part: '.charts',
    open: async (page) => {
      await button(page, text.chart.tabs.cycle).click();
      await page.getByRole('button', { name: text.cycle.motionLong.peaks }).click();
      await page.locator('[data-frequency="2"]').first().waitFor();
    },
  },
  {
    name: 'bench: difference in per cent',
    page: 'bench',
    part: '.charts',
    open: async (page) => {
      await page.getByRole('button', { name: text.chart.measureLong.share('N') }).click();
      await page.locator('.plot-board').getByText(text.chart.differenceAxis('%')).waitFor();
    },
  },
  {
    name: 'bench: band of the tolerances',
    page: 'bench',
    part: '.charts',
    open: async (page) => {
      await page.getByRole('button', { name: text.chart.bandLong.tolerance }).click();
      await page.locator('.hatch-note').waitFor();
    },
  },
  {
    name: 'bench: a lesson',
    page: 'bench',
    part: '.lessons',
    open: async (page) => {
      await button(page, lessonsWords.button).click();
      await page.locator('#lessons-title').waitFor();
    },
  },
  {
    name: 'bench: the plan of a shim',
    page: 'bench',
    part: '.section',
    open: async (page) => {
      await page.getByRole('button', { name: text.plan.drawingWhy.plan }).click();
      await page.locator('.section svg').first().waitFor();
    },
  },
  {
    name: 'dialog: two builds',
    page: 'bench',
    dialog: 'compare-title',
    open: async (page) => {
      await button(page, compare.open).first().click();
      await page.getByRole('dialog').locator('table').first().waitFor();
    },
  },
  {
    name: 'dialog: the large section',
    page: 'bench',
    dialog: 'large-section-title',
    open: async (page) => {
      await button(page, text.sectionView.large).click();
      await page.getByRole('dialog').locator('svg[data-state=bent]').first().waitFor();
    },
  },
  {
    name: 'dialog: projects',
    page: 'bench',
    dialog: 'projects-title',
    open: async (page) => {
      await cell(page, 0, 'count').fill('2');
      await kept(page);
      await fromMenu(page, keeping.projects.open);
      await page.locator('.shelf-row').first().waitFor();
    },
  },
  {
    name: 'dialog: saved states of a project',
    page: 'bench',
    dialog: 'projects-title',
    open: async (page) => {
      await cell(page, 0, 'count').fill('2');
      await kept(page);
      await fromMenu(page, keeping.projects.open);
      await page.locator('.shelf-row').first().getByRole('button', { name: keeping.projects.historyShort }).click();
      await page.getByRole('dialog').locator('ol li, ul li').first().waitFor();
    },
  },
  {
    name: 'dialog: units',
    page: 'bench',
    dialog: 'units-title',
    open: async (page) => {
      await page.locator('.units-button').click();
      await page.getByRole('dialog').locator('select').first().waitFor();
    },
  },
  {
    name: 'dialog: a measured file',
    page: 'bench',
    dialog: 'measured-title',
    open: async (page) => {
      const file = { name: 'a run.csv', mimeType: 'text/csv', buffer: Buffer.from(MEASURED) };
      await page.locator('[data-measured-file]').setInputFiles(file);
      await page.getByRole('dialog').locator('.reading-result').waitFor();
    },
  },
  ...['machine', 'gas', 'springs', 'reboundStack', 'wear', 'missing', 'sheet'].map(record),
  {
    name: 'aim: drawn',
    page: 'aim',
    open: async (page) => {
      await button(page, aimWords.make.make).click();
      await page.locator('.aim-handle').first().waitFor();
    },
  },
  {
    name: 'aim: by damping ratio',
    page: 'aim',
    open: (page) => button(page, aimWords.make.ways.ratio).click(),
  },
  {
    name: 'aim: change of a build',
    page: 'aim',
    open: (page) => button(page, aimWords.make.ways.change).click(),
  },
  {
    name: 'search',
    page: 'search',
    open: async (page) => {
      for (const each of await page.locator('.search summary').all()) await each.click();
    },
  },
  { name: 'sheet', page: 'sheet', open: (page) => page.locator('.paper .sheet-title').waitFor() },
  {
    name: 'proof: cases opened',
    page: 'proof',
    open: async (page) => {
      await page.locator('.run-status[data-phase=done]').waitFor();
      await page.getByText(proofWords.kindsTitle).click();
      for (const id of ['stack/fem-two-stage-large', 'plate/timoshenko-table-3-row-07-printed'])
        await page.locator(`[data-case="${id}"]`).getByRole('button').click();
    },
  },
];

export const partOf = ({ dialog, part = 'html' }: View): string =>
  dialog ? `dialog[aria-labelledby="${dialog}"]` : part;

/** From the bench, drawn, to a view of any page. */
export async function openView(page: Page, view: View): Promise<void> {
  if (view.page !== 'bench') {
    await page.evaluate((id) => {
      location.hash = `#${id}`;
    }, view.page);
    await page.locator(`.pages [aria-current=page]`).getByText(pageWords.pages[view.page].name).waitFor();
    await page.locator('main:not([aria-busy]) h1').waitFor({ state: 'attached' });
  }
  await view.open(page);
  // Where the page was entered is no part of how it looks.
  await page.evaluate(() => (document.activeElement as HTMLElement).blur());
}
