/** `npm run schema`: writes the published JSON Schemas out of the program's own checks. */
import { mkdirSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { schemaFiles } from '../src/model/json-schema.ts';

const ROOT = join(dirname(fileURLToPath(import.meta.url)), '..');

for (const [path, text] of Object.entries(schemaFiles())) {
  mkdirSync(join(ROOT, dirname(path)), { recursive: true });
  writeFileSync(join(ROOT, path), text);
}
