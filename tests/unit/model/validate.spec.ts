import { describe, expect, it } from 'vitest';
import { MAX_FAULTS, validateProject, validateStackFile } from '../../../src/model/validate.ts';
import { soundProject, soundStack, withValue } from '../../helpers/documents.ts';

type Fault = { code: string; path: string };
const faultsOf = (checked: ReturnType<typeof validateProject | typeof validateStackFile>): Fault[] =>
  checked.ok ? [] : checked.faults.map(({ code, path }) => ({ code, path }));

const projectFaults = (path: string, value: unknown): Fault[] =>
  faultsOf(validateProject(withValue(soundProject(), path, value)));
const stackFaults = (path: string, value: unknown): Fault[] =>
  faultsOf(validateStackFile(withValue(soundStack(), path, value)));

describe('validateProject', () => {
  it('takes a sound project and leaves the argument as it is', () => {
    const project = soundProject();
    const checked = validateProject(project);
    expect(checked.ok && checked.document).toEqual(project);
    expect(project).toEqual(soundProject());
  });

  it('fills in empty notes, measurements, chassis and drawer', () => {
    const { notes: _n, measurements: _m, chassis: _c, drawer: _d, ...rest } = soundProject();
    const checked = validateProject(rest);
    expect(checked.ok && checked.document).toMatchObject({ notes: '', measurements: [], chassis: {}, drawer: [] });
  });

  const build = 'builds[0].valves.pistonCompression';
  const body = 'damper.valves.pistonRebound';
  it.each<[string, unknown, string]>([
    [`${build}.shims[2].thickness_mm`, -0.1, 'document.range'],
    [`${build}.shims[2].thickness_mm`, 0, 'document.range'],
    [`${build}.shims[2].thickness_mm`, Number.NaN, 'document.not-finite'],
    [`${build}.shims[2].thickness_mm`, Number.POSITIVE_INFINITY, 'document.not-finite'],
    [`${build}.shims[2].thickness_mm`, '0.1', 'document.type'],
    [`${build}.shims[2].thickness_mm`, null, 'document.type'],
    [`${build}.shims[2].thickness_mm`, undefined, 'document.missing'],
    [`${build}.shims[2].thickness_mm`, 21, 'document.range'],
    [`${build}.shims[0].count`, 0, 'document.range'],
    [`${build}.shims[0].count`, -1, 'document.range'],
    [`${build}.shims[0].count`, 1.5, 'document.whole-number'],
    [`${build}.shims[0].count`, 201, 'document.range'],
    [`${build}.shims[0].outerDiameter_mm`, 501, 'document.range'],
    [`${build}.shims[1].outerDiameter_mm`, 18, 'stack.shim.below-clamp'],
    [`${build}.shims[1].outerDiameter_mm`, 46, 'stack.shim.beyond-bore'],
    [`${build}.shims[0].outerDiameter_mm`, 37.9, 'stack.face.inside-seat'],
    [`${build}.clampDiameter_mm`, 0, 'document.range'],
    [`${build}.seatHeight_mm`, 21, 'document.range'],
    [`${build}.backingPlate.gap_mm`, -0.1, 'document.range'],
    [`${build}.material`, 'steel', 'document.type'],
    [`${build}.shims`, 'none', 'document.type'],
    [`${build}`, undefined, 'document.missing'],
    [`${body}.pressureZone.outerDiameter_mm`, 20, 'stack.zone.order'],
    [`${body}.seat.outerDiameter_mm`, 32, 'stack.seat.order'],
    [`${body}.seat.innerDiameter_mm`, 31.9, 'stack.seat.inside-zone'],
    [`${body}.ports.count`, 0, 'document.range'],
    [`${body}.ports.length_mm`, undefined, 'document.missing'],
    ['damper.layout', 'hexatube', 'document.choice'],
    ['damper.sealFriction_N', -1, 'document.range'],
    ['builds[0].bleed.diameter_mm', 0, 'document.range'],
    ['builds[0].bleed.count', -1, 'document.range'],
    ['builds[0].name', 'x'.repeat(201), 'document.range'],
    ['builds[0].name', 7, 'document.type'],
    ['invented', 'yes', 'document.type'],
    ['baselineBuild', 'nobody', 'project.baseline.unknown'],
    ['fluid.viscosity.kind', 'weight', 'document.choice'],
    ['fluid.viscosity', undefined, 'document.missing'],
    ['fluid.viscosity.points[1].temperature_degC', 40, 'fluid.viscosity.same-temperature'],
    ['fluid.viscosity.points[1].kinematicViscosity_cSt', 15.2, 'fluid.viscosity.not-falling'],
    ['fluid.viscosity.points[1].temperature_degC', 20, 'fluid.viscosity.not-falling'],
    ['fluid.temperature_degC', 251, 'document.range'],
    ['fluid.densityAt15_kg_m3', 0.865, 'document.range'],
    ['gas.polytropicExponent', 0.9, 'document.range'],
    ['gas.gaugePressure_bar', -1, 'document.range'],
    ['gas.volume_mL', 14, 'gas.volume.too-small'],
  ])('refuses %s = %s at its field', (path, value, code) => {
    const faults = projectFaults(path, value);
    // The hotter and the colder point are one relation, told at the second viscosity.
    const at = code.startsWith('fluid.viscosity.not') ? 'fluid.viscosity.points[1].kinematicViscosity_cSt' : path;
    expect(faults).toEqual([{ code, path: at }]);
  });

  it('tells what follows from a slip too: a rod beyond the bore, an id that the baseline no longer names', () => {
    expect(projectFaults('damper.rodDiameter_mm', 46)).toEqual([
      { code: 'damper.rod.beyond-bore', path: 'damper.rodDiameter_mm' },
      { code: 'gas.volume.too-small', path: 'gas.volume_mL' },
    ]);
    expect(projectFaults('builds[0].id', '')).toEqual([
      { code: 'document.range', path: 'builds[0].id' },
      { code: 'project.baseline.unknown', path: 'baselineBuild' },
    ]);
  });

  it('asks for one way to size a port', () => {
    expect(projectFaults(`${body}.ports.diameter_mm`, undefined)).toEqual([
      { code: 'damper.port.size', path: `${body}.ports` },
    ]);
    expect(projectFaults(`${body}.ports.area_mm2`, 20)).toEqual([{ code: 'damper.port.size', path: `${body}.ports` }]);
  });

  it('asks for at least one shim, and at most 200 in one stack', () => {
    expect(projectFaults(`${build}.shims`, [])).toEqual([{ code: 'stack.empty', path: `${build}.shims` }]);
    const rows = [1, 2].map(() => ({ outerDiameter_mm: 40, thickness_mm: 0.1, count: 100 }));
    expect(projectFaults(`${build}.shims`, rows)).toEqual([]);
    const more = [...rows, { outerDiameter_mm: 40, thickness_mm: 0.1 }];
    expect(projectFaults(`${build}.shims`, more)).toEqual([{ code: 'stack.too-many', path: `${build}.shims` }]);
  });

  it('asks for a build, each with its own id', () => {
    const [first] = soundProject().builds;
    expect(projectFaults('builds', []).map(({ code }) => code)).toContain('document.range');
    expect(projectFaults('builds', [first, { ...first, name: 'Copy' }])).toEqual([
      { code: 'project.build.same-id', path: 'builds[1].id' },
    ]);
  });

  it('lets a viscosity be given by grade and index', () => {
    const viscosity = { kind: 'iso-grade', isoGrade: 15, viscosityIndex: 150 };
    expect(projectFaults('fluid.viscosity', viscosity)).toEqual([]);
    expect(projectFaults('fluid.viscosity', { ...viscosity, isoGrade: 14 })).toEqual([
      { code: 'document.choice', path: 'fluid.viscosity.isoGrade' },
    ]);
    expect(projectFaults('fluid.viscosity', { ...viscosity, viscosityIndex: undefined })).toEqual([
      { code: 'document.missing', path: 'fluid.viscosity.viscosityIndex' },
    ]);
  });

  it('lets the piston leak, within a twentieth of the bore of 46 mm', () => {
    const band = { clearance_mm: 2.3, length_mm: 10, eccentricity: 1 };
    expect(projectFaults('damper.pistonBand', band)).toEqual([]);
    expect(projectFaults('damper.pistonBand', { ...band, clearance_mm: 2.31 })).toEqual([
      { code: 'damper.piston-band.too-loose', path: 'damper.pistonBand.clearance_mm' },
    ]);
    expect(projectFaults('damper.pistonBand', { ...band, eccentricity: 1.1 })).toEqual([
      { code: 'document.range', path: 'damper.pistonBand.eccentricity' },
    ]);
  });

  it('lets a needle stand in the one hole of a bleed, as far out as its adjuster goes', () => {
    const bleed = { count: 1, diameter_mm: 3, length_mm: 3 };
    const needle = { coneAngle_deg: 20, travelPerClick_mm: 0.1, clicks: 20, clickCount: 20 };
    const faults = (holes: number, part: object) =>
      projectFaults('builds[0].bleed', { ...bleed, count: holes, needle: { ...needle, ...part } });
    expect(faults(1, {})).toEqual([]);
    expect(faults(2, {})).toEqual([{ code: 'bleed.needle.one-hole', path: 'builds[0].bleed.count' }]);
    expect(faults(1, { clicks: 21 })).toEqual([{ code: 'bleed.needle.clicks', path: 'builds[0].bleed.needle.clicks' }]);
    expect(faults(1, { clicks: 0.5 })).toEqual([
      { code: 'document.whole-number', path: 'builds[0].bleed.needle.clicks' },
    ]);
  });

  it('lets a viscosity be given by index', () => {
    const viscosity = { kind: 'viscosity-index', kinematicViscosity40_cSt: 15, viscosityIndex: 150 };
    expect(projectFaults('fluid.viscosity', viscosity)).toEqual([]);
    expect(projectFaults('fluid.viscosity', { ...viscosity, viscosityIndex: Number.NaN })).toEqual([
      { code: 'document.not-finite', path: 'fluid.viscosity.viscosityIndex' },
    ]);
  });

  it('tells all faults at once, with unit, got and wanted', () => {
    const project = withValue(soundProject(), `${build}.shims[2].thickness_mm`, -0.1);
    withValue(project, 'damper.boreDiameter_mm', 'wide');
    withValue(project, `${build}.shims[1].outerDiameter_mm`, 4);
    expect(validateProject(project)).toEqual({
      ok: false,
      faults: [
        {
          code: 'document.type',
          path: 'damper.boreDiameter_mm',
          got: '"wide"',
          wanted: 'a number of at least 0.001 and at most 500',
        },
        {
          code: 'document.range',
          path: `${build}.shims[2].thickness_mm`,
          got: '-0.1',
          wanted: 'a number of at least 0.001 and at most 20',
          unit: 'mm',
        },
        {
          code: 'stack.shim.below-clamp',
          path: `${build}.shims[1].outerDiameter_mm`,
          got: '4',
          wanted: 'more than the clamp diameter 18',
          unit: 'mm',
        },
      ],
    });
  });

  it.each([[null], [undefined], [7], ['text'], [[]], [{}], [Number.NaN]])('refuses %s as a whole', (document) => {
    expect(validateProject(document).ok).toBe(false);
  });

  it('tells a bounded number of faults and how many more there are', () => {
    const rows = Array.from({ length: 150 }, () => ({ outerDiameter_mm: -1, thickness_mm: -1 }));
    const checked = validateProject(withValue(soundProject(), `${build}.shims`, rows));
    const faults = checked.ok ? [] : checked.faults;
    expect(faults).toHaveLength(MAX_FAULTS + 1);
    // 300 sizes out of range; that the rims are below the clamp too is not told twice.
    expect(faults.at(-1)).toMatchObject({ code: 'document.more-faults', got: '100 more faults' });
  });
});

