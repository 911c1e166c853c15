/**
 * The page of the calculation by hand. Its steps are gone through again from the printed values, as a reader would; the program's side is held
 * to the program. The plates are held to outside numbers in tests/unit/scripts/hand-calculation.spec.ts,
 * their printed rows in hand-plates.spec.ts.
 */
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { handBlocks } from '../../scripts/lib/hand-calculation/page.ts';
import { lineLoad, type Plate, pressureFrom } from '../../scripts/lib/hand-calculation/roark.ts';
import { forceCurveForBuild, type Theory } from '../../src/solver/index.ts';
import { ROOT } from '../architecture/import-graph.ts';
import { loadDemo } from '../helpers/demo-curves.ts';
import { blockOf, blockText, close, fromPrinted } from './page-blocks.ts';

const read = (path: string) => readFileSync(join(ROOT, path), 'utf8');
const page = read('docs/hand-calculation.md');
const theory = read('docs/theory.md');
const monotube = loadDemo('larkspur-trail-rear.shimwright.json');
const cartridge = loadDemo('larkspur-trail-fork.shimwright.json');

const holeDrop = (Q: number, [count, d_mm, L_mm]: readonly number[], oil: { nu: number; rho: number }) => {
  const s = L_mm / d_mm;
  const u = (Q * 1e-6) / (count * (Math.PI / 4) * (d_mm * 1e-3) ** 2);
  const Cdu = s <= 2 ? 0.81 : 0.827 - 0.0085 * s;
  const viscous = (20 * (1 + 2.25 * s) * oil.nu * 1e-6 * u) / (d_mm * 1e-3);
  const V = (slope: number) => (u * slope + Math.sqrt((u * slope) ** 2 + 4 * viscous)) / 2;
  const Re = (V(1 / Cdu) * d_mm * 1e-3) / (oil.nu * 1e-6);
  const x = (0.005 * s) / (1 + 7.5 * Math.log10(0.00015 * Re) ** 2);
  return (0.5e-6 * oil.rho * V(1 / Cdu - x) ** 2) as number; // MPa
};

const curtain = (h_mm: number, Q: number, [r1, r2]: readonly number[], oil: { nu: number; rho: number }) => {
  const mu = oil.nu * 1e-6 * oil.rho;
  const [h, w] = [h_mm * 1e-3, 2e-3 * Math.PI * r1];
  const a = (6 * mu * Math.log(r2 / r1)) / (Math.PI * h ** 3) + (32 * mu) / (Math.PI * w * h * h);
  return (a * Q * 1e-6 + (oil.rho / 2) * ((Q * 1e-6) / (0.7 * w * h)) ** 2) / 1e6; // MPa
};

describe('the monotube on the page', () => {
  const oil = blockOf(page, 'monotube-oil');
  const sizes = blockOf(page, 'monotube-sizes');
  const stack = blockOf(page, 'monotube-stack');
  const steps = blockOf(page, 'monotube-speeds');
  const fluid = { nu: oil.at('ν', 'value'), rho: oil.at('ρ', 'value') };
  const kappa = stack.at('κ', 'value');

  it('has its oil from two points', () => {
    const loglog = (nu: number) => Math.log10(Math.log10(nu + 0.7));
    const B = (loglog(15) - loglog(3.5)) / (Math.log10(373.15) - Math.log10(313.15));
    close(oil.at('B', 'value'), B);
    const y = loglog(15) - B * (Math.log10(323.15) - Math.log10(313.15));
    close(oil.at('y', 'value'), y);
    close(fluid.nu, 10 ** (10 ** y) - 0.7);
    const x = (0.6278 / 860) * 35;
    close(fluid.rho, 860 * Math.exp(-x * (1 + 0.8 * x)));
    close(oil.at('μ', 'value'), (fluid.nu * fluid.rho) / 1000);
  });

  it('has its areas and its gas', () => {
    const A_r = (Math.PI / 4) * 16 ** 2;
    close(sizes.at('A_p − A_r', 'value'), (Math.PI / 4) * 40 ** 2 - A_r);
    const p = 1.301325 * (70 / (70 - A_r * 38e-3)) ** 1.2;
    close(sizes.at('p_gas', 'value'), p);
    close(sizes.at('F_gas', 'value'), (p - 0.101325) * A_r);
  });

  it('has its stack from the lifts of its shims', () => {
    const at = (symbol: string) => stack.at(symbol, 'value');
    const W = 1 / (1 / at('W 22 × 0.1') + 1 / at('W 28 × 0.25') + 1 / at('W 22 × 0.25'));
    close(at('W'), W);
    close(at('R'), at('w_q(c)') / (at('w_c(c)') + W));
    close(kappa, at('w_q(r₁)') - at('R') * at('w_c(r₁)'));
  });

  it.each([0.015, 0.3, 1])('balances its flow at %d m/s', (speed) => {
    const at = (symbol: string) => steps.at(symbol, `${speed} m/s`);
    const area = sizes.at('A_p − A_r', 'value');
    const Q = at('Q');
    close(Q, area * speed);
    close(at('Δp'), holeDrop(at('Q_b'), [1, 1.6, 6], fluid));
    const through = Q - at('Q_b');
    if (through === 0) {
      expect(at('P')).toBeLessThan(0.1 / kappa);
      expect(at('h')).toBe(0);
    } else {
      const ports = holeDrop(through, [4, Math.sqrt((4 * 30) / Math.PI), 14], fluid);
      close(at('P'), at('Δp') - ports);
      close(at('h'), kappa * at('P') - 0.1);
      close(at('P'), curtain(at('h'), through, [15.7, 16.5], fluid), 4e-3);
    }
    close(at('F_damping'), at('Δp') * area);
    close(at('F'), at('F_damping') + sizes.at('F_gas', 'value') + 25);
  });

  it('says where its stack opens and where the gap behind it closes', () => {
    expect(page).toContain(`0.1 mm/κ = ${(0.1 / kappa).toFixed(3)} MPa`);
    const plate = (name: string, a: number, t: number): Plate => ({ name, a, b: 6e-3, t, count: 1 });
    const [face, second] = [plate('face', 17e-3, 0.3e-3), plate('second', 14e-3, 0.25e-3)];
    const pressed = pressureFrom(face, 9e-3, 14e-3).lift - pressureFrom(face, 16.1e-3, 14e-3).lift;
    const R = stack.at('R', 'value') * 1e-3;
    const onSecond = (R * stack.at('W', 'value')) / stack.at('W 28 × 0.25', 'value');
    const gap = pressed - R * lineLoad(face, 11e-3, 14e-3).lift - onSecond * lineLoad(second, 11e-3, 14e-3).lift;
    expect(page).toContain(`it closes at ${(0.1e-3 / gap / 1e6).toFixed(2)} MPa`);
    expect(steps.at('P', '1 m/s')).toBeLessThan(0.1e-3 / gap / 1e6);
  });
});

