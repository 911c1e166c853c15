import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { decodeAny } from '../../../src/model/codec.ts';
import { parseShimList } from '../../../src/model/shim-list.ts';

const fromRoot = (path: string): URL => new URL(`../../../${path}`, import.meta.url);
const page = readFileSync(fromRoot('docs/file-format.md'), 'utf8');

describe('docs/file-format.md', () => {
  const examples = [...page.matchAll(/```json\n([\s\S]*?)```/g)].map((match) => match[1]);

  it.each(examples)('has an example that the program reads (%#)', (text) => {
    const decoded = decodeAny(text);
    expect(decoded.ok ? [] : decoded.faults).toEqual([]);
  });

  it('has an example of each format', () => {
    expect(new Set(examples.map((text) => JSON.parse(text).format))).toEqual(
      new Set(['shimwright/project', 'shimwright/stack']),
    );
  });

  it('names every code of the model, and no other', () => {
    const sources = readdirSync(fromRoot('src/model/'), { recursive: true, encoding: 'utf8' })
      .filter((name) => name.endsWith('.ts'))
      .map((name) => readFileSync(fromRoot(`src/model/${name}`), 'utf8'))
      .join('\n');
    const pattern = /['`]((?:document|stack|damper|bleed|poppet|adjuster|fluid|gas|project|shims)(?:\.[a-z-]+)+)['`]/g;
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
