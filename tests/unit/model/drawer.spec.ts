import { describe, expect, it } from 'vitest';
import { validateProject } from '../../../src/model/validate.ts';
import { soundProject } from '../../helpers/documents.ts';

const shim = (change: object = {}) => ({ outerDiameter_mm: 30, thickness_mm: 0.15, count: 4, ...change });
const aim = (points: object[], id = 'softer') => ({ id, name: 'Softer', points });
const point = (shaftSpeed_m_s: number, force_N = 100) => ({ shaftSpeed_m_s, force_N });

function codesOf(change: object): string[] {
  const checked = validateProject({ ...soundProject(), ...change });
  return checked.ok ? [] : checked.faults.map(({ code }) => code);
}

describe('the drawer', () => {
  it('holds each size once, with its count, and where it matters its bore', () => {
    expect(codesOf({ drawer: [shim(), shim({ thickness_mm: 0.2 }), shim({ innerDiameter_mm: 12 })] })).toEqual([]);
    expect(codesOf({ drawer: [shim(), shim({ count: 1 })] })).toEqual(['drawer.same-size']);
    expect(codesOf({ drawer: [shim({ innerDiameter_mm: 30 })] })).toEqual(['drawer.bore']);
  });

  it('refuses what is no count of shims', () => {
    for (const count of [-1, 1.5, 'many']) expect(codesOf({ drawer: [shim({ count })] })).toHaveLength(1);
  });
});

describe('aims', () => {
  it('rise in speed and leave out rest, where friction alone decides', () => {
    expect(codesOf({ aims: [aim([point(-1, -300), point(0.1), point(1)])] })).toEqual([]);
    expect(codesOf({ aims: [aim([point(0.1), point(0.1)])] })).toEqual(['aim.speed']);
    expect(codesOf({ aims: [aim([point(0)])] })).toEqual(['aim.speed']);
    expect(codesOf({ aims: [aim([])] })).toHaveLength(1);
  });

  it('have ids of their own', () => {
    expect(codesOf({ aims: [aim([point(1)]), aim([point(1)])] })).toEqual(['aim.same-id']);
  });
});
