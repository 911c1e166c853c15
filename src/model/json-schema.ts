/** The published JSON Schemas, made from the schemas that the program itself checks with. */
import { projectSchema } from './project-schema.ts';
import { stackFileSchema } from './stack-schema.ts';
import { z } from './zod.ts';

/** Text of each published file, by its path in the package. How sizes must relate is beyond JSON Schema and not in it. */
export function schemaFiles(): Readonly<Record<string, string>> {
  const text = (schema: z.ZodType): string => `${JSON.stringify(z.toJSONSchema(schema, { io: 'input' }), null, 2)}\n`;
  return { 'schema/project.schema.json': text(projectSchema), 'schema/stack.schema.json': text(stackFileSchema) };
}
