import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { schemaFiles } from '../../../src/model/json-schema.ts';
import { z } from '../../../src/model/zod.ts';
import { soundCartridge, soundProject, soundStack, withValue } from '../../helpers/documents.ts';

const committed = (path: string): string => readFileSync(new URL(`../../../${path}`, import.meta.url), 'utf8');
const published = (path: string): z.ZodType => z.fromJSONSchema(JSON.parse(committed(path)));

describe('the published JSON Schemas', () => {
  it.each(Object.entries(schemaFiles()))('%s is what the program checks with (else: npm run schema)', (path, text) => {
    expect(committed(path)).toBe(text);
  });

  it('take the sound documents and refuse broken ones', () => {
    const project = published('schema/project.schema.json');
    const stack = published('schema/stack.schema.json');
    expect(project.safeParse(soundProject()).success).toBe(true);
    expect(project.safeParse(soundCartridge()).success).toBe(true);
    expect(project.safeParse(withValue(soundCartridge(), 'damper.refillCheck.travel_mm', 0)).success).toBe(false);
    expect(stack.safeParse({ ...soundStack(), ofLater: 1 }).success).toBe(true);
    expect(stack.safeParse(withValue(soundStack(), 'shims[0].thickness_mm', -1)).success).toBe(false);
    expect(project.safeParse(withValue(soundProject(), 'damper.boreDiameter_mm', undefined)).success).toBe(false);
  });
});

describe('zod', () => {
  it('never compiles code, so that a page needs no permission to', () => {
    expect(z.config().jitless).toBe(true);
  });
});
