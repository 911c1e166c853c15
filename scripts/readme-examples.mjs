/**
 * `npm run readme`: runs the examples of README.md and writes down what they print now, in a terminal of 100 columns as the page says.
 * Look at what changed, and why.
 */
import { execFileSync } from 'node:child_process';
import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { ROOT } from './lib/root.mjs';

const page = join(ROOT, 'README.md');
const fresh = readFileSync(page, 'utf8').replace(/```console\n\$ (npm run [^\n]+)\n[^$]*?```/g, (_, command) => {
  const env = { ...process.env, COLUMNS: '100' };
  const printed = execFileSync('bash', ['-o', 'pipefail', '-c', command], { cwd: ROOT, encoding: 'utf8', env });
  return `\`\`\`console\n$ ${command}\n${printed}\`\`\``;
});
writeFileSync(page, fresh);
