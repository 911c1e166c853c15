import { describe, expect, it } from 'vitest';
import { child, describe as describeValue, entries, joinPath, numberAt, unitOf } from '../../../src/model/place.ts';

const root = (value: unknown) => ({ value, path: '' });

describe('child', () => {
  it('follows keys and writes the path, through what is not there too', () => {
    const document = root({ builds: [{ valves: { rebound: 7 } }] });
    expect(child(document, 'builds', 0, 'valves', 'rebound')).toEqual({ value: 7, path: 'builds[0].valves.rebound' });
    expect(child(document, 'builds', 3, 'valves')).toEqual({ value: undefined, path: 'builds[3].valves' });
    expect(child(root('text'), 'length').value).toBeUndefined();
  });

  it.each(['toString', 'constructor', '__proto__'])('finds no %s that the document does not have itself', (key) => {
    expect(child(root({}), key).value).toBeUndefined();
  });
});

describe('the words of a fault', () => {
  it('quote keys that are no plain words', () => {
    expect(joinPath('chassis', 'front fork')).toBe('chassis["front fork"]');
    expect(joinPath('', 'gas')).toBe('gas');
  });

  it.each([
    ['shims[0].thickness_mm', 'mm'],
    ['damper.valves.pistonRebound.ports.area_mm2', 'mm²'],
    ['fluid.densityAt15_kg_m3', 'kg/m³'],
    ['fluid.viscosity.kinematicViscosity40_cSt', 'cSt'],
    ['shims[0].count', undefined],
    ['notes_of_mine', undefined],
  ])('take the unit of %s from its key', (path, unit) => {
    expect(unitOf(path)).toBe(unit);
  });

  it.each([
    [undefined, 'nothing'],
    [null, 'null'],
    [[1, 2], 'a list of 2'],
    [{}, 'an object'],
    [Number.NaN, 'NaN'],
    ['7', '"7"'],
    ['x'.repeat(100), `"${'x'.repeat(59)}…`],
  ])('call %j %s', (value, words) => {
    expect(describeValue(value)).toBe(words);
  });
});

describe('entries and numbers', () => {
  it('are none where there is no list or no finite number', () => {
    expect(entries(root({ length: 2 }))).toEqual([]);
    expect(entries({ value: ['a'], path: 'list' })).toEqual([{ value: 'a', path: 'list[0]' }]);
    expect([1, '1', Number.NaN, null].map((value) => numberAt(root(value)))).toEqual([
      1,
      undefined,
      undefined,
      undefined,
    ]);
  });
});
