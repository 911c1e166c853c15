import { SECURITY_HEADERS } from './security-headers.mjs';

/** These a policy in the page's own text cannot hold: a browser takes them from headers alone. */
const HEADER_ONLY = /^(frame-ancestors|sandbox|report-uri)\b/;

/** The policy of the headers as far as a page can state it itself. */
export const POLICY_IN_PAGE = SECURITY_HEADERS['Content-Security-Policy']
  .split('; ')
  .filter((directive) => !HEADER_ONLY.test(directive))
  .join('; ');

/**
 * Writes the policy into the built page too, so that it holds wherever the built files are served from.
 * @returns {import('vite').Plugin}
 */
export function policyInPage() {
  return {
    name: 'policy-in-page',
    apply: 'build',
    transformIndexHtml: () => [
      {
        tag: 'meta',
        attrs: { 'http-equiv': 'Content-Security-Policy', content: POLICY_IN_PAGE },
        injectTo: 'head-prepend',
      },
    ],
  };
}
