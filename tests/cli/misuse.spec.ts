import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { readArguments } from '../../src/cli/arguments.ts';
import { commandHelp, generalHelp } from '../../src/cli/help.ts';
import { COMMANDS, EXIT_MEANINGS } from '../../src/cli/options.ts';
import { CARTRIDGE_FIXTURE, fixturePath, fixtureText, PROJECT_FIXTURE, STACK_FIXTURE } from '../helpers/documents.ts';
import { runCli, runHere } from '../helpers/run-cli.ts';

const STACK = fixturePath(STACK_FIXTURE);
const FOLDER = fixturePath('.');

describe.concurrent('misuse', () => {
  it.each([
    [['lift'], 'lift needs a FILE'],
    [['lift', STACK], 'lift needs --pressures-MPa LIST'],
    [['lift', '--pressures-MPa', '0.1'], 'lift needs a FILE'],
    [['lift', STACK, '--pressures-MPa'], '--pressures-MPa needs a value'],
    [['lift', STACK, '--pressures-MPa', '--json'], '--pressures-MPa'],
    [['lift', STACK, STACK, '--pressures-MPa', '0.1'], 'one FILE at a time'],
    [
      ['lift', STACK, '--pressures-MPa', '0.1', '--theory', 'magic'],
      'wanted auto or small-deflection or large-deflection or port-periodic',
    ],
    [
      ['lift', STACK, '--pressures-MPa', '0.1', '--presure', '2'],
      'lift has no option --presure; it has --pressures-MPa, --stack, --build, --theory, --stress, --json, --csv',
    ],
    [['lift', STACK, '--pressures', '0.1'], 'lift has no option --pressures; meant may be --pressures-MPa'],
    [['lift', STACK, '--pressures-MPa', '0.1', '--builds', 'a'], 'lift has no option --builds; meant may be --build'],
    [['lift', STACK, '--pressures-MPa', '0.1', '-j'], 'lift has no option -j'],
    [['lift', STACK, '--pressures-MPa', '0.1', '--json=yes'], '--json takes no value'],
    [['lift', STACK, '--pressures-MPa', '0.1', '--json', '--csv'], 'choose one of --json, --csv'],
    [['lift', STACK, '--pressures-MPa', '0.1', '--pressures-mpa', '0.2'], 'given twice'],
    [['lift', 'no-such-file.json', '--pressures-MPa', '0.1'], 'there is no such file'],
    [['lift', FOLDER, '--pressures-MPa', '0.1'], 'this is a folder'],
    [['check', '--', '--No-Such.json'], '--No-Such.json: there is no such file'],
    [['force', STACK, '--speeds-m-s', '0.1'], 'wanted "shimwright/project"'],
    [['check', 'no-such-file.json'], 'there is no such file'],
    [['check', FOLDER], 'this is a folder'],
    [
      ['lft', STACK],
      'the commands are lift, force, compare, pressures, flow, cycle, fit, fluid, search, merge, tolerance, sheet, check',
    ],
    [['--constructor'], 'no command'],
    [['__proto__', STACK], 'no command'],
  ])('%j is refused with its reason', async (words, message) => {
    const { exit, result, talk } = await runHere(words);
    expect({ exit, result }).toEqual({ exit: 2, result: '' });
    expect(talk.join('\n')).toContain(message);
  });

  it('exits 2, says why on stderr and leaves stdout empty', async () => {
    const { code, stdout, stderr } = await runCli(['lift', 'no-such-file.json', '--pressures-MPa', '0.1']);
    expect({ code, stdout }).toEqual({ code: 2, stdout: '' });
    expect(stderr).toBe('shimwright: no-such-file.json: there is no such file\n');
  });

  it('refuses what is no text', async () => {
    const { code, stderr } = await runCli(['check', '-'], Buffer.from([0xff, 0xfe, 0x7b, 0x00]));
    expect(code).toBe(2);
    expect(stderr).toContain('no UTF-8 text');
  });

  it('stops reading an endless input', async () => {
    const { code, stdout } = await runCli(['check', '/dev/zero']);
    expect(code).toBe(2);
    expect(stdout).toContain('[document.too-large]');
  });
});

