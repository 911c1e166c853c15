import { describe, expect, it } from 'vitest';
import type { Project } from '../../src/model/project.ts';
import { cliJson } from '../helpers/cli-json.ts';
import { CARTRIDGE_FIXTURE, fixturePath, PROJECT_FIXTURE, soundCartridge, soundProject } from '../helpers/documents.ts';
import { runCli, runHere } from '../helpers/run-cli.ts';

const CARTRIDGE = fixturePath(CARTRIDGE_FIXTURE);
const PROJECT = fixturePath(PROJECT_FIXTURE);

const forces = async (project: Project, ...words: string[]) => (await cliJson(['force', ...words], project)).points;

/** A fork leg whose air gap is 120 mm of a 41 mm tube at full extension, and 20 mm fully compressed. */
function forkLeg(): Project {
  const { hydraulicStop, ...damper } = soundCartridge().damper;
  return {
    ...soundCartridge(),
    damper: { ...damper, travel_mm: 100, legDiameter_mm: 41 },
    gas: {
      gaugePressure_bar: 0,
      airGap: { level_mm: 20, tubeDiameter_mm: 41, insertedVolume_mL: 0 },
      polytropicExponent: 1.2,
    },
  };
}

describe.concurrent('shimwright force at a position', () => {
  it('meets the air spring of a fork leg', async () => {
    const points = await forces(forkLeg(), '--speeds-m-s=0', '--position=20,50,80,100');
    // Source: published checks E5, air-gap fork, D 41 mm, gap 120 mm, 1 atm, n 1.2 (closed form).
    const wanted = [32.72, 121.66, 366.17, 1014.79];
    for (const [i, point] of points.entries()) {
      expect(point.position_mm).toBe([20, 50, 80, 100][i]);
      expect(point.gasForce_N).toBeCloseTo(wanted[i], 2);
    }
  });

  it('is taken at mid-stroke without a wish, and says so', async () => {
    const [asked, own] = await Promise.all([
      cliJson(['force', '--speeds-m-s=0.3', '--position=35'], soundProject()),
      cliJson(['force', '--speeds-m-s=0.3'], soundProject()),
    ]);
    expect(own.position_mm).toBe(35);
    expect(asked).not.toHaveProperty('position_mm');
    expect(asked.points[0]).toEqual({ ...own.points[0], position_mm: 35 });
  });

  it('feels the hydraulic stop in the last of the stroke only', async () => {
    const points = await forces(soundCartridge(), '--speeds-m-s=0.1', '--position=100,245');
    expect(points[0].stopForce_N).toBe(0);
    expect(points[1].stopForce_N).toBeGreaterThan(0);
    const { force_N, gasForce_N, frictionForce_N, dampingForce_N, stopForce_N } = points[1];
    expect(force_N).toBeCloseTo(gasForce_N + frictionForce_N + dampingForce_N + stopForce_N, 6);
  });

  it.each(['-1', '70.1', 'half'])('refuses the position %s of a travel of 70 mm', async (position) => {
    const { exit, result, talk } = await runHere(['force', PROJECT, '--speeds-m-s=0.1', `--position=${position}`]);
    expect({ exit, result }).toEqual({ exit: 2, result: '' });
    expect(talk.join()).toContain(`--position: got "${position}"`);
  });
});

describe.concurrent('shimwright force without gas', () => {
  it('takes the force of the gas off, and names the column so', async () => {
    const words = ['--speeds-m-s=-0.5,0.5', '--band'];
    const [whole, less] = await Promise.all([
      forces(soundProject(), ...words),
      forces(soundProject(), ...words, '--without-gas'),
    ]);
    for (const [i, point] of less.entries()) {
      // By hand: 11.01325 bar (90 / 82.96283)^1.2 at mid-stroke, less 1.01325 bar, on the 16 mm rod: 223.79 N.
      expect(whole[i].force_N - point.forceWithoutGas_N).toBeCloseTo(223.788, 2);
      expect(point.gasForce_N).toBe(whole[i].gasForce_N);
      expect(whole[i].forceLow_N - point.forceLowWithoutGas_N).toBeCloseTo(point.gasForce_N, 8);
      expect(whole[i].forceHigh_N - point.forceHighWithoutGas_N).toBeCloseTo(point.gasForce_N, 8);
      expect(point).not.toHaveProperty('force_N');
    }
    const table = await runCli(['force', PROJECT, '--speeds-m-s=0.5', '--without-gas']);
    expect(table.stdout).toMatch(/^speed m\/s {2}status +force without gas N/);
  });
});

