/** The whole job on an invented fork, as a person would do it: from parts on the table to a sheet, and back with a measured curve. */
import type { Page } from 'playwright-core';
import { expect, it } from 'vitest';
import type { Build, Project } from '../../src/model/project.ts';
import { forceCurveForBuild } from '../../src/solver/index.ts';
import { aimWords } from '../../src/ui/text/aim.ts';
import { drawerWords } from '../../src/ui/text/drawer.ts';
import { text } from '../../src/ui/text/en.ts';
import { measuredWords } from '../../src/ui/text/measured.ts';
import type { PageId } from '../../src/ui/text/pages.ts';
import { recordWords } from '../../src/ui/text/record.ts';
import { searchWords } from '../../src/ui/text/search.ts';
import { normals } from '../helpers/normals.ts';
import { drop, fromMenu, kept, onBench, settled } from './bench-page.ts';
import { box, showTab } from './fork-page.ts';
import { DRAWER_COUNT, DRAWER_LIST, JOB_FORK } from './job-fork.ts';
import { storedIn } from './keep-page.ts';
import { begin, openSearch, setEffort, withoutReserves } from './search-page.ts';

/** The quick theory: what is tested is the way, and its numbers elsewhere. */
const THEORY = 'small-deflection';
const MACHINE = 'Siskin 190 (invented)';
/** What nobody tells the page: how its jets flow, and where the zero of the load cell stands. */
const HIDDEN = { jetDischarge: 0.76, forceOffset_N: -9 };
const NOISE_N = 3;
const SPEEDS = [0.04, 0.08, 0.15, 0.25, 0.4, 0.6, 0.9, 1.3].flatMap((v) => [v, -v]);

const LONG = { timeout: 60_000 };
const button = (page: Page, name: string) => page.getByRole('button', { name, exact: true });

async function openPage(page: Page, id: PageId): Promise<void> {
  await page.evaluate((hash) => {
    location.hash = hash;
  }, `#${id}`);
  await page.locator('main:not([aria-busy]) h1').waitFor({ state: 'attached' });
}

const toBench = async (page: Page): Promise<void> => {
  await openPage(page, 'bench');
  await settled(page);
};

/** The fork as it is kept on this machine. */
async function stored(page: Page): Promise<Project> {
  await kept(page);
  const { projects, texts } = await storedIn(page);
  const own = projects.find(({ name }) => name === JOB_FORK.name);
  const newest = texts.find(({ project, revision }) => project === own?.id && revision === own?.head);
  return JSON.parse(newest?.projectText ?? '{}') as Project;
}

async function openFork(page: Page, content: string): Promise<void> {
  await drop(page, 'siskin.json', content);
  await expect.poll(() => page.getByLabel(text.bar.projectName).inputValue()).toBe(JOB_FORK.name);
  await settled(page);
}

async function takeApart(page: Page): Promise<void> {
  await openPage(page, 'record');
  await page.locator('[data-view=machine]').click();
  await box(page, recordWords.facts.machine).fill(MACHINE);
  await button(page, recordWords.markDone).click();
  await page.locator('[data-view=oil]').click();
  await box(page, recordWords.facts.oilVolume).fill('285');
  await button(page, recordWords.markDone).click();
  await page.locator('[data-view=missing]').click();
  await page.locator('[data-unknown]').first().waitFor(LONG);
}

async function wish(page: Page): Promise<void> {
  await openPage(page, 'aim');
  await button(page, aimWords.make.ways.change).click();
  await page.locator('[data-change="0"] select').nth(1).selectOption({ label: aimWords.make.ranges.all });
  await button(page, aimWords.make.make).click();
  await page.locator('[data-origin=change]').waitFor(LONG);
}

/** @returns the name of the build that the first stack of the list becomes */
async function searchDrawer(page: Page): Promise<string> {
  await openSearch(page);
  await button(page, drawerWords.paste).click();
  await page.locator('.drawer textarea').fill(DRAWER_LIST);
  await page.locator('.drawer .paste-box [type=submit]').click();
  await page.locator(`[data-drawer-total="${DRAWER_COUNT}"]`).waitFor();
  await page.getByLabel(text.placeOf('cartridge', 'pistonCompression').name, { exact: true }).uncheck();
  await page.getByLabel(text.placeOf('cartridge', 'baseCompression').name, { exact: true }).check();
  await withoutReserves(page);
  await setEffort(page, { starts: 2, steps: 60, seed: 5, cores: 2 });
  await begin(page);
  await page.locator('.run-bar[data-phase=finished]').waitFor(LONG);
  const [aim] = (await stored(page)).aims ?? [];
  await page.locator('[data-rank="1"] .make').click();
  const name = searchWords.makeName(aim.name, 1);
  await expect.poll(async () => (await stored(page)).builds.map((build) => build.name)).toContain(name);
  return name;
}

async function chooseBuild(page: Page, name: string): Promise<void> {
  await page.locator('.build-name', { hasText: name }).click();
  await page.locator('.title-block', { hasText: name }).waitFor();
}

async function scatter(page: Page): Promise<void> {
  await showTab(page, 'tolerance');
  await page.getByLabel(text.tolerance.samples, { exact: true }).selectOption('32');
  await page.getByLabel(text.tolerance.label(text.tolerance.names.thickness), { exact: true }).fill('0.004');
  await expect.poll(() => page.locator('.tolerance').getAttribute('data-tolerances'), LONG).toBe('solved');
  expect(await page.locator('.tolerance-verdict').textContent()).toMatch(/\d+ % of the scatter/);
  await showTab(page, 'force');
}