describe.concurrent('shimwright check', () => {
  it.each([STACK_FIXTURE, PROJECT_FIXTURE])('finds no fault in %s', async (name) => {
    const { code, stdout, stderr } = await runCli(['check', fixturePath(name)]);
    expect({ code, stderr }).toEqual({ code: 0, stderr: '' });
    expect(stdout).toContain('no faults');
  });

  it('lists the adjusters of each build with their clicks', async () => {
    const [table, asJson, none, stack] = await Promise.all([
      runCli(['check', fixturePath(CARTRIDGE_FIXTURE)]),
      runCli(['check', fixturePath(CARTRIDGE_FIXTURE), '--json']),
      runCli(['check', fixturePath(PROJECT_FIXTURE)]),
      runCli(['check', STACK, '--json']),
    ]);
    expect(table.stdout.split('\n')[1]).toBe(
      '  as-found (As found): clicks from closed: needle 10 of 20, base-needle 8 of 16, poppet 3 of 24, rebound-spring 6 of 20',
    );
    const [build] = JSON.parse(asJson.stdout).builds;
    expect(build).toMatchObject({ id: 'as-found', name: 'As found' });
    expect(build.adjusters[2]).toEqual({ id: 'poppet', clicks: 3, clickCount: 24 });
    expect(none.stdout.split('\n')[1]).toBe('  as-found (As found): no adjuster');
    expect(JSON.parse(stack.stdout)).not.toHaveProperty('builds');
  });

  it('reports every fault on stdout and exits 2', async () => {
    const text = fixtureText(PROJECT_FIXTURE)
      .replace('"thickness_mm": 0.1 }', '"thickness_mm": -0.1 }')
      .replace('"boreDiameter_mm": 46', '"boreDiameter_mm": 15');
    const { code, stdout, stderr } = await runCli(['check', '-'], text);
    expect({ code, stderr }).toEqual({ code: 2, stderr: '' });
    expect(stdout).toContain('builds[0].valves.pistonCompression.shims[1].thickness_mm: got -0.1 mm');
    expect(stdout).toContain('[damper.rod.beyond-bore]');
    const wide = await runCli(
      ['force', '-', '--speeds-m-s', '0.1'],
      fixtureText(PROJECT_FIXTURE).replace('"area_mm2": 62', '"area_mm2": 620'),
    );
    expect(wide).toMatchObject({ code: 2, stdout: '' });
    expect(wide.stderr).toContain(
      'damper.valves.pistonCompression.ports.area_mm2: got 2575.03 mm², wanted all ports together less than the face of the piston beside the rod, 1460.84 mm² [damper.port.beyond-face]',
    );
    const asJson = await runCli(['check', '-', '--json'], text);
    expect(asJson.code).toBe(2);
    const report = JSON.parse(asJson.stdout);
    expect(report).toMatchObject({ format: 'shimwright/check', version: 1, ok: false });
    expect(report.faults.map((fault: { code: string }) => fault.code)).toContain('damper.rod.beyond-bore');
    expect(stdout.trimEnd().split('\n')).toHaveLength(report.faults.length + 1);
  });
});

const unfolded = (text: string): string => text.replace(/\s+/g, ' ');

describe.concurrent('help and version', () => {
  it('lists every command, option and exit code of the table', async () => {
    const general = await runCli(['--help']);
    expect(general).toMatchObject({ code: 0, stderr: '' });
    for (const [code, meaning] of EXIT_MEANINGS) expect(general.stdout).toContain(`${code}  ${meaning}`);
    for (const { name, summary, options } of COMMANDS) {
      expect(unfolded(general.stdout)).toContain(summary);
      const [own, other] = await Promise.all([runHere([name, '--help']), runHere(['help', name])]);
      expect(own).toMatchObject({ exit: 0, talk: [] });
      expect(other.result).toBe(own.result);
      for (const option of options) expect(own.result).toContain(`--${option.name}`);
    }
  });

  it.each(COMMANDS)('fits $name on the screen, and no line is longer than 100 characters', (command) => {
    const longest = (text: string) => Math.max(...text.split('\n').map((line) => line.length));
    expect(longest(commandHelp(command, 80))).toBeLessThanOrEqual(80);
    expect(longest(commandHelp(command, Number.POSITIVE_INFINITY))).toBeLessThanOrEqual(100);
    expect(longest(generalHelp(80))).toBeLessThanOrEqual(80);
    expect(longest(generalHelp(Number.POSITIVE_INFINITY))).toBeLessThanOrEqual(100);
    for (const { help } of command.options) expect(unfolded(commandHelp(command, 80))).toContain(unfolded(help));
  });

  it.each(COMMANDS)('gives an example of $name that holds', (command) => {
    const [words] = command.example.split(' > ');
    expect(commandHelp(command, 80)).toContain(`shimwright ${command.name} ${words}`);
    expect(readArguments(words.split(' '), command).file).not.toBe('');
  });

  it('without words shows the help on stderr and exits 2', async () => {
    const { code, stdout, stderr } = await runCli([]);
    expect({ code, stdout }).toEqual({ code: 2, stdout: '' });
    expect(stderr).toContain('shimwright COMMAND FILE [OPTIONS]');
  });

  it('prints the version of the package', async () => {
    const { version } = JSON.parse(readFileSync(new URL('../../package.json', import.meta.url), 'utf8'));
    expect(await runCli(['--version'])).toEqual({ code: 0, stdout: `${version}\n`, stderr: '' });
  });
});
