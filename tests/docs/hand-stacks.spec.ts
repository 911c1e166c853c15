/** The stacks on the pages of the calculation by hand: each put together once more from the printed lifts of its shims. */
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { damperFromProject, solveLift } from '../../src/solver/index.ts';
import { ROOT } from '../architecture/import-graph.ts';
import { loadDemo } from '../helpers/demo-curves.ts';
import { DAMPERS } from './hand-sizes.ts';
import { type StackSizes, stacksOf } from './hand-types.ts';
import { type Block, blockOf, close, fromPrinted } from './page-blocks.ts';

const read = (page: string) => readFileSync(join(ROOT, 'docs', page), 'utf8');
const rimOf = (shim: string): number => Number.parseFloat(shim) / 2;
const ALL = DAMPERS.flatMap((damper) =>
  stacksOf(damper).map(([place, stack]) => ({ page: damper.page, place, stack })),
);

/** Printed lift of a shim under a load from r0, at r. */
type Lift = (shim: string, load: '1l' | '2l', r0: number, r: number) => number;

const liftIn =
  ({ rows }: Block): Lift =>
  (shim, load, r0, r) => {
    const same = (row: Readonly<Record<string, string>>) =>
      row.shim === shim && row.load === load && fromPrinted(row['r₀']) === r0 && fromPrinted(row.r) === r;
    const row = rows.find(same);
    if (!row) throw new Error(`no ${shim} under ${load} from ${r0} at ${r}`);
    return fromPrinted(row['w, mm']);
  };

interface Backing {
  readonly W: number;
  readonly U: number;
}

/** From the last link to the first; every printed W and U on the way is held to what comes out. */
function backing(
  lift: Lift,
  at: (symbol: string) => number,
  c: number,
  shims: readonly string[],
  coil: StackSizes['coil'],
): Backing {
  const [first, ...behind] = shims;
  const alone = lift(first, '1l', c, c);
  const next: Backing | undefined =
    behind.length > 0 ? backing(lift, at, rimOf(behind[0]), behind, coil) : springOf(at, coil);
  if (!next) {
    close(at(`W ${first}`), alone);
    return { W: at(`W ${first}`), U: 0 };
  }
  const d = behind.length > 0 ? rimOf(behind[0]) : (coil as readonly number[])[0];
  const yielding = lift(first, '1l', d, d) + next.W;
  close(at(`W ${first}`), alone - (lift(first, '1l', c, d) * lift(first, '1l', d, c)) / yielding, 4e-3);
  if (next.U > 0) close(at(`U ${first}`), (next.U * lift(first, '1l', d, c)) / yielding);
  return { W: at(`W ${first}`), U: next.U > 0 ? at(`U ${first}`) : 0 };
}

function springOf(at: (symbol: string) => number, coil: StackSizes['coil']): Backing | undefined {
  if (!coil) return undefined;
  const [radius, rate, force] = coil;
  close(at('W spring'), (2 * Math.PI * radius) / rate);
  close(at('U spring'), force / rate);
  return { W: at('W spring'), U: at('U spring') };
}

/** What a table of plates and a table of steps say of one stack. */
function printedStack({ page, place, stack: { face, rest, pressed } }: (typeof ALL)[number]) {
  const lift = liftIn(blockOf(read(page), `${place}-plates`));
  const steps = blockOf(read(page), `${place}-stack`);
  const underOil = (r: number) => lift(face, '2l', pressed[0], r) - lift(face, '2l', pressed[1], r);
  return { lift, underOil, at: (symbol: string) => steps.at(symbol, 'value'), c: rimOf(rest[0]) };
}

describe.each(ALL)('$place on $page', (one) => {
  const { face, rest, land, seat, coil } = one.stack;
  const { lift, underOil, at, c } = printedStack(one);

  it('has its face from the table of plates', () => {
    const circles = [
      ['c', c],
      ['r₁', land[0]],
    ] as const;
    for (const [symbol, r] of circles) {
      close(at(`w_q(${symbol})`), underOil(r));
      close(at(`w_c(${symbol})`), lift(face, '1l', c, r));
    }
  });

  it('has its rest link by link, and both together', () => {
    const last = rest.findLastIndex((shim) => rimOf(shim) >= c);
    const beside = rest.slice(0, last).map((shim) => {
      close(at(`W ${shim}`), lift(shim, '1l', c, c));
      return at(`W ${shim}`);
    });
    const { W, U } = backing(lift, at, c, rest.slice(last), coil);
    close(at('W'), 1 / [...beside, W].reduce((sum, spring) => sum + 1 / spring, 0));
    close(at('R'), at('w_q(c)') / (at('w_c(c)') + at('W')));
    close(at('κ'), at('w_q(r₁)') - at('R') * at('w_c(r₁)'));
    const sunk = U > 0 ? at('h₀') : 0;
    if (U > 0) close(sunk, (U * at('w_c(r₁)')) / (at('w_c(c)') + at('W')));
    if (seat > 0) close(at('P opens'), (seat + sunk) / at('κ'));
    else expect(at('P opens')).toBe(0);
  });
});

const CROSSED = ALL.filter(({ stack: { rest } }) => rest.length > 1 && rimOf(rest[1]) > rimOf(rest[0]));

describe.each(CROSSED)('the crossover of $place on $page', (one) => {
  const { page, place, stack } = one;
  const { lift, underOil, at, c } = printedStack(one);

  it('keeps its gap open up to the pressure of its fastest stroke', () => {
    const [thin, second] = stack.rest;
    const g = rimOf(second);
    close(at('w_q(g)'), underOil(g));
    close(at('w_c(g)'), lift(stack.face, '1l', c, g));
    close(at('w₂(g)'), lift(second, '1l', c, g));
    close(at('R₂'), (at('R') * at('W')) / at(`W ${second}`));
    const closing = at('w_q(g)') - at('R') * at('w_c(g)') - at('R₂') * at('w₂(g)');
    close(at('P gap'), Number(thin.split(' × ')[1]) / closing, 5e-3);
    const direction = place === 'pistonRebound' ? 'rebound' : 'compression';
    const strokes = blockOf(read(page), `${direction}-${place === 'baseCompression' ? 'base' : 'piston'}`);
    const { speeds } = DAMPERS.find((damper) => damper.page === page) as (typeof DAMPERS)[number];
    for (const speed of speeds) expect(strokes.at('P', `${speed} m/s`)).toBeLessThan(at('P gap'));
  });
});

describe('a coil spring on a taper', () => {
  it('opens by hand earlier than the program says, as the page tells', () => {
    const project = loadDemo('wagtail-hill-climb-rear.shimwright.json');
    const { ports: _, ...stack } = damperFromProject(project, project.baselineBuild).rebound.stack;
    const { points } = solveLift(stack, [0.6e6, 1e6], { theory: 'small-deflection', landPressure: 'falling' });
    const [low, high] = points.map((point) => (point.status === 'converged' ? point.seatOpening_m : Number.NaN));
    const opens = 0.6 - (0.4 * low) / (high - low);
    const hand = blockOf(read('hand-twin-tube.md'), 'pistonRebound-stack').at('P opens', 'value');
    expect(read('hand-calculation.md')).toContain(`opens at ${hand.toFixed(3)} MPa in place of ${opens.toFixed(3)}`);
  });
});
