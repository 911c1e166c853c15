import { describe, expect, it } from 'vitest';
import { expandShims } from '../../../src/model/expand-shims.ts';
import { validateProject, validateStackFile } from '../../../src/model/validate.ts';
import { soundProject, soundStack, withValue } from '../../helpers/documents.ts';

const BRONZE = { youngsModulus_GPa: 110, poissonsRatio: 0.34 };
const SPRING = { diameter_mm: 24, rate_N_mm: 20, preload_N: 5 };
const FLOAT = { travel_mm: 0.5, rate_N_mm: 20, preload_N: 5 };
/** Clamp 12, seat 27.6 to 28.4, plate 0.4: a notched face, a coned shim, a ring, a last shim. */
const features = () => ({
  ...soundStack(),
  shims: [
    { outerDiameter_mm: 30, thickness_mm: 0.1, notches: { count: 4, width_mm: 2 } },
    { outerDiameter_mm: 30, thickness_mm: 0.15, dish_mm: 0.05, material: { ...BRONZE } },
    { outerDiameter_mm: 26, thickness_mm: 0.2, innerDiameter_mm: 22 },
    { outerDiameter_mm: 28, thickness_mm: 0.2, count: 2, innerDiameter_mm: 12 },
  ],
  backingPlate: { gap_mm: 0.4, outerDiameter_mm: 20 },
});

type Checked = ReturnType<typeof validateStackFile> | ReturnType<typeof validateProject>;
const faultsOf = (checked: Checked): [string, string][] =>
  checked.ok ? [] : checked.faults.map(({ code, path }) => [code, path]);
const faultsWith = (path: string, value: unknown) => faultsOf(validateStackFile(withValue(features(), path, value)));

