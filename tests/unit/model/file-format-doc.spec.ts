import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { decodeAny } from '../../../src/model/codec.ts';
import { schemaFiles } from '../../../src/model/json-schema.ts';
import { LAYOUTS, type Project } from '../../../src/model/project.ts';
import { parseShimList } from '../../../src/model/shim-list.ts';

const fromRoot = (path: string): URL => new URL(`../../../${path}`, import.meta.url);
const page = readFileSync(fromRoot('docs/file-format.md'), 'utf8');

describe('docs/file-format.md', () => {
  const examples = [...page.matchAll(/```json\n([\s\S]*?)```/g)].map((match) => match[1]);

  it.each(examples)('has an example that the program reads (%#)', (text) => {
    const decoded = decodeAny(text);
    expect(decoded.ok ? [] : decoded.faults).toEqual([]);
  });

  const project = examples.find((text) => JSON.parse(text).format === 'shimwright/project') ?? '{}';
  const patches = [...page.matchAll(/```json patch\n([\s\S]*?)```/g)].map((match) => JSON.parse(match[1]));
  const patched = patches.map((patch) => merged(JSON.parse(project), patch));

  it.each(patched)('has a patch of its project that the program reads (%#)', (document) => {
    const decoded = decodeAny(JSON.stringify(document));
    expect(decoded.ok ? [] : decoded.faults).toEqual([]);
  });

  it('shows every layout', () => {
    const layouts = [JSON.parse(project), ...patched].map((document) => (document as Project).damper.layout);
    expect(layouts).toEqual(LAYOUTS);
  });

  it('has an example of each format', () => {
    expect(new Set(examples.map((text) => JSON.parse(text).format))).toEqual(
      new Set(['shimwright/project', 'shimwright/stack']),
    );
  });

  it('tells of every key that the schemas know', () => {
    const keys = Object.values(schemaFiles()).flatMap((text) => keysOf(JSON.parse(text)));
    const tables = page.slice(0, page.indexOf('## Fault codes')).replace(/```[\s\S]*?```/g, '');
    const told = new Set([...tables.matchAll(/`[^`]+`/g)].flatMap(([code]) => code.match(/\w+(-\w+)*/g) ?? []));
    expect(keys.length).toBeGreaterThan(100);
    expect([...new Set(keys)].filter((key) => !told.has(key))).toEqual([]);
  });

  it('names every code of the model, and no other', () => {
    const sources = readdirSync(fromRoot('src/model/'), { recursive: true, encoding: 'utf8' })
      .filter((name) => name.endsWith('.ts'))
      .map((name) => readFileSync(fromRoot(`src/model/${name}`), 'utf8'))
      .join('\n');
    const pattern =
      /['`]((?:chassis|document|stack|damper|bleed|poppet|adjuster|fluid|gas|measurement|record|project|shims)(?:\.[a-z-]+)+)['`]/g;
    const codes = (text: string): string[] => [...new Set([...text.matchAll(pattern)].map((match) => match[1]))].sort();
    expect(codes(page.slice(page.indexOf('## Fault codes')))).toEqual(codes(sources));
  });

  it('reads the features behind the sizes as it says', () => {
    const table = page.slice(page.indexOf('| written behind | is |'));
    const shown = [...table.matchAll(/: `([^`]+)` \|$/gm)].map((match) => match[1]);
    expect(shown.map((written) => parseShimList(written))).toMatchObject([
      { rows: [{ outerDiameter_mm: 24, innerDiameter_mm: 20 }], faults: [] },
      { rows: [{ outerDiameter_mm: 30, dish_mm: 0.05 }], faults: [] },
      { rows: [{ outerDiameter_mm: 30, notches: { count: 4, width_mm: 2 } }], faults: [] },
      { rows: [{ count: 2, material: { youngsModulus_GPa: 120, poissonsRatio: 0.34 } }], faults: [] },
    ]);
  });

  const lists = [...page.matchAll(/^\| `([^`]+)` \| (\d+) x ([\d.]+) x ([\d.]+) \|$/gm)];

  it('shows written lists', () => {
    expect(lists.length).toBeGreaterThan(10);
  });

  it.each(lists.map(([, written, ...numbers]) => [written, numbers.map(Number)] as const))(
    'reads %s as it says',
    (written, [count, outerDiameter_mm, thickness_mm]) => {
      expect(parseShimList(written)).toEqual({ rows: [{ outerDiameter_mm, thickness_mm, count }], faults: [] });
    },
  );
});

type Json = Record<string, unknown>;

const isRecord = (value: unknown): value is Json =>
  typeof value === 'object' && value !== null && !Array.isArray(value);

/** JSON Merge Patch, RFC 7396. */
function merged(target: unknown, patch: unknown): unknown {
  if (!isRecord(patch)) return patch;
  const from = isRecord(target) ? target : {};
  const entries = Object.entries(patch).map(([key, value]) => [key, merged(from[key], value)]);
  const whole = { ...from, ...Object.fromEntries(entries) };
  return Object.fromEntries(Object.entries(whole).filter(([, value]) => value !== null));
}

/** Names of all keys of a JSON Schema, at every level. */
function keysOf(schema: unknown): string[] {
  if (Array.isArray(schema)) return schema.flatMap(keysOf);
  if (!isRecord(schema)) return [];
  const own = isRecord(schema.properties) ? Object.keys(schema.properties) : [];
  return [...own, ...Object.values(schema).flatMap(keysOf)];
}
