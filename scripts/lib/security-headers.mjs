/**
 * Headers of every answer. The page needs nothing from elsewhere, so nothing from elsewhere is let in.
 *
 * - `style-src 'unsafe-inline'`: the charts library writes style elements and style attributes while it draws.
 * - `img-src data: blob:`: it turns a chart into a picture through such addresses.
 * - The two Cross-Origin policies isolate the page, which gives it SharedArrayBuffer: the flag with which a running
 *   calculation is asked to stop (docs/decisions/0001-cancel.md).
 */
const CONTENT_SECURITY_POLICY = [
  "default-src 'none'",
  "script-src 'self'",
  "worker-src 'self'",
  "style-src 'self' 'unsafe-inline'",
  "img-src 'self' data: blob:",
  "font-src 'self'",
  "connect-src 'self'",
  "manifest-src 'self'",
  "base-uri 'none'",
  "form-action 'none'",
  "frame-ancestors 'none'",
].join('; ');

export const SECURITY_HEADERS = Object.freeze({
  'Content-Security-Policy': CONTENT_SECURITY_POLICY,
  'Cross-Origin-Embedder-Policy': 'require-corp',
  'Cross-Origin-Opener-Policy': 'same-origin',
  'Cross-Origin-Resource-Policy': 'same-origin',
  'Referrer-Policy': 'no-referrer',
  'X-Content-Type-Options': 'nosniff',
});