describe.concurrent('shimwright force with a base valve', () => {
  const BASE_KEYS = [
    'baseDrop_bar',
    'baseShimPressure_bar',
    'baseOpening_mm',
    'basePortsFlow_L_min',
    'baseBleedFlow_L_min',
    'basePoppetFlow_L_min',
    'baseCheckFlow_L_min',
  ];

  it('tells what its base valve does, behind what every damper tells', async () => {
    const [[cartridge], [monotube]] = await Promise.all([
      forces(soundCartridge(), '--speeds-m-s=0.05'),
      forces(soundProject(), '--speeds-m-s=0.05'),
    ]);
    const [theory, ...before] = Object.keys(monotube).reverse();
    const common = before.reverse();
    expect(theory).toBe('theory');
    expect(Object.keys(cartridge)).toEqual([...common, ...BASE_KEYS, 'stopForce_N', 'theory', 'baseTheory']);
    expect(cartridge.baseDrop_bar).toBeGreaterThan(0);
    // The rod of 12 mm presses 113.097 mm2 out to the gas: at 0.05 m/s 0.339292 L/min.
    const passed = BASE_KEYS.slice(3).reduce((sum, key) => sum + cartridge[key], 0);
    expect(passed).toBeCloseTo(0.339292, 5);
  });
});

describe.concurrent('shimwright force at clicks by name', () => {
  it('turns each adjuster that is named, in every combination', async () => {
    const clicks = '--clicks=needle=0/20,poppet=0/12/24';
    const points = await forces(soundCartridge(), '--speeds-m-s=0.02', clicks);
    expect(points.map((p: Record<string, number>) => [p.needleClicks, p.poppetClicks])).toEqual([
      [0, 0],
      [0, 12],
      [0, 24],
      [20, 0],
      [20, 12],
      [20, 24],
    ]);
    expect(points[0].bleedFlow_L_min).toBe(0);
    expect(points[3].bleedFlow_L_min).toBeGreaterThan(0);
    expect(points[3].dampingForce_N).toBeLessThan(points[0].dampingForce_N);
  });

  it('gives what the document gives with the same clicks', async () => {
    const turned = soundCartridge();
    const [build] = turned.builds;
    if (build.baseBleed?.needle && build.basePoppet?.adjuster) {
      build.baseBleed.needle.clicks = 2;
      build.basePoppet.adjuster.clicks = 20;
    }
    const [[written], [asked]] = await Promise.all([
      forces(turned, '--speeds-m-s=0.1'),
      forces(soundCartridge(), '--speeds-m-s=0.1', '--clicks=base-needle=2,poppet=20'),
    ]);
    expect(asked).toEqual({ ...written, baseNeedleClicks: 2, poppetClicks: 20 });
  });

  it('turns the needle of the piston where a bare number is given', async () => {
    const [[bare], [named]] = await Promise.all([
      forces(soundCartridge(), '--speeds-m-s=0.1', '--clicks=3'),
      forces(soundCartridge(), '--speeds-m-s=0.1', '--clicks=needle=3'),
    ]);
    expect(bare.force_N).toBe(named.force_N);
    expect([bare.clicks, named.needleClicks]).toEqual([3, 3]);
  });

  it.each([
    ['poppet=25', 'a whole number from 0 to 24'],
    ['poppet=2.5', '--clicks: got "poppet=2.5", wanted NAME=CLICKS'],
    ['poppet=', '--clicks: got "poppet=", wanted NAME=CLICKS'],
    ['8,poppet=3', '--clicks: got "8", wanted NAME=CLICKS'],
    ['poppet=3,poppet=4', 'poppet is given twice'],
    ['screw=3', 'the adjusters of build as-found are needle, base-needle, poppet, rebound-spring'],
    ['base-spring=3', '[adjuster.none]'],
    [`needle=${'0/'.repeat(200)}0,poppet=${'0/'.repeat(200)}0`, 'at most 10000 settings'],
  ])('refuses %s', async (clicks, message) => {
    const { exit, result, talk } = await runHere(['force', CARTRIDGE, '--speeds-m-s=0.1', `--clicks=${clicks}`]);
    expect({ exit, result }).toEqual({ exit: 2, result: '' });
    expect(talk.join()).toContain(message);
  });

  it('says that a build without one has no adjuster', async () => {
    const { exit, talk } = await runHere(['force', PROJECT, '--speeds-m-s=0.1', '--clicks=screw=3']);
    expect(exit).toBe(2);
    expect(talk.join()).toContain('build as-found has no adjuster');
  });
});

describe.concurrent('an oil beyond the temperatures of its data', () => {
  it.each(['force', 'flow', 'pressures'])('is named by %s, once, and the numbers stand', async (command) => {
    const words = [command, CARTRIDGE, '--speeds-m-s=0.1,0.2', '--temperature=-10,50,120'];
    const { exit, talk } = await runHere(words);
    expect(exit).toBe(0);
    expect(talk.filter((line) => line.includes('extrapolated'))).toEqual([
      'at -10, 120 °C the viscosity is extrapolated: it is known from 40 to 100 °C',
    ]);
  });

  it('is named by a cycle, and not where no temperature was asked for', async () => {
    const words = ['cycle', CARTRIDGE, '--stroke-mm=20', '--frequency-Hz=2'];
    const [cold, own] = await Promise.all([runHere([...words, '--temperature=15']), runHere(words)]);
    expect(cold.talk).toContain('at 15 °C the viscosity is extrapolated: it is known from 40 to 100 °C');
    expect(own.talk.join()).not.toContain('extrapolated');
  });
});
