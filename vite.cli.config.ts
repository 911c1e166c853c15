import { defineConfig } from 'vite';
import { thirdPartyLicences } from './scripts/lib/third-party.mjs';

/** The command line as one file for Node, with the packages it uses inside. */
export default defineConfig({
  publicDir: false,
  plugins: [thirdPartyLicences()],
  ssr: { noExternal: true, target: 'node' },
  build: {
    ssr: 'src/cli/main.ts',
    target: 'node20',
    emptyOutDir: true,
    rolldownOptions: {
      output: { entryFileNames: 'shimwright.js', codeSplitting: false, banner: '#!/usr/bin/env node' },
    },
  },
});
