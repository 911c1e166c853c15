import { describe, expect, it } from 'vitest';
import { validateProject } from '../../../src/model/validate.ts';
import type { InputFault } from '../../../src/units/fault.ts';
import { soundCartridge, soundProject, withValue } from '../../helpers/documents.ts';

const faults = (document: unknown): readonly InputFault[] => {
  const checked = validateProject(document);
  return checked.ok ? [] : checked.faults;
};
const places = (document: unknown) => faults(document).map(({ code, path }) => ({ code, path }));

// By hand: bore 46, rod 16, so the piston has pi/4 (46^2 - 16^2) = 1460.84 mm2; 4 ports of 62 mm2 and 4 of 5.5 mm, 95.03 mm2.
const REBOUND = 'damper.valves.pistonRebound.ports.diameter_mm';
const COMPRESSION = 'damper.valves.pistonCompression.ports.area_mm2';

describe('holes in a piston', () => {
  it('find room in it together: said with the area there is', () => {
    // 4 ports of 21 mm are 1385.44 mm2, and 248 mm2 beside them.
    expect(faults(withValue(soundProject(), REBOUND, 21))).toEqual([
      {
        code: 'damper.port.beyond-face',
        path: REBOUND,
        got: '1633.44',
        wanted: 'all ports together less than the face of the piston beside the rod, 1460.84',
        unit: 'mm²',
      },
    ]);
  });

  it.each([
    [REBOUND, 19.5, 19.7],
    [COMPRESSION, 341, 342],
    ['builds[0].bleed.diameter_mm', 43.1, 43.2],
  ])('%s may be %f and not %f', (path, most, more) => {
    expect(places(withValue(soundProject(), path, most))).toEqual([]);
    const code = path.endsWith('bleed.diameter_mm') ? 'bleed.beyond-face' : 'damper.port.beyond-face';
    expect(places(withValue(soundProject(), path, more))).toEqual([{ code, path }]);
  });

  it('are told at the larger ports, whichever were written last', () => {
    const wide = withValue(soundProject(), REBOUND, 19.5);
    expect(places(withValue(wide, COMPRESSION, 70))).toEqual([{ code: 'damper.port.beyond-face', path: REBOUND }]);
  });

  it('count all of a bleed', () => {
    const bleed = 'builds[0].bleed';
    const two = withValue(withValue(soundProject(), `${bleed}.count`, 2), `${bleed}.diameter_mm`, 43.1 / Math.SQRT2);
    expect(places(two)).toEqual([]);
    const path = `${bleed}.diameter_mm`;
    expect(places(withValue(two, `${bleed}.count`, 3))).toEqual([{ code: 'bleed.beyond-face', path }]);
    expect(places(withValue(two, `${bleed}.count`, 0))).toEqual([]);
  });

  it('say nothing beside sizes that are refused already', () => {
    expect(places(withValue(soundProject(), REBOUND, -1))).toEqual([{ code: 'document.range', path: REBOUND }]);
    const count = 'damper.valves.pistonRebound.ports.count';
    expect(places(withValue(soundProject(), count, 'many'))).toEqual([{ code: 'document.type', path: count }]);
    const twice = places(withValue(soundProject(), 'damper.valves.pistonCompression.ports.diameter_mm', 60));
    expect(twice).toHaveLength(1);
    expect(twice[0].code).not.toBe('damper.port.beyond-face');
  });
});

// By hand: bore 25, pi/4 25^2 = 490.87 mm2; 4 base ports of 4 mm are 50.27 mm2, 6 of the refill check of 3.5 mm 57.73 mm2.
describe('holes in a base valve', () => {
  it.each([
    ['damper.refillCheck.ports.diameter_mm', 9.6, 9.7],
    ['damper.valves.baseCompression.ports.diameter_mm', 11.7, 11.8],
    ['builds[0].baseBleed.diameter_mm', 24.9, 25],
  ])('find room in the bore: %s may be %f and not %f', (path, most, more) => {
    expect(places(withValue(soundCartridge(), path, most))).toEqual([]);
    const [fault] = faults(withValue(soundCartridge(), path, more));
    expect(fault).toMatchObject({ path, wanted: expect.stringContaining('the cross-section of the bore, 490.87') });
  });
});
