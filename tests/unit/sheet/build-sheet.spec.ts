import { describe, expect, it } from 'vitest';
import { buildSheet, LONGEST_PRINTED } from '../../../src/sheet/build-sheet.ts';
import { sheetWords as words } from '../../../src/sheet/text/en.ts';
import { stepWords } from '../../../src/sheet/text/steps.ts';
import { soundCartridge } from '../../helpers/documents.ts';
import { byClass, byTag, factsOf, PLAIN_CURVE, rowsOf, sectionOf, sheetInput, textIn } from '../../helpers/sheets.ts';

describe('the build sheet', () => {
  it('comes in the order in which it is needed', () => {
    const headings = byTag(buildSheet(sheetInput()), 'h2').map(textIn);
    expect(headings.map((heading) => heading.replace(` ${words.common}`, '').trim())).toEqual([
      ...['Piston, compression stack', 'Piston, rebound stack', words.picking.title],
      words.changes.title(sheetInput().build.name),
      ...[words.fill.title, stepWords.assemble.title, stepWords.check.title, stepWords.ride.title],
      ...[stepWords.cautions.title, words.curve.title, words.signatures.title, words.link.title],
    ]);
  });

  it('names machine, damper and build, leaves a line for the date, and says what is invented', () => {
    const input = sheetInput({ name: 'Softer' });
    const facts = factsOf(byTag(buildSheet(input), 'header')[0]);
    expect(facts).toMatchObject({ Machine: input.project.name, Damper: input.project.damper.name, Build: 'Softer' });
    expect(facts.Date).toBeUndefined();
    const said = (invented: boolean) =>
      byClass(buildSheet({ ...input, project: { ...input.project, invented } }), 'invented').length;
    expect([said(true), said(false)]).toEqual([1, 0]);
  });

  it('lists shims with numbers, both units, count and a box for each, and their total', () => {
    const shims = [
      { outerDiameter_mm: 30, thickness_mm: 0.15, count: 3 },
      { outerDiameter_mm: 18, thickness_mm: 0.1 },
    ];
    const { build } = sheetInput();
    const stack = { clampDiameter_mm: 12, seatHeight_mm: 0, shims };
    const section = sectionOf(
      sheetInput({ valves: { ...build.valves, pistonCompression: stack } }),
      'pistonCompression',
    );
    expect(rowsOf(section)).toEqual([
      ['1–3', '30 × 0.15', '1.1811 × 0.0059', '3', ''],
      ['4', '18 × 0.1', '0.7087 × 0.0039', '1', ''],
    ]);
    expect(byClass(section, 'box')).toHaveLength(4);
    expect(textIn(byTag(section, 'tfoot')[0])).toBe(
      '4 shims, 0.55 mm (0.0217 in) high on a clamp of 12 mm (0.4724 in)',
    );
    expect(textIn(section)).toContain(words.shims.order['from-face']);
  });

  it('never invents a torque: an empty line, and the manual named where it comes from', () => {
    const empty = sectionOf(sheetInput(), 'fill');
    const facts = factsOf(empty);
    for (const label of [words.fill.pistonTorque, words.fill.torqueSource, words.fill.threadLocker]) {
      expect(Object.keys(facts)).toContain(label);
      expect(facts[label]).toBeUndefined();
    }
    expect(textIn(empty)).toContain(words.fill.manual);
    expect(textIn(empty)).not.toMatch(/\d N·m/);
    const known = sheetInput({ assembly: { pistonTorque_N_m: 20, torqueSource: 'p. 7', threadLocker: 'medium' } });
    expect(factsOf(sectionOf(known, 'fill'))).toMatchObject({
      [words.fill.pistonTorque]: '20 N·m (14.8 ft·lbf)',
      [words.fill.torqueSource]: 'p. 7',
      [words.fill.threadLocker]: 'medium',
    });
  });

  it('tells gas with its caution, oil in both units, and every adjuster from closed', () => {
    const input = sheetInput();
    const { gas, fluid } = input.project;
    const needle = { coneAngle_deg: 20, travelPerClick_mm: 0.1, clicks: 7, clickCount: 16 };
    const project = {
      ...input.project,
      gas: { ...gas, gaugePressure_bar: 10, volume_mL: 50 },
      fluid: { ...fluid, temperature_degC: 40 },
    };
    const build = { ...input.build, bleed: { ...input.build.bleed, needle } };
    const facts = factsOf(sectionOf({ ...input, project, build }, 'fill'));
    expect(facts[words.fill.gas]).toContain('10 bar (145 psi)');
    expect(facts[words.fill.gas]).toContain(words.fill.gasSafe);
    expect(facts).toMatchObject({
      [words.fill.temperature]: '40 °C (104 °F)',
      [words.fill.gasVolume]: '50 mL (1.69 fl oz US)',
      [words.fill.clicks(words.adjusters.needle)]: '7 of 16',
    });
    expect(facts[words.fill.volume]).toBeUndefined();
  });

  it('tells a fork its oil level and no gas charge', () => {
    const project = soundCartridge();
    const gas = {
      ...{ gaugePressure_bar: 0, polytropicExponent: 1.2 },
      airGap: { level_mm: 120, tubeDiameter_mm: 45, insertedVolume_mL: 60 },
    };
    const [build] = project.builds;
    const input = sheetInput({}, { project: { ...project, gas }, build, baseline: build });
    const facts = factsOf(sectionOf(input, 'fill'));
    expect(facts[words.fill.level]).toBe('120 mm (4.7244 in)');
    expect(facts).not.toHaveProperty(words.fill.gas);
    const sheet = textIn(buildSheet(input));
    expect(sheet).toContain('Mid-valve stack');
    expect(sheet).toContain(stepWords.assemble.gas.cartridge);
  });

  it('says what changes from the baseline, and that nothing does', () => {
    const { build: baseline } = sheetInput({ name: 'As found' });
    const shims = [...baseline.valves.pistonCompression.shims, { outerDiameter_mm: 14, thickness_mm: 0.25 }];
    const valves = { ...baseline.valves, pistonCompression: { ...baseline.valves.pistonCompression, shims } };
    const build = { ...baseline, id: 'other', valves, bleed: { ...baseline.bleed, diameter_mm: 0.75 } };
    const told = textIn(sectionOf(sheetInput({}, { build, baseline }), 'changes'));
    expect(told).toContain('Changes from As found');
    expect(told).toContain('+ 1 × 14 × 0.25 put in');
    expect(told).toMatch(/Bleed.*Diameter: .* → 0.75 mm \(0.0295 in\)/);
    expect(told).not.toContain('Piston, rebound');
    const same = sheetInput({}, { build: { ...baseline, id: 'copy' }, baseline });
    expect(textIn(sectionOf(same, 'changes'))).toContain(words.changes.none);
    expect(textIn(sectionOf(sheetInput(), 'changes'))).toContain(words.changes.isBaseline);
  });

  it('sets what was computed beside boxes for what is measured, at five speeds both ways', () => {
    const { build: baseline } = sheetInput();
    const build = { ...baseline, id: 'other' };
    const section = sectionOf(sheetInput({}, { build, baseline }), 'curve');
    expect(rowsOf(section)).toEqual([
      ['0.05', '125', '125', '', '125', '125', ''],
      ['0.1', '150', '150', '', '150', '150', ''],
      ['0.3', '250', '250', '', '250', '250', ''],
      ['1', '600', '600', '', '600', '600', ''],
      ['2', '1100', '1100', '', '1100', '1100', ''],
    ]);
    expect(byClass(section, 'write')).toHaveLength(10);
    expect(byTag(section, 'svg')).toHaveLength(1);
  });

  it('marks a force that pushes against the motion’s name, as gas does in a slow rebound', () => {
    const curve = { ...PLAIN_CURVE, force_N: [-1100, -600, -250, 30, 80, 125, 150, 250, 600, 1100] };
    const rows = rowsOf(sectionOf(sheetInput({}, { curves: { build: curve, baseline: curve } }), 'curve'));
    expect(rows.map((row) => row[3])).toEqual(['(+) 80', '(+) 30', '250', '600', '1100']);
  });

  it('shows a curve that failed, or is on its way, as such and never as numbers', () => {
    const failed = { status: 'failed', reason: 'the poppet never opens' } as const;
    const section = sectionOf(sheetInput({}, { curves: { build: failed, baseline: failed } }), 'curve');
    expect(textIn(section)).toContain('the poppet never opens');
    expect(rowsOf(section).map((row) => row[1])).toEqual(Array(5).fill(words.curve.unsolved));
    expect(byTag(section, 'svg')).toHaveLength(0);
    const solving = { status: 'solving' } as const;
    const waiting = sectionOf(sheetInput({}, { curves: { build: solving, baseline: solving } }), 'curve');
    expect(textIn(waiting)).toContain(words.curve.solving);
    const partly = {
      ...PLAIN_CURVE,
      force_N: [-1100, null, -250, -150, -125, 125, 150, 250, 600, 1100],
      reasons: ['no root'],
    };
    const broken = sectionOf(sheetInput({}, { curves: { build: partly, baseline: partly } }), 'curve');
    expect(textIn(broken)).toContain('no root');
    expect(rowsOf(broken)[3][3]).toBe(words.curve.unsolved);
  });

  it('leads back to the build, as text and to follow; says so where it cannot', () => {
    const address = 'https://bench.example/#work=1.abc';
    const whole = sectionOf(sheetInput({}, { link: { address, isWhole: true } }), 'links');
    expect(byTag(whole, 'a').map(({ attributes }) => attributes.href)).toEqual([address, address]);
    expect(textIn(byTag(whole, 'a')[1])).toBe(address);
    const fragment = sectionOf(sheetInput({}, { link: { address: '#work=1.abc', isWhole: false } }), 'links');
    expect(byTag(fragment, 'a')).toEqual([]);
    expect(textIn(fragment)).toContain('#work=1.abc');
    expect(textIn(sectionOf(sheetInput(), 'links'))).toContain(words.link.none);
    const long = sheetInput({}, { link: { address: `${address}${'x'.repeat(LONGEST_PRINTED)}`, isWhole: true } });
    expect(textIn(sectionOf(long, 'links'))).toContain(words.link.long);
  });

  it('warns of gas, springs, brakes and steering, and marks its steps as common practice', () => {
    const sheet = buildSheet(sheetInput());
    const cautions = textIn(byClass(sheet, 'cautions')[0]);
    for (const word of ['Gas', 'Springs', 'brak', 'steering', 'qualified', 'local rules', 'manual'])
      expect(cautions).toContain(word);
    for (const name of ['assemble', 'check', 'ride'])
      expect(textIn(byTag(byClass(sheet, name)[0], 'h2')[0])).toContain(words.common);
  });
});
