import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { decodeAny, decodeProject, decodeStackFile, encodeProject, encodeStackFile } from '../../../src/model/codec.ts';
import { MAX_CHARACTERS, MAX_DEPTH } from '../../../src/model/json-text.ts';
import { PROJECT_VERSION } from '../../../src/model/project-schema.ts';
import { STACK_VERSION } from '../../../src/model/stack-schema.ts';
import {
  fixtureText,
  PROJECT_FIXTURE,
  STACK_FIXTURE,
  soundCartridge,
  soundProject,
  soundStack,
  withValue,
} from '../../helpers/documents.ts';

const versions = (newest: number): number[] => Array.from({ length: newest }, (_, index) => index + 1);
const firstFault = (checked: ReturnType<typeof decodeAny>) => (checked.ok ? undefined : checked.faults[0]);

describe('decodeProject', () => {
  it.each(versions(PROJECT_VERSION))('reads a project saved at version %i', (version) => {
    const decoded = decodeProject(fixtureText(`project-v${version}.shimwright.json`));
    expect(decoded.ok && decoded.document.builds.length).toBeGreaterThan(0);
  });

  it.each(versions(STACK_VERSION))('reads a stack file saved at version %i', (version) => {
    const decoded = decodeStackFile(fixtureText(`stack-v${version}.json`));
    expect(decoded.ok && decoded.document.shims.length).toBeGreaterThan(0);
  });

  it('writes what it read, byte for byte on the second round', () => {
    const once = decodeProject(fixtureText(PROJECT_FIXTURE));
    if (!once.ok) throw new Error('the fixture must decode');
    expect(once.document).toEqual(soundProject());
    const text = encodeProject(once.document);
    const twice = decodeProject(text);
    expect(twice.ok && encodeProject(twice.document)).toBe(text);
    expect(text.endsWith('}\n')).toBe(true);
  });

  it('keeps unknown fields at every level (property)', () => {
    const places = [
      '',
      'damper.',
      'damper.valves.',
      'damper.valves.pistonRebound.',
      'damper.valves.pistonRebound.ports.',
      'damper.valves.pistonRebound.seat.',
      'fluid.',
      'fluid.viscosity.',
      'fluid.viscosity.points[1].',
      'gas.',
      'builds[0].',
      'builds[0].bleed.',
      'builds[0].valves.',
      'builds[0].valves.pistonCompression.',
      'builds[0].valves.pistonCompression.shims[1].',
      'builds[0].valves.pistonCompression.backingPlate.',
      'chassis.',
    ];
    fc.assert(
      fc.property(fc.constantFrom(...places), fc.jsonValue({ maxDepth: 4 }), (place, value) => {
        const project = withValue(soundProject(), `${place}ofLater`, JSON.parse(JSON.stringify(value)));
        const decoded = decodeProject(JSON.stringify(project));
        expect(decoded).toEqual({ ok: true, document: project });
        expect(decoded.ok && JSON.parse(encodeProject(decoded.document))).toEqual(project);
      }),
    );
  });

  it('keeps unknown fields in the parts of a cartridge', () => {
    const places = [
      'damper.frictionLaw.',
      'damper.pistonBand.',
      'damper.hydraulicStop.',
      'damper.refillCheck.seat.',
      'damper.valves.baseCompression.ports.',
      'gas.airGap.',
      'gas.separator.',
      'builds[0].baseBleed.needle.',
      'builds[0].basePoppet.adjuster.',
      'builds[0].valves.baseCompression.',
      'builds[0].valves.pistonCompression.float.',
      'builds[0].valves.pistonRebound.coilSpring.adjuster.',
    ];
    const project = places.reduce((at, place) => withValue(at, `${place}ofLater`, [place]), soundCartridge());
    const decoded = decodeProject(JSON.stringify(project));
    expect(decoded).toEqual({ ok: true, document: project });
    expect(decoded.ok && JSON.parse(encodeProject(decoded.document))).toEqual(project);
  });

  it('keeps unknown fields of a stack file', () => {
    const stack = { ...soundStack(), maker: 'nobody', seat: { ...soundStack().seat, finish: 'lapped' } };
    const decoded = decodeStackFile(JSON.stringify(stack));
    expect(decoded.ok && JSON.parse(encodeStackFile(decoded.document as never))).toEqual(stack);
  });

  it('reads a file that starts with a byte-order mark', () => {
    expect(decodeProject(`\uFEFF${fixtureText(PROJECT_FIXTURE)}`).ok).toBe(true);
  });
});