describe('validateStackFile', () => {
  it('takes a sound stack with and without its optional parts', () => {
    const { seat: _s, backingPlate: _b, material: _m, ...bare } = soundStack();
    expect(validateStackFile(soundStack())).toEqual({ ok: true, document: soundStack() });
    expect(validateStackFile(bare)).toEqual({ ok: true, document: bare });
  });

  it.each<[string, unknown, string, string]>([
    ['clampDiameter_mm', 16, 'stack.shim.below-clamp', 'shims[1].outerDiameter_mm'],
    ['pressureZone.outerDiameter_mm', 16.5, 'stack.zone.order', 'pressureZone.outerDiameter_mm'],
    ['pressureZone.outerDiameter_mm', 27.7, 'stack.seat.inside-zone', 'seat.innerDiameter_mm'],
    ['pressureZone.innerDiameter_mm', -1, 'document.range', 'pressureZone.innerDiameter_mm'],
    ['seat.outerDiameter_mm', 30.1, 'stack.face.inside-seat', 'shims[0].outerDiameter_mm'],
    ['seat.height_mm', undefined, 'document.missing', 'seat.height_mm'],
    ['seat', null, 'document.type', 'seat'],
    ['material.poissonsRatio', 0, 'document.range', 'material.poissonsRatio'],
    ['material.youngsModulus_GPa', -206, 'document.range', 'material.youngsModulus_GPa'],
    ['name', undefined, 'document.missing', 'name'],
  ])('refuses %s = %s', (path, value, code, at) => {
    expect(stackFaults(path, value)).toEqual([{ code, path: at }]);
  });

  it('keeps the zone under the face shim where there is no seat, and zone and seat outside the clamp', () => {
    const bare = withValue(soundStack(), 'seat', undefined);
    withValue(bare, 'pressureZone.outerDiameter_mm', 30.5);
    expect(faultsOf(validateStackFile(bare))).toEqual([
      { code: 'stack.face.inside-zone', path: 'shims[0].outerDiameter_mm' },
    ]);
    const wide = { ...soundStack(), clampDiameter_mm: 28, shims: [{ outerDiameter_mm: 30, thickness_mm: 0.1 }] };
    expect(faultsOf(validateStackFile(wide))).toEqual([
      { code: 'stack.zone.inside-clamp', path: 'pressureZone.outerDiameter_mm' },
      { code: 'stack.seat.inside-clamp', path: 'seat.innerDiameter_mm' },
    ]);
  });

  it('lets a clamp reach over the inner edge of the pressure zone', () => {
    const wide = { ...soundStack(), clampDiameter_mm: 20, shims: [{ outerDiameter_mm: 30, thickness_mm: 0.1 }] };
    expect(validateStackFile(wide).ok).toBe(true);
  });
});
