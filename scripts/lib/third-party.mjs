import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';

const LICENCE_FILE = /^(licen[cs]e|notice|copying)/i;
const PACKAGE_FOLDER = /^.*[/\\]node_modules[/\\](?:@[^/\\]+[/\\])?[^/\\]+/;

/**
 * Writes third-party-licences.txt beside a bundle: the licence texts of every package whose code is in it.
 * @returns {import('vite').Plugin}
 */
export function thirdPartyLicences() {
  return {
    name: 'third-party-licences',
    generateBundle() {
      const folders = new Set(
        [...this.getModuleIds()].flatMap((id) => PACKAGE_FOLDER.exec(id.replaceAll('\0', ''))?.[0] ?? []),
      );
      const source = [...folders]
        .filter((folder) => existsSync(join(folder, 'package.json')))
        .map(licenceOf)
        .sort()
        .join('\n\n');
      this.emitFile({ type: 'asset', fileName: 'third-party-licences.txt', source });
    },
  };
}

/** @param {string} folder */
function licenceOf(folder) {
  const { name, version, license } = JSON.parse(readFileSync(join(folder, 'package.json'), 'utf8'));
  const texts = readdirSync(folder)
    .filter((file) => LICENCE_FILE.test(file))
    .map((file) => readFileSync(join(folder, file), 'utf8').trim());
  return [`${name} ${version} (${license})`, ...texts].join('\n\n');
}