describe('the cartridge on the page', () => {
  const sizes = blockOf(page, 'cartridge-sizes');
  const valves = blockOf(page, 'cartridge-valves');
  const check = blockOf(page, 'cartridge-check');
  const forces = blockOf(page, 'cartridge-forces');
  const fluid = { nu: sizes.at('ν', 'value'), rho: sizes.at('ρ', 'value') };
  const kappaOf = (name: string) => blockOf(page, `cartridge-${name}`).at('κ', 'value');

  const needle = (Q: number, [d, half_deg, x]: readonly number[]) => {
    const a = (half_deg * Math.PI) / 180;
    const s = x * Math.sin(a) * 1e-3;
    const A = Math.PI * s * (d * 1e-3 - s * Math.cos(a));
    const mu = fluid.nu * 1e-6 * fluid.rho;
    const creeping = (32 * mu * Q * 1e-6) / (Math.PI * A * s);
    return (creeping + (fluid.rho / 2) * ((Q * 1e-6 * (Math.PI + 2)) / (Math.PI * A)) ** 2) / 1e6;
  };

  it.each([
    ['mid-valve', 'mid-valve', [1, 2.2, 6], [2.2, 8, 1.5], [4, Math.sqrt(72 / Math.PI), 8], [10, 10.5], 0.25],
    ['base valve', 'base', [1, 2, 5], [2, 7, 1.5], [4, 3.2, 10], [8.7, 9.2], -0.05],
    ['rebound valve', 'rebound', [1, 2.2, 6], [2.2, 8, 1.5], [4, 3.4, 8], [9, 9.5], -0.05],
  ] as const)('balances its %s', (heading, name, bleed, cone, ports, land, offset) => {
    const at = (symbol: string) => valves.at(symbol, heading);
    const area = sizes.at(name === 'base' ? 'A_r' : 'A_p − A_r', 'value');
    close(at('Q'), area * 0.3);
    close(at('Δp'), holeDrop(at('Q_b'), bleed, fluid) + needle(at('Q_b'), cone));
    const through = at('Q') - at('Q_b');
    close(at('P'), at('Δp') - holeDrop(through, ports, fluid));
    close(at('h'), kappaOf(name) * at('P') + offset);
    close(at('P'), curtain(at('h'), through, land, fluid), 4e-3);
  });

  it('balances its refill check', () => {
    const A = (Math.PI * (11 ** 2 - 7.5 ** 2)) / (2 * Math.log(11 / 7.5));
    const x = check.at('x', 'value');
    close(check.at('p', 'value'), ((0.8 + 0.3 * x) / A) * 1000);
    close(check.at('p', 'value') / 1000, curtain(x, check.at('Q', 'value'), [7.5, 11], fluid), 4e-3);
    const ports = holeDrop(check.at('Q', 'value'), [8, 3.2, 6], fluid);
    close(check.at('Δp', 'value'), check.at('p', 'value') + 1000 * ports);
  });

  it('has its air from the level of the oil', () => {
    const A_g = (Math.PI / 4) * 43 ** 2;
    const V0 = ((Math.PI / 4) * 38 ** 2 * 130 + A_g * 240) / 1000 - 30;
    const p = 0.101325 * (V0 / (V0 - A_g * 0.12)) ** 1.2;
    close(sizes.at('F_gas', 'value'), (p - 0.101325) * A_g);
  });

  it.each([
    ['compression', 1, 'mid-valve', valves.at('Δp', 'base valve')],
    ['rebound', -1, 'rebound valve', check.at('Δp', 'value') / 1000],
  ] as const)('adds its forces up in %s', (stroke, sign, heading, atBase) => {
    const piston = valves.at('Δp', heading) * sizes.at('A_p − A_r', 'value');
    const damping = sign * (atBase * sizes.at('A_r', 'value') + piston);
    close(forces.at('F_damping', stroke), damping);
    close(forces.at('F', stroke), damping + sizes.at('F_gas', 'value') + sign * (18 + 10 * 0.3));
  });
});

