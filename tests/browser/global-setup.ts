/** One server of the built bench and one Chromium for all browser tests. */
import { existsSync } from 'node:fs';
import { join } from 'node:path';
import { chromium } from 'playwright-core';
import type { TestProject } from 'vitest/node';
import { BENCH_FOLDER } from '../../scripts/lib/build.mjs';
import { findChromium, NO_CHROMIUM } from '../../scripts/lib/chromium.mjs';
import { createStaticServer, listenFrom } from '../../scripts/lib/static-server.mjs';

declare module 'vitest' {
  export interface ProvidedContext {
    benchAddress: string;
    browserAddress: string;
  }
}

const FLAGS = [
  '--headless',
  '--no-sandbox',
  '--disable-gpu',
  '--disable-quic',
  '--no-first-run',
  '--disable-background-networking',
  '--disable-component-update',
  '--disable-sync',
];

export async function setup(project: TestProject): Promise<() => Promise<void>> {
  if (!existsSync(join(BENCH_FOLDER, 'index.html'))) throw new Error('The bench is not built: npm run build');
  const executablePath = findChromium();
  if (!executablePath) throw new Error(NO_CHROMIUM);
  const server = createStaticServer(BENCH_FOLDER);
  project.provide('benchAddress', await listenFrom(server, 0));
  const browser = await chromium.launchServer({ executablePath, args: FLAGS });
  project.provide('browserAddress', browser.wsEndpoint());
  return async () => {
    await browser.close();
    server.close();
    server.closeAllConnections();
  };
}
