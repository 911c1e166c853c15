/** What the tests of the teardown record do again and again, as a person would. */
import { Buffer } from 'node:buffer';
import type { Page } from 'playwright-core';
import { recordWords as words } from '../../src/ui/text/record.ts';

export async function openRecord(page: Page): Promise<void> {
  await page.evaluate(() => {
    location.hash = '#record';
  });
  await page.getByRole('heading', { level: 1, name: words.title }).waitFor();
}

export async function go(page: Page, view: string): Promise<void> {
  const fold = page.locator('.rail-fold');
  if (await fold.isVisible()) await fold.click();
  await page.locator(`[data-view="${view}"]`).click();
}

/** A picture drawn in the page: 3200 × 800, so that it must be made smaller. */
async function picture(page: Page): Promise<{ name: string; mimeType: string; buffer: Buffer }> {
  const address = await page.evaluate(() => {
    const canvas = document.createElement('canvas');
    Object.assign(canvas, { width: 3200, height: 800 });
    const pen = canvas.getContext('2d') as CanvasRenderingContext2D;
    pen.fillStyle = 'teal';
    pen.fillRect(0, 0, 3200, 800);
    return canvas.toDataURL('image/png');
  });
  return { name: 'stack.png', mimeType: 'image/png', buffer: Buffer.from(address.split(',')[1], 'base64') };
}

export const addPhoto = async (page: Page): Promise<void> => {
  await page.locator('.photo-picker input').setInputFiles(await picture(page));
  await page.locator('.photo img[src^="blob:"]').first().waitFor();
};
