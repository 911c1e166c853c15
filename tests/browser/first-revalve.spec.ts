import { readFileSync } from 'node:fs';
import type { Page } from 'playwright-core';
import { describe, expect, it } from 'vitest';
import { LAYOUTS, type Layout } from '../../src/model/project.ts';
import { compare } from '../../src/ui/text/compare.ts';
import { text } from '../../src/ui/text/en.ts';
import { pageWords } from '../../src/ui/text/pages.ts';
import { diameters, fromMenu, kept, onBench, settled } from './bench-page.ts';

type Act = { readonly press: string } | { readonly write: string };

/** What the page tells its reader to do, in its order: bold words are pressed, lists are written. */
function actsOf(page: string): Act[] {
  const steps = page.slice(page.indexOf('\n1. '), page.indexOf('## What the numbers still need'));
  return [...steps.matchAll(/\*\*(.+?)\*\*|```text\n([\s\S]*?)```/g)].map(([, press, list]) =>
    press ? { press } : { write: list.trim().replaceAll(/\n\s+/g, '\n') },
  );
}

/**
 * Card, Moran, Newell, "The keystroke-level model for user performance time with interactive systems", CACM 23(7), 1980:
 * an average non-secretary typist's key, pointing, a thought before an act, hand from mouse to keys; values from memory [s].
 */
const KEY = 0.28;
const POINT = 1.1;
const THINK = 1.35;
const HOME = 0.4;

const timeOf = (act: Act): number =>
  'press' in act ? THINK + POINT + KEY : 2 * HOME + act.write.split('\n').length * THINK + act.write.length * KEY;

async function carryOut(page: Page, act: Act): Promise<void> {
  if ('write' in act) return page.keyboard.type(act.write);
  const dialog = page.getByRole('dialog');
  const within = (await dialog.count()) > 0 ? dialog : page;
  const build = page.locator('.build-name', { hasText: act.press });
  // By the words that are seen; those heard may say more.
  const button = within.locator('button:visible').filter({ hasText: new RegExp(`^${act.press}$`) });
  await ((await build.count()) > 0 ? build.first() : button).click();
}

const acts = actsOf(readFileSync('docs/first-revalve.md', 'utf8'));
const forces = async (page: Page): Promise<number[]> =>
  (await page.locator('[data-way=compression] [data-row=force] td').allTextContents()).map((each) =>
    Number(each.replace('−', '-')),
  );

describe('the first revalve', () => {
  it('is told in the words of the bench', () => {
    const pressed = acts.flatMap((act) => ('press' in act ? [act.press] : []));
    const { edit, duplicate } = text.builds;
    expect(pressed).toEqual([
      pageWords.projectMenu,
      text.blank.menu,
      text.damper.layoutName.monotube,
      text.stack.paste,
      text.stack.pasteApply(5),
      text.way.rebound,
      text.stack.paste,
      text.stack.pasteApply(3),
      edit,
      duplicate,
      text.way.compression,
      text.stack.paste,
      text.stack.pasteApply(5),
      compare.open,
      compare.close,
    ]);
  });

  it('leads from a written stack to a compared revalve when its page is followed to the letter', () =>
    onBench(async (page) => {
      for (const act of acts.slice(0, -1)) await carryOut(page, act);
      const shown = await page.getByRole('dialog').textContent();
      expect(shown).toContain(text.builds.copyOf(text.blank.build));
      await carryOut(page, acts[acts.length - 1]);
      expect(await page.getByRole('dialog').count()).toBe(0);
      expect(await diameters(page)).toEqual(['34', '20', '30', '24', '20']);
      // Fewer and smaller shims on the same ports and bleed hold the oil back less.
      await expect.poll(async () => (await forces(page)).length).toBe(2);
      await expect
        .poll(async () => {
          const all = await forces(page);
          return all[all.length - 1] < all[0];
        })
        .toBe(true);
      await page.getByRole('button', { name: text.placeOf('monotube', 'pistonRebound').name, exact: true }).click();
      expect(await diameters(page)).toEqual(['28', '24', '20']);
    }));

  it('takes less than five minutes by the keystroke-level model, and about what its page says', () => {
    const seconds = acts.reduce((sum, act) => sum + timeOf(act), 0);
    expect(acts.length).toBe(18);
    expect(seconds).toBeLessThan(300);
    expect(seconds / 60).toBeGreaterThan(1.5);
    expect(seconds / 60).toBeLessThan(2.5);
  });
});

describe("a project of one's own", () => {
  const start = async (page: Page, layout: Layout): Promise<void> => {
    await fromMenu(page, text.blank.menu);
    await page.getByRole('dialog').getByRole('button', { name: text.damper.layoutName[layout], exact: true }).click();
    await page.getByRole('dialog').waitFor({ state: 'detached' });
    await settled(page);
  };
  const placeholders = (page: Page) => page.getByText(text.blank.placeholder);
  const { part, measuredLabel } = text.damper.assumed;

  it.each(LAYOUTS)('of the layout %s solves at once, and says that all of it is assumed', (layout) =>
    onBench(async (page) => {
      await start(page, layout);
      expect(await page.getByLabel(text.bar.projectName, { exact: true }).inputValue()).toBe(
        text.blank.name(text.damper.layoutName[layout]),
      );
      expect(await page.locator('.bar .tag.invented').count()).toBe(0);
      const told = page.locator('.charts .warnings');
      for (const each of ['sizes', 'pistonCompression', 'pistonRebound', 'oil', 'gas'] as const)
        expect(await told.textContent()).toContain(part[each]);
      expect(await placeholders(page).count()).toBe(1);
      const [force] = await forces(page);
      expect(force).toBeGreaterThan(0);
    }),
  );

  it('keeps what was measured, stays after a reload, and undo goes back to what was there before', () =>
    onBench(async (page) => {
      const before = await page.getByLabel(text.bar.projectName, { exact: true }).inputValue();
      await start(page, 'monotube');
      await page.locator('[data-group=sizes] > summary').click();
      await page.getByRole('button', { name: measuredLabel.sizes }).click();
      const told = page.locator('.charts .warnings');
      await expect.poll(() => told.textContent()).not.toContain(part.sizes);
      expect(await told.textContent()).toContain(part.gas);
      await kept(page);
      await page.reload();
      await settled(page);
      expect(await told.textContent()).not.toContain(part.sizes);
      await start(page, 'twin-tube');
      await page.locator('.bar .icon').first().click();
      await expect.poll(() => page.getByLabel(text.bar.projectName, { exact: true }).inputValue()).not.toBe(before);
      expect(await told.textContent()).not.toContain(part.baseCompression);
    }));
});