/** What a bench would write of that build, had it the hidden coefficients. */
function measuredFile(project: Project, { id }: Build): string {
  const options = { speeds_m_s: SPEEDS, theory: THEORY, coefficients: { jetDischarge: HIDDEN.jetDischarge } } as const;
  const noise = normals(21, SPEEDS.length);
  const rows = forceCurveForBuild(project, id, options).points.map((point, i) => {
    if (point.status !== 'converged') throw new Error(point.reason);
    return `${SPEEDS[i]},${(point.force_N + HIDDEN.forceOffset_N + NOISE_N * noise[i]).toFixed(2)}`;
  });
  return `speed [m/s],force [N]\n${rows.join('\n')}\n`;
}

const dots = (page: Page): Promise<number> =>
  page
    .locator('.plot-board')
    .evaluate((board) =>
      (board as unknown as { data: { mode: string; x: number[] }[] }).data
        .filter(({ mode }) => mode === 'markers')
        .reduce((sum, { x }) => sum + x.length, 0),
    );

async function overlay(page: Page, file: string): Promise<void> {
  const buffer = Buffer.from(file, 'utf8');
  await page.locator('[data-measured-file]').setInputFiles({ name: 'bench.csv', mimeType: 'text/csv', buffer });
  await page.locator('.measured-view .primary').click();
  await page.locator('[data-measurement]').waitFor();
  await expect.poll(() => dots(page)).toBe(SPEEDS.length);
  expect(await page.locator('[data-rms=compression]').textContent()).toMatch(/\d+ N/);
}

async function fitHidden(page: Page): Promise<void> {
  await button(page, measuredWords.fit.start).click();
  await page.locator('.fit-table').waitFor(LONG);
  for (const [name, hidden] of Object.entries(HIDDEN)) {
    const cells = await page.locator(`[data-coefficient=${name}] td`).allTextContents();
    const [low, high] = (cells[2].match(/[−-]?\d+(\.\d+)?/g) ?? []).map((each) => Number(each.replace('−', '-')));
    expect(low).toBeLessThanOrEqual(hidden);
    expect(high).toBeGreaterThanOrEqual(hidden);
  }
}

/** The sheet stands on a paper of its own, which text of the page does not reach into. */
const paper = (page: Page): Promise<string> =>
  page.locator('.paper').evaluate((host) => host.shadowRoot?.textContent ?? '');

/** Every part of the job, where a person would look for it. */
async function everythingIsThere(page: Page, name: string): Promise<void> {
  await chooseBuild(page, name);
  await expect.poll(() => dots(page)).toBe(SPEEDS.length);
  await page.locator('[data-coefficient=jetDischarge]').waitFor();
  await showTab(page, 'tolerance');
  const thickness = page.getByLabel(text.tolerance.label(text.tolerance.names.thickness), { exact: true });
  expect(await thickness.inputValue()).toBe('0.004');
  await openPage(page, 'record');
  await page.locator('[data-view=machine]').click();
  expect(await box(page, recordWords.facts.machine).inputValue()).toBe(MACHINE);
  await openPage(page, 'aim');
  await page.locator('[data-origin=change]').waitFor();
  await openSearch(page);
  await page.locator(`[data-drawer-total="${DRAWER_COUNT}"]`).waitFor();
  await openPage(page, 'sheet');
  await expect.poll(() => paper(page), LONG).toContain(name);
}

async function savedCopy(page: Page): Promise<string> {
  const arriving = page.waitForEvent('download');
  await fromMenu(page, text.bar.saveFile);
  return Buffer.concat(await (await (await arriving).createReadStream()).toArray()).toString('utf8');
}

it('leads from the parts of an invented fork to a sheet and back with a measured curve, and all of it is kept', async () => {
  let copy = '';
  let name = '';
  await onBench(async (page) => {
    await openFork(page, JSON.stringify(JOB_FORK));
    await page.getByRole('button', { name: text.theoryShort[THEORY] }).click();
    await takeApart(page);
    await wish(page);
    name = await searchDrawer(page);
    await toBench(page);
    await chooseBuild(page, name);
    await scatter(page);
    await openPage(page, 'sheet');
    await expect.poll(() => paper(page), LONG).toContain(name);
    const sheet = await paper(page);
    const laid = (await stored(page)).builds.find((each) => each.name === name)?.valves.baseCompression?.shims ?? [];
    for (const { outerDiameter_mm, thickness_mm } of laid)
      expect(sheet).toContain(`${outerDiameter_mm} × ${thickness_mm}`);
    await page.locator('.paper .curve svg polyline').first().waitFor(LONG);
    const project = await stored(page);
    const build = project.builds.find((each) => each.name === name) as Build;
    expect(build.valves.baseCompression).not.toEqual(JOB_FORK.builds[0].valves.baseCompression);
    await toBench(page);
    await overlay(page, measuredFile(project, build));
    await fitHidden(page);
    const before = await stored(page);
    await page.reload();
    await settled(page);
    expect(await stored(page)).toEqual(before);
    await everythingIsThere(page, name);
    copy = await savedCopy(page);
    expect(JSON.parse(copy)).toEqual(before);
  });
  await onBench(async (page) => {
    await openFork(page, copy);
    await everythingIsThere(page, name);
  });
}, 240_000);
