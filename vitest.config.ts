import { defineConfig } from 'vitest/config';

export default defineConfig({
  test: {
    include: ['tests/**/*.spec.ts', 'tests/**/*.spec.tsx'],
    exclude: ['tests/browser/**'],
    setupFiles: ['tests/setup.ts'],
    testTimeout: 60_000,
  },
});
