import { describe, expectTypeOf, it } from 'vitest';
import type { Project, StackFile } from '../../../src/model/project.ts';
import type { projectSchema } from '../../../src/model/project-schema.ts';
import type { stackFileSchema } from '../../../src/model/stack-schema.ts';
import type { z } from '../../../src/model/zod.ts';

/** Without the door for unknown fields that the schemas leave open at every level. */
type Known<T> = T extends readonly unknown[]
  ? { [K in keyof T]: Known<T[K]> }
  : T extends object
    ? { [K in keyof T as string extends K ? never : K]: Known<T[K]> }
    : T;

describe('the schemas', () => {
  it('infer the documents, key by key (checked by the compiler)', () => {
    expectTypeOf<Known<z.output<typeof projectSchema>>>().toEqualTypeOf<Known<Project>>();
    expectTypeOf<Known<z.output<typeof stackFileSchema>>>().toEqualTypeOf<Known<StackFile>>();
  });
});
