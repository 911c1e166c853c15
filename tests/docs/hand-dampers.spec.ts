/**
 * The pages of the calculation by hand, gone through again from their printed values as a reader would, with sizes that a person read off
 * the documents (hand-sizes.ts). Their stacks: hand-stacks.spec.ts.
 */
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { ROOT } from '../architecture/import-graph.ts';
import { circle } from './hand-formulas.ts';
import { DAMPERS } from './hand-sizes.ts';
import type { DamperSizes } from './hand-types.ts';
import { type At, walkCheck, walkValve } from './hand-walk.ts';
import { blockOf, close } from './page-blocks.ts';

const read = (page: string) => readFileSync(join(ROOT, 'docs', page), 'utf8');
const STROKES = DAMPERS.flatMap((damper) =>
  (['compression', 'rebound'] as const).flatMap((direction) =>
    damper.speeds.map((speed) => ({ damper, name: damper.name, direction, speed })),
  ),
);

/** What a page says of a damper whatever its speed. */
function printed({ page: name }: DamperSizes) {
  const page = read(name);
  const value = (block: string, symbol: string) => blockOf(page, block).at(symbol, 'value');
  return {
    page,
    size: (symbol: string) => value('sizes', symbol),
    oil: (symbol: string) => value('oil', symbol),
    fluid: { nu: value('oil', 'ν'), rho: value('oil', 'ρ') },
    stack: (place: string) => {
      const block = blockOf(page, `${place}-stack`);
      const sunk = block.rows.some(({ symbol }) => symbol === 'h₀') ? block.at('h₀', 'value') : 0;
      return { kappa: block.at('κ', 'value'), sunk };
    },
  };
}

describe.each(DAMPERS)('the $name on its page', (damper) => {
  const { oil, size } = printed(damper);

  it('has its oil from two points', () => {
    const [nu40, known, rho15, temperature] = damper.oil;
    const nu100 = known ?? oil('ν₂');
    const loglog = (nu: number) => Math.log10(Math.log10(nu + 0.7));
    const B = (loglog(nu40) - loglog(nu100)) / (Math.log10(373.15) - Math.log10(313.15));
    close(oil('B'), B);
    const y = loglog(nu40) - B * (Math.log10(temperature + 273.15) - Math.log10(313.15));
    close(oil('y'), y);
    close(oil('ν'), 10 ** (10 ** y) - 0.7);
    const x = (0.6278 / rho15) * (temperature - 15);
    close(oil('ρ'), rho15 * Math.exp(-x * (1 + 0.8 * x)));
    close(oil('μ'), (oil('ν') * oil('ρ')) / 1000);
  });

  it('has its areas and its gas', () => {
    close(size('A_p'), circle(damper.bore));
    close(size('A_r'), circle(damper.rod));
    close(size('A_p − A_r'), circle(damper.bore) - circle(damper.rod));
    const [p0, V0, n, sinks, half] = damper.gas;
    close(size('V₀'), V0);
    close(size('V'), V0 - (circle(sinks) * half) / 1000);
    const p = p0 * (V0 / (V0 - (circle(sinks) * half) / 1000)) ** n;
    close(size('p_gas'), p);
    close(size('F_gas'), (p - 0.101325) * circle(sinks), 3e-3);
  });
});

describe.each(DAMPERS)('the words of the $name', ({ page, piston, base, check }) => {
  const text = read(page);

  it('name the areas that floats, check plate and poppet are pressed on', () => {
    const areas = [...piston, ...(base ? [base] : [])].flatMap(({ stack: { float, pressed }, poppet }) => [
      ...(float ? [`A_z = ${(Math.PI * (pressed[1] ** 2 - pressed[0] ** 2)).toFixed(1)} mm²`] : []),
      ...(poppet ? [`opens at ${(poppet[3] / circle(poppet[0])).toFixed(3)} MPa`] : []),
    ]);
    const plates = check
      ? [(Math.PI * (check.land[1] ** 2 - check.land[0] ** 2)) / (2 * Math.log(check.land[1] / check.land[0]))]
      : [];
    for (const words of [...areas, ...plates.map((area) => `= ${area.toFixed(1)} mm²`)]) expect(text).toContain(words);
  });

  it('name the circle of each stack, the inner edge of its land and where it is pressed', () => {
    for (const { stack } of [...piston, ...(base ? [base] : [])]) {
      const [c, r1] = [Number.parseFloat(stack.rest[0]) / 2, stack.land[0]];
      const circles = c === r1 ? `c = r₁ = ${c} mm` : new RegExp(`c = ${c} mm, (\\*outside\\* of )?r₁ = ${r1} mm`);
      expect(text).toMatch(circles);
      expect(text).toContain(`pressure from ${stack.pressed[0]} to ${stack.pressed[1]} mm`);
    }
  });
});

describe.each(STROKES)('the $name in $direction at $speed m/s', ({ damper, direction, speed }) => {
  const { page, size, fluid, stack } = printed(damper);
  const inwards = direction === 'compression';
  const column = (block: string): At => {
    const table = blockOf(page, `${direction}-${block}`);
    return (symbol) => table.at(symbol, `${speed} m/s`);
  };
  const [piston, base, force] = ['piston', 'base', 'force'].map((block) => (symbol: string) => column(block)(symbol));

  it('balances the flow of its piston', () => {
    close(piston('Q'), size('A_p − A_r') * speed);
    const [valve, place] = inwards
      ? ([damper.piston[0], 'pistonCompression'] as const)
      : ([damper.piston[1], 'pistonRebound'] as const);
    walkValve(piston, valve, stack(place), speed, fluid);
  });

  it('balances that of its base, where it has one', () => {
    expect(page.includes(`<!-- ${direction}-base: begin -->`)).toBe(damper.base !== undefined);
    if (!damper.base || !damper.check) return;
    close(base('Q'), size('A_r') * speed);
    if (inwards) walkValve(base, damper.base, stack('baseCompression'), speed, fluid);
    else walkCheck(base, damper.check, damper.base, fluid);
  });

  it('adds its forces up', () => {
    const sign = inwards ? 1 : -1;
    const atBase = damper.base ? base('Δp') : 0;
    close(force('p_c'), size('p_gas') + sign * atBase);
    close(force('p_r'), force('p_c') - sign * piston('Δp'));
    expect(Math.min(force('p_c'), force('p_r'))).toBeGreaterThan(0.101325);
    const damping = sign * (atBase * size('A_r') + piston('Δp') * size('A_p − A_r'));
    close(force('F_damping'), damping);
    const [slow, film] = damper.friction;
    close(force('F_friction'), sign * (slow + film * speed));
    const whole = force('F_damping') + size('F_gas') + force('F_friction');
    expect(Math.abs(force('F') - whole)).toBeLessThan(1e-3 * Math.abs(damping) + 0.05);
  });
});