describe('what is refused', () => {
  it.each([
    ['', 'document.empty'],
    [' \n', 'document.empty'],
    ['null', 'document.type'],
    ['[]', 'document.type'],
    ['"text"', 'document.type'],
    ['{}', 'document.format'],
    ['{"format":"other"}', 'document.format'],
    ['{"format":"shimwright/stack","version":1}', 'document.format'],
    ['{"format":"shimwright/project"}', 'document.version'],
    ['{"format":"shimwright/project","version":"1"}', 'document.version'],
    ['{"format":"shimwright/project","version":0}', 'document.version'],
    ['{"format":"shimwright/project","version":1.5}', 'document.version'],
    ['{"format":"shimwright/project","version":2}', 'document.newer-version'],
    ['{"format":"shimwright/project","version":1e300}', 'document.newer-version'],
    ['{"format":"shimwright/project","version":1,}', 'document.json'],
    ['{"a": NaN}', 'document.json'],
    ['PK\u0003\u0004', 'document.json'],
    ['// comment\n{}', 'document.json'],
    ['{} {}', 'document.json'],
    ["{'a': 1}", 'document.json'],
  ])('%s gives %s', (text, code) => {
    expect(firstFault(decodeProject(text))?.code).toBe(code);
  });

  it('names line and column of a slip', () => {
    expect(firstFault(decodeProject('{\n  "a": [1,\n  2,,3]\n}'))).toEqual({
      code: 'document.json',
      path: 'line 3, column 5',
      got: '",3]"',
      wanted: 'valid JSON (value expected)',
    });
  });

  it('says that a truncated file ends too early, wherever it was cut (property)', () => {
    const whole = fixtureText(PROJECT_FIXTURE).trimEnd();
    fc.assert(
      fc.property(fc.integer({ min: 1, max: whole.length - 1 }), (length) => {
        const fault = firstFault(decodeProject(whole.slice(0, length)));
        expect(fault?.code).toBe('document.json');
        expect(fault?.path).toMatch(/^line \d+, column \d+$/);
      }),
    );
    expect(firstFault(decodeProject(whole.slice(0, -1)))?.got).toBe('the end of the text');
  });

  it('refuses a file of 5 MB without reading it, and takes one just below the limit', () => {
    const padded = (length: number): string => {
      const text = fixtureText(PROJECT_FIXTURE).trimEnd();
      return `${text}${' '.repeat(length - text.length)}`;
    };
    expect(firstFault(decodeProject(padded(5_000_000)))).toEqual({
      code: 'document.too-large',
      path: 'document',
      got: 'more than 2.0 MiB',
      wanted: 'at most 2.0 MiB',
    });
    expect(firstFault(decodeProject(padded(MAX_CHARACTERS + 1)))?.code).toBe('document.too-large');
    expect(decodeProject(padded(MAX_CHARACTERS)).ok).toBe(true);
  });

  it('refuses nesting that would exhaust the stack, brackets in texts aside', () => {
    const nested = (depth: number): string => `${'['.repeat(depth)}${']'.repeat(depth)}`;
    const notes = JSON.stringify('["'.repeat(200));
    const withNotes = fixtureText(PROJECT_FIXTURE).replace('"Invented numbers for tests."', notes);
    const withDeep = (depth: number): string =>
      fixtureText(PROJECT_FIXTURE).replace('"measurements": []', `"measurements": ${nested(depth)}`);
    expect(firstFault(decodeProject(nested(1_000_000)))?.code).toBe('document.too-deep');
    expect(firstFault(decodeProject('{"a":'.repeat(100_000)))?.code).toBe('document.too-deep');
    expect(firstFault(decodeProject(withDeep(MAX_DEPTH)))?.code).toBe('document.too-deep');
    expect(decodeProject(withDeep(MAX_DEPTH - 1)).ok).toBe(true);
    expect(decodeProject(withNotes).ok).toBe(true);
  });

  it('refuses a list of half a million entries by its length', () => {
    const project = withValue(soundProject(), 'builds[0].valves.pistonRebound.shims', new Array(500_000).fill(1));
    expect(firstFault(decodeProject(JSON.stringify(project)))).toMatchObject({
      path: 'builds[0].valves.pistonRebound.shims',
      got: 'a list of 500000',
    });
  });

  it('takes __proto__ and constructor keys without harm', () => {
    const text = fixtureText(PROJECT_FIXTURE)
      .replace('"chassis": {}', '"chassis": { "__proto__": { "polluted": 1 }, "constructor": { "prototype": {} } }')
      .replace('"gas": {', '"gas": { "__proto__": { "volume_mL": 1, "polluted": 1 },')
      .replace('"invented": true', '"__proto__": { "polluted": 1 }');
    const decoded = decodeProject(text);
    expect(decoded.ok).toBe(true);
    expect(({} as Record<string, unknown>).polluted).toBeUndefined();
    if (decoded.ok) {
      const { document } = decoded;
      expect([document, document.gas, document.chassis].map(Object.getPrototypeOf)).toEqual([
        Object.prototype,
        Object.prototype,
        Object.prototype,
      ]);
      expect(document.gas).not.toHaveProperty('polluted');
    }
  });

  it('does not take sizes from a prototype', () => {
    const text = fixtureText(PROJECT_FIXTURE).replace('"volume_mL": 90', '"__proto__": { "volume_mL": 90 }');
    expect(firstFault(decodeProject(text))).toMatchObject({ code: 'gas.size', path: 'gas', got: 'none' });
  });
});

describe('decodeAny', () => {
  it('reads whichever format the text says it is', () => {
    expect(decodeAny(fixtureText(PROJECT_FIXTURE)).ok).toBe(true);
    expect(decodeAny(fixtureText(STACK_FIXTURE)).ok).toBe(true);
    expect(firstFault(decodeAny('{"format":"else"}'))).toMatchObject({ code: 'document.format', got: '"else"' });
    expect(firstFault(decodeAny('{'))?.code).toBe('document.json');
  });
});
