import preact from '@preact/preset-vite';
import { defineConfig } from 'vite';
import { SECURITY_HEADERS } from './scripts/lib/security-headers.mjs';
import { thirdPartyLicences } from './scripts/lib/third-party.mjs';

// While developing, Vite puts its own inline script into the page; the built page is served with the whole policy.
const { 'Content-Security-Policy': _policy, ...developmentHeaders } = SECURITY_HEADERS;

export default defineConfig({
  base: './',
  plugins: [preact(), thirdPartyLicences()],
  server: { host: '127.0.0.1', headers: developmentHeaders },
  worker: { format: 'es' },
  build: {
    target: 'es2022',
    outDir: 'dist/bench',
    emptyOutDir: true,
    // The charts library is one large file, loaded when the first chart is drawn.
    chunkSizeWarningLimit: 12_000,
  },
});
