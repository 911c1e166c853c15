import preact from '@preact/preset-vite';
import { defineConfig } from 'vite';
import { offlineFiles } from './scripts/lib/offline-files.mjs';
import { policyInPage } from './scripts/lib/policy-in-page.mjs';
import { SECURITY_HEADERS } from './scripts/lib/security-headers.mjs';
import { thirdPartyLicences } from './scripts/lib/third-party.mjs';

// While developing, Vite puts its own inline script into the page; the built page is served with the whole policy.
const { 'Content-Security-Policy': _policy, ...developmentHeaders } = SECURITY_HEADERS;

export default defineConfig({
  base: './',
  plugins: [preact(), thirdPartyLicences(), policyInPage(), offlineFiles()],
  server: { host: '127.0.0.1', headers: developmentHeaders },
  worker: { format: 'es' },
  build: {
    target: 'es2022',
    outDir: 'dist/bench',
    emptyOutDir: true,
    // The charts library is one large file, loaded when the first chart is drawn.
    chunkSizeWarningLimit: 12_000,
    rolldownOptions: {
      input: { index: 'index.html', 'service-worker': 'src/ui/offline/service-worker.ts' },
      output: {
        // A service worker has one address for ever, and governs the folder that it lies in.
        entryFileNames: ({ name }) => (name === 'service-worker' ? '[name].js' : 'assets/[name]-[hash].js'),
      },
    },
  },
});
