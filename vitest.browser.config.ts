import { defineConfig } from 'vitest/config';

/** Tests in a real Chromium against the built bench; `npm test` builds it first. */
export default defineConfig({
  test: {
    include: ['tests/browser/**/*.spec.ts'],
    globalSetup: ['tests/browser/global-setup.ts'],
    setupFiles: ['tests/setup.ts'],
    fileParallelism: false,
    testTimeout: 60_000,
    hookTimeout: 60_000,
  },
});
