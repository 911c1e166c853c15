import { deflateRawSync, inflateRawSync } from 'node:zlib';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { readDemo } from '../../../../scripts/lib/demo-project.ts';
import { DEMOS } from '../../../../src/demo/index.ts';
import { LONGEST_MADE, projectOfBuild } from '../../../../src/model/link-form.ts';
import type { Project } from '../../../../src/model/project.ts';
import { LONGEST_READ, packLink, readLink } from '../../../../src/ui/storage/link.ts';

const projects = DEMOS.map(({ file }) => readDemo(file));
const [first] = projects;

async function pack(project: Project): Promise<string> {
  const fragment = await packLink(project);
  if (!fragment) throw new Error('too long');
  return fragment;
}

/** A link as a stranger would make it, with nothing of the code under test. */
const forge = (content: string | Buffer): string =>
  `#work=1.${deflateRawSync(content as Buffer, { level: 9 }).toString('base64url')}`;

describe('a link', () => {
  it.each(projects.map((project) => [project.name, project] as const))('carries %s, whole', async (_, project) => {
    expect(await readLink(await pack(project))).toEqual({ kind: 'project', document: project });
  });

  it('is raw deflate in base64url, as RFC 1951 and RFC 4648 have it', async () => {
    const fragment = await pack(first);
    expect(fragment).toMatch(/^#work=1\.[A-Za-z0-9_-]+$/);
    const packed = Buffer.from(fragment.slice('#work=1.'.length), 'base64url');
    expect(JSON.parse(inflateRawSync(packed).toString('utf8'))).toEqual(JSON.parse(JSON.stringify(first)));
    expect(await readLink(forge(JSON.stringify(first)))).toEqual({ kind: 'project', document: first });
  });

  it('carries names in any writing, and fields that this version does not know', async () => {
    await fc.assert(
      fc.asyncProperty(fc.string({ unit: 'grapheme', maxLength: 60 }), async (name) => {
        const project = { ...first, name, fromTheFuture: { name } };
        const content = await readLink(await pack(project));
        expect(content).toEqual({ kind: 'project', document: project });
      }),
    );
  });

  it('is not made when it would be longer than programs pass on', async () => {
    let state = 1;
    const noise = Array.from({ length: LONGEST_MADE }, () => {
      state = (state * 48271) % 2147483647;
      return String.fromCharCode(33 + (state % 90));
    }).join('');
    expect(await packLink({ ...first, notes: noise })).toBeUndefined();
    expect(await packLink({ ...first, notes: 'x'.repeat(LONGEST_MADE) })).toBeDefined();
  });
});

describe('a link to one build', () => {
  it('carries that build and its damper, and nothing else of the project', async () => {
    const whole = {
      ...first,
      notes: 'private',
      measurements: [1],
      chassis: { riderSprungMass_kg: 80 },
      drawer: [{ outerDiameter_mm: 30, thickness_mm: 0.15, count: 2 }],
    };
    const lean = projectOfBuild(whole, first.builds[1].id);
    const content = await readLink(await pack(lean));
    expect(content.kind).toBe('project');
    const { document } = content as { document: Project };
    expect(document.builds).toEqual([first.builds[1]]);
    expect(document.baselineBuild).toBe(first.builds[1].id);
    expect([document.damper, document.fluid, document.gas]).toEqual([first.damper, first.fluid, first.gas]);
    expect([document.notes, document.measurements, document.chassis, document.drawer]).toEqual(['', [], {}, []]);
  });
});

describe('a broken or hostile link', () => {
  const bomb = (): string => forge(Buffer.alloc(30 * 1024 * 1024, ' '));

  it.each<[string, () => string, string]>([
    ['with nothing in it', () => '#work=', 'damaged'],
    ['of no form', () => '#work=abc', 'damaged'],
    ['of a newer form', () => '#work=2.abc', 'newer'],
    ['that is no base64url', () => '#work=1.a+b/c=', 'damaged'],
    ['of a length that base64 cannot have', () => '#work=1.abcde', 'damaged'],
    ['that is no deflate', () => '#work=1.____', 'damaged'],
    ['that is no UTF-8', () => forge(Buffer.from([0x22, 0xff, 0xfe, 0x22])), 'damaged'],
    ['longer than is read', () => `#work=1.${'A'.repeat(LONGEST_READ)}`, 'too-long'],
    ['that unpacks to 30 MB', bomb, 'too-long'],
    ['with no project in it', () => forge('"hello"'), 'faults'],
    ['with a project of a newer version', () => forge(JSON.stringify({ ...first, version: 99 })), 'faults'],
    ['nested without end', () => forge('['.repeat(100_000)), 'faults'],
    ['that would change every object', () => forge('{"__proto__":{"polluted":true}}'), 'faults'],
  ])('%s is refused', async (_, make, reason) => {
    expect(await readLink(make())).toMatchObject({ kind: 'refused', reason });
    expect('polluted' in {}).toBe(false);
  });

  it('says which field does not fit', async () => {
    const project = JSON.parse(JSON.stringify(first));
    project.builds[0].valves.pistonRebound.shims[0].outerDiameter_mm = -1;
    const content = await readLink(forge(JSON.stringify(project)));
    expect(content).toMatchObject({
      reason: 'faults',
      faults: [{ path: 'builds[0].valves.pistonRebound.shims[0].outerDiameter_mm' }],
    });
  });

  it('cut or changed anywhere, is an answer and never an error', async () => {
    const fragment = await pack(first);
    const characters = [...'ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789-_.#%='];
    await fc.assert(
      fc.asyncProperty(
        fc.nat(fragment.length - 1),
        fc.constantFrom(...characters),
        fc.boolean(),
        async (at, by, cut) => {
          const changed = fragment.slice(0, at) + (cut ? '' : by + fragment.slice(at + 1));
          const { kind } = await readLink(changed);
          if (cut) expect(kind).not.toBe('project');
          expect(['none', 'project', 'refused']).toContain(kind);
        },
      ),
    );
  });

  it('other fragments are no links', async () => {
    for (const fragment of ['', '#', '#stack', '#proof', '#work'])
      expect(await readLink(fragment)).toEqual({ kind: 'none' });
  });
});
