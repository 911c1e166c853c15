import { defineConfig } from 'vitest/config';

/** Tests in a real Chromium against the built bench; `npm test` builds it first. */
export default defineConfig({
  test: {
    include: ['tests/browser/**/*.spec.ts'],
    globalSetup: ['tests/browser/global-setup.ts'],
    setupFiles: ['tests/setup.ts'],
    fileParallelism: false,
    testTimeout: 90_000,
    // A busy machine draws late: one second, the usual patience, is a matter of its load and not of the bench.
    expect: { poll: { timeout: 30_000 } },
    // The report names what passed only at the second try.
    retry: process.env.CI ? 1 : 0,
    hookTimeout: 60_000,
  },
});