describe('the comparison', () => {
  const point = (project: typeof monotube, speed: number, kind: Theory) => {
    const options = { speeds_m_s: [speed], theory: kind };
    const [at] = forceCurveForBuild(project, project.baselineBuild, options).points;
    if (at.status !== 'converged') throw new Error(at.reason);
    return at;
  };
  const summary = blockOf(theory, 'summary');

  it.each([
    ['monotube, compression, 0.015 m/s', monotube, 0.015, 0.001, 0.001],
    ['monotube, compression, 0.3 m/s', monotube, 0.3, 0.01, 0.15],
    ['monotube, compression, 1 m/s', monotube, 1, 0.02, 0.3],
    ['cartridge, compression, 0.3 m/s', cartridge, 0.3, 0.01, 0.08],
    ['cartridge, rebound, 0.3 m/s', cartridge, -0.3, 0.04, 0.18],
  ] as const)('%s is the program beside the hand', (row, project, speed, small, large) => {
    const hand = summary.at(row, 'by hand');
    for (const [kind, heading, most] of [
      ['small-deflection', 'small deflection', small],
      ['large-deflection', 'large deflection', large],
    ] as const) {
      const program = point(project, speed, kind).dampingForce_N;
      close(summary.at(row, heading), program);
      expect(summary.at(row, `hand to ${heading.split(' ')[0]}`)).toBeCloseTo(100 * (hand / program - 1), 0);
      expect(Math.abs(hand / program - 1)).toBeLessThan(most);
    }
  });

  it('fails by hand where shims stretch', () => {
    expect(summary.at('monotube, compression, 1 m/s', 'hand to large')).toBeLessThan(-15);
  });

  it('is what the steps of the page end with', () => {
    const steps = blockOf(page, 'monotube-speeds');
    for (const speed of [0.015, 0.3, 1])
      expect(summary.at(`monotube, compression, ${speed} m/s`, 'by hand')).toBe(steps.at('F_damping', `${speed} m/s`));
    const forces = blockOf(page, 'cartridge-forces');
    for (const stroke of ['compression', 'rebound'])
      expect(summary.at(`cartridge, ${stroke}, 0.3 m/s`, 'by hand')).toBe(forces.at('F_damping', stroke));
  });

  it('stands on the pages as the demos are now', () => {
    for (const [name, block] of Object.entries(handBlocks(monotube, cartridge))) {
      const shown = blockText(name === 'summary' ? theory : page, name);
      expect(numbersApart(shown, block), name).toEqual([]);
    }
  });

  it('notices a number that is off, and a word', () => {
    expect(numbersApart('| a | 1.000 |', '| a | 1.001 |')).toEqual([]);
    expect(numbersApart('| a | 1.000 |', '| a | 1.010 |')).toHaveLength(1);
    expect(numbersApart('| a | 1.000 |', '| b | 1.000 |')).toHaveLength(1);
  });

  /** Words as they are; numbers to two in a thousand, or to a tenth of a per cent in a column of per cents. */
  function numbersApart(shown: string, wanted: string): string[] {
    const [words, others] = [shown, wanted].map((text) => text.split(/\s+/));
    const differs = (a: string, b: string | undefined) => {
      const [x, y] = [fromPrinted(a), fromPrinted(b ?? '')];
      return Number.isNaN(x) || Number.isNaN(y)
        ? a !== b
        : Math.abs(x - y) > Math.max(2e-3 * Math.abs(y), 1e-9) + isShare(a);
    };
    const isShare = (text: string) => (/^[+−]?\d+\.\d$/.test(text) ? 0.11 : 0);
    const apart = words.filter((word, i) => differs(word, others[i]));
    return words.length === others.length ? apart : [...apart, 'another number of words'];
  }
});
