/** `npm run reference:index`: writes reference-cases/README.md from the cases. */
import { writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { loadReferenceCases, REFERENCE_FOLDER } from './lib/reference-cases.ts';
import { referenceIndex } from './lib/reference-index.ts';

const cases = loadReferenceCases();
writeFileSync(join(REFERENCE_FOLDER, 'README.md'), referenceIndex(cases));
console.error(`${cases.length} cases listed in reference-cases/README.md`);
