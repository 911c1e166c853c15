/** The force at the speed cursor under other settings, as the page shows it and as the solver has it. */
import type { Page } from 'playwright-core';
import { decodeProject } from '../../src/model/codec.ts';
import { type Setting, withSetting } from '../../src/model/setting.ts';
import { forceCurveForBuild } from '../../src/solver/index.ts';
import { solvedSpeeds } from '../../src/ui/app/speeds.ts';
import { showTab } from './fork-page.ts';

export const numberIn = (written: string | null): number => Number((written ?? '').replace('−', '-'));

export async function swept(page: Page, tab: 'temperature' | 'position' | 'clicks'): Promise<void> {
  await showTab(page, tab);
  await page.locator('[data-sweep=done] .plot-board .scatterlayer .trace').first().waitFor();
  await page.locator('.sweep-numbers summary').click();
}

/** The cell of the build on show, the second of the demo's two. */
export const at = (page: Page, place: number, way: 'compression' | 'rebound' = 'compression') =>
  page.locator(`.sweep-numbers [data-way=${way}] [data-at="${place}"] td`).nth(1);
export const asSet = (page: Page) => page.locator('.sweep-numbers [data-way=compression] td.as-set').nth(1);

/** The second build of a project, straight from the solver on this machine. */
export function solved(written: string, setting: Setting, speed_m_s: number, stroke_m?: number): number {
  const read = decodeProject(written);
  if (!read.ok) throw new Error('the demo is no project');
  const [, { id }] = read.document.builds;
  const theory = 'auto';
  const speeds_m_s = solvedSpeeds(2);
  const options = { speeds_m_s, theory, ...(stroke_m !== undefined && { stroke_m }) } as const;
  const curve = forceCurveForBuild(withSetting(read.document, id, setting), id, options);
  const point = curve.points.find(({ shaftSpeed_m_s }) => shaftSpeed_m_s === speed_m_s);
  if (point?.status !== 'converged') throw new Error('not solved');
  return point.force_N;
}

/** A speed is read to the millimetre a second, so the force to a newton or two. */
export const FORCE_PLAY_N = 3;
export const WAYS = [
  ['compression', 1],
  ['rebound', -1],
] as const;
