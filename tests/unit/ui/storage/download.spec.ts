import { expect, it } from 'vitest';
import { fileNameFor } from '../../../../src/ui/storage/download.ts';

it.each([
  ['Trail rear, spring 26', 'trail-rear-spring-26.shimwright.json'],
  ['  ', 'project.shimwright.json'],
  ['../../etc/passwd', 'etc-passwd.shimwright.json'],
  ['Dämpfer', 'dampfer.shimwright.json'],
])('%j becomes %j', (name, file) => expect(fileNameFor(name)).toBe(file));
