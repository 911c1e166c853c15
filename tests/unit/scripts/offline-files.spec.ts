import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { expect, it, onTestFinished } from 'vitest';
import { listOfflineFiles } from '../../../scripts/lib/offline-files.mjs';

function folderWith(files: Record<string, string>): string {
  const folder = mkdtempSync(join(tmpdir(), 'shimwright-offline-'));
  onTestFinished(() => rmSync(folder, { recursive: true, force: true }));
  mkdirSync(join(folder, 'assets'));
  for (const [path, content] of Object.entries(files)) writeFileSync(join(folder, path), content);
  return folder;
}

const FILES = { 'index.html': 'abc', 'assets/a.js': '', 'service-worker.js': 'x', 'third-party-licences.txt': 'y' };

it('lists every file that the bench needs, with the SHA-256 of its content', () => {
  // FIPS 180-4: the example "abc", and the empty text.
  expect(listOfflineFiles(folderWith(FILES)).files).toEqual([
    { path: 'assets/a.js', hash: 'e3b0c44298fc1c149afbf4c8996fb92427ae41e4649b934ca495991b7852b855' },
    { path: 'index.html', hash: 'ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad' },
  ]);
});

it('has the same version for the same files, and another for any change of what is needed', () => {
  const versionOf = (change: Record<string, string>) => listOfflineFiles(folderWith({ ...FILES, ...change })).version;
  const version = versionOf({});
  expect(versionOf({})).toBe(version);
  expect(versionOf({ 'third-party-licences.txt': 'z' })).toBe(version);
  expect(versionOf({ 'index.html': 'abd' })).not.toBe(version);
  expect(versionOf({ 'assets/b.js': '' })).not.toBe(version);
});