describe('stack features', () => {
  it('are taken, whole, from a stack file and from a project', () => {
    expect(validateStackFile(features())).toEqual({ ok: true, document: features() });
    for (const more of [{ coilSpring: SPRING }, { float: FLOAT }])
      expect(validateStackFile({ ...features(), ...more })).toEqual({ ok: true, document: { ...features(), ...more } });
    const project = soundProject();
    const valving = project.builds[0].valves.pistonRebound;
    project.builds[0].valves.pistonRebound = {
      ...valving,
      backingPlate: { gap_mm: 1, outerDiameter_mm: 30 },
      float: FLOAT,
    };
    expect(validateProject(project)).toEqual({ ok: true, document: project });
  });

  it('come with every single shim of their row', () => {
    expect(expandShims(features().shims)[4]).toEqual({ outerDiameter_mm: 28, thickness_mm: 0.2, innerDiameter_mm: 12 });
  });

  it.each<[string, unknown, string]>([
    ['shims[2].innerDiameter_mm', 26, 'stack.shim.bore'],
    ['shims[2].innerDiameter_mm', 0, 'document.range'],
    ['shims[2].innerDiameter_mm', '22', 'document.type'],
    ['shims[1].dish_mm', Number.NaN, 'document.not-finite'],
    ['shims[1].dish_mm', 20.1, 'document.range'],
    // From the clamp at 6 mm to the rim at 15 mm a cone of 1 in 5 rises 1.8 mm; a ring from 11 to 13 mm, 0.4 mm.
    ['shims[1].dish_mm', 1.81, 'stack.shim.dish'],
    ['shims[1].dish_mm', -1.81, 'stack.shim.dish'],
    ['shims[2].dish_mm', 0.41, 'stack.shim.dish'],
    ['shims[1].material.poissonsRatio', 0.5, 'document.range'],
    ['shims[1].material.youngsModulus_GPa', undefined, 'document.missing'],
    ['shims[0].notches.count', 0, 'document.range'],
    ['shims[0].notches.count', 1.5, 'document.whole-number'],
    ['shims[0].notches.width_mm', 0, 'document.range'],
    // A quarter of the rim of 30 mm is 23.562 mm; four notches may have 5.8905 mm each.
    ['shims[0].notches.width_mm', 5.891, 'stack.notches.too-wide'],
    // Clamp 12, widest 30: a free part of 0.018 mm in diameter, on the clamp or round the bore, is the least.
    ['shims[3].outerDiameter_mm', 12.017, 'stack.shim.too-narrow'],
    ['shims[2].outerDiameter_mm', 22.017, 'stack.shim.too-narrow'],
    ['backingPlate.outerDiameter_mm', 12, 'stack.backing-plate.inside-clamp'],
    ['backingPlate.gap_mm', undefined, 'document.missing'],
  ])('refuses %s = %s at its field', (path, value, code) => {
    expect(faultsWith(path, value)).toEqual([[code, path]]);
  });

  it.each<[string, unknown]>([
    ['shims[1].dish_mm', 1.79],
    ['shims[1].dish_mm', -1.79],
    ['shims[2].dish_mm', 0.39],
    ['shims[0].notches.width_mm', 5.89],
    ['shims[3].outerDiameter_mm', 12.019],
    ['shims[2].outerDiameter_mm', 22.019],
    ['backingPlate.outerDiameter_mm', 12.1],
    ['shims[2].innerDiameter_mm', 25.9],
  ])('takes %s = %s, just inside its limit', (path, value) => {
    expect(faultsWith(path, value)).toEqual([]);
  });

  it('asks for one shim on the clamp', () => {
    const ring = { outerDiameter_mm: 30, thickness_mm: 0.2, innerDiameter_mm: 20 };
    const shims = [ring, { ...ring, innerDiameter_mm: 12.001 }];
    expect(faultsWith('shims', shims)).toEqual([['stack.nothing-clamped', 'shims']]);
    expect(faultsWith('shims', [ring, { ...ring, innerDiameter_mm: 12 }])).toEqual([]);
  });

  it('asks a ring on the seat to cover it, and a shim on the clamp to reach over it', () => {
    const clamped = { outerDiameter_mm: 30, thickness_mm: 0.2 };
    const ring = { ...clamped, innerDiameter_mm: 27.7 };
    expect(faultsWith('shims', [ring, clamped])).toEqual([['stack.face.ring-off-seat', 'shims[0].innerDiameter_mm']]);
    expect(faultsWith('shims', [{ ...ring, innerDiameter_mm: 27.6 }, clamped])).toEqual([]);
    const short = [
      { ...ring, innerDiameter_mm: 20 },
      { ...clamped, outerDiameter_mm: 28 },
    ];
    expect(faultsWith('shims', short)).toEqual([['stack.seat.beyond-shims', 'seat.outerDiameter_mm']]);
    const { seat: _, ...seatless } = features();
    short[1].outerDiameter_mm = 27.5;
    const faults = faultsOf(validateStackFile({ ...seatless, shims: short }));
    expect(faults).toEqual([['stack.zone.beyond-shims', 'pressureZone.outerDiameter_mm']]);
  });

  it('takes notches in the first shim alone, under a shim that covers the seat', () => {
    const notches = { count: 2, width_mm: 1 };
    expect(faultsWith('shims[1].notches', notches)).toEqual([['stack.notches.not-face', 'shims[1].notches']]);
    expect(faultsWith('shims[0].count', 2)).toEqual([['stack.notches.not-face', 'shims[0].notches']]);
    expect(faultsWith('shims[1].outerDiameter_mm', 28.3)).toEqual([['stack.notches.uncovered', 'shims[0].notches']]);
    expect(faultsWith('shims', features().shims.slice(0, 1))).toEqual([
      ['stack.notches.uncovered', 'shims[0].notches'],
    ]);
    expect(faultsWith('shims[1].outerDiameter_mm', 28.4)).toEqual([]);
  });

  it.each<[string, unknown, string]>([
    ['coilSpring.diameter_mm', 28.1, 'stack.coil-spring.beyond-shim'],
    ['coilSpring.diameter_mm', 12, 'stack.coil-spring.beyond-shim'],
    ['coilSpring.rate_N_mm', 0, 'document.range'],
    ['coilSpring.preload_N', -1, 'document.range'],
    ['coilSpring.preload_N', undefined, 'document.missing'],
    ['coilSpring.preload_N', 0, 'adjuster.idle'],
    ['coilSpring.adjuster.clicks', 11, 'adjuster.clicks'],
    ['coilSpring.adjuster.clicks', undefined, 'document.missing'],
    ['coilSpring.adjuster.travelPerClick_mm', 0, 'document.range'],
  ])('refuses %s = %s', (path, value, code) => {
    const adjuster = { travelPerClick_mm: 0.1, clicks: 10, clickCount: 10 };
    const stack = withValue({ ...features(), coilSpring: { ...SPRING, adjuster } }, path, value);
    expect(faultsOf(validateStackFile(stack))).toEqual([[code, path]]);
  });

  it.each<[string, unknown, string]>([
    ['float.travel_mm', 0, 'document.range'],
    ['float.rate_N_mm', -1, 'document.range'],
    ['float.preload_N', -1, 'document.range'],
    ['float', null, 'document.type'],
  ])('refuses %s = %s', (path, value, code) => {
    const stack = withValue({ ...features(), float: { ...FLOAT } }, path, value);
    expect(faultsOf(validateStackFile(stack))).toEqual([[code, path]]);
  });

  it('takes a float or a coil spring, not both, and names the unit of a rate', () => {
    const both = { ...features(), coilSpring: SPRING, float: FLOAT };
    expect(faultsOf(validateStackFile(both))).toEqual([['stack.float.with-coil-spring', 'float']]);
    const checked = validateStackFile({ ...features(), float: { ...FLOAT, rate_N_mm: -1 } });
    expect(checked.ok ? [] : checked.faults).toMatchObject([{ unit: 'N/mm', got: '-1' }]);
  });

  it('refuses them in the build of a project, against the seat of its damper', () => {
    const at = 'builds[0].valves.pistonCompression';
    const faults = (path: string, value: unknown) =>
      faultsOf(validateProject(withValue(soundProject(), `${at}.${path}`, value)));
    const code = 'stack.notches.uncovered';
    const [face, ...rest] = soundProject().builds[0].valves.pistonCompression.shims;
    const notched = { ...face, count: 1, notches: { count: 2, width_mm: 1 } };
    expect(faults('shims', [notched, ...rest])).toEqual([[code, `${at}.shims[0].notches`]]);
    expect(faults('shims', [notched, face, ...rest])).toEqual([]);
    expect(faults('coilSpring', { ...SPRING, diameter_mm: 60 })).toEqual([
      ['stack.coil-spring.beyond-shim', `${at}.coilSpring.diameter_mm`],
    ]);
  });
});
