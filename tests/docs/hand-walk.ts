/** Goes once more through the printed steps of a valve, a refill check and a force, for one speed. */
import { expect } from 'vitest';
import {
  circle,
  coneDrop,
  curtainDrop,
  dragged,
  type Fluid,
  frustum,
  gapDrop,
  holeDrop,
  poppetPressure,
} from './hand-formulas.ts';
import type { CheckSizes, StackSizes, ValveSizes } from './hand-types.ts';
import { close } from './page-blocks.ts';

/** A printed value by its symbol, in the column of the speed; not a number where a dash stands. */
export type At = (symbol: string) => number;

export interface PrintedStack {
  readonly kappa: number;
  /** What a coil spring takes from the lift; 0 without one. */
  readonly sunk: number;
}

/** To a share of a whole of which this is the difference. */
const within = (got: number, wanted: number, whole: number, share = 2e-3): void =>
  expect(Math.abs(got - wanted) / whole).toBeLessThan(share);

function walkBleed(at: At, { bleed, needle }: Pick<ValveSizes, 'bleed' | 'needle'>, fluid: Fluid): void {
  const hole = holeDrop(at('Q_b'), bleed, fluid);
  close(at('Δp bleed'), hole);
  if (needle) {
    close(at('s needle'), frustum(needle).s);
    close(at('A needle'), frustum(needle).A);
    close(at('Δp needle'), coneDrop(at('Q_b'), needle, fluid));
  }
  close(at('Δp'), hole + (needle ? at('Δp needle') : 0));
}

/** @returns what goes beside bleed and shims */
function walkBeside(at: At, { gap, poppet }: ValveSizes, speed: number, fluid: Fluid): number {
  if (gap) {
    close(at('Δp'), gapDrop(at('Q gap'), gap, fluid));
    close(at('Q drag'), dragged(gap, speed));
  }
  if (poppet) walkPoppet(at, poppet, fluid);
  return (gap ? at('Q gap') + at('Q drag') : 0) + (poppet ? at('Q poppet') : 0);
}

function walkPoppet(at: At, poppet: NonNullable<ValveSizes['poppet']>, fluid: Fluid): void {
  const [seat, half, , force] = poppet;
  if (at('Q poppet') === 0) {
    expect(at('Δp')).toBeLessThan(force / circle(seat));
    return;
  }
  const cone = [seat, half, at('x poppet')] as const;
  close(at('p poppet'), poppetPressure(at('x poppet'), poppet));
  close(at('p poppet'), at('Δp'));
  close(at('A poppet'), frustum(cone).A);
  close(at('Δp'), coneDrop(at('Q poppet'), cone, fluid));
}

export function walkValve(at: At, valve: ValveSizes, printed: PrintedStack, speed: number, fluid: Fluid): void {
  const { stack, ports, share = 1 } = valve;
  walkBleed(at, valve, fluid);
  const through = at('Q') - at('Q_b') - walkBeside(at, valve, speed, fluid);
  if (at('h') === 0) {
    within(through, 0, at('Q'), 1e-3);
    close(at('P'), share * at('Δp'));
    expect(at('P')).toBeLessThan((stack.seat + printed.sunk) / printed.kappa);
    return;
  }
  within(at('Q_s'), through, at('Q'), 1e-3);
  close(at('Δp ports'), holeDrop(at('Q_s'), ports, fluid));
  close(at('P'), share * (at('Δp') - at('Δp ports')));
  const risen = stack.float ? walkFloat(at, stack) : 0;
  const bent = printed.kappa * at('P');
  within(at('h'), bent - stack.seat - printed.sunk + risen, bent + risen);
  close(at('P') / share, curtainDrop(at('h'), at('Q_s'), stack.land, fluid, share), 4e-3);
  close(at('aQ_s + bQ_s²'), at('P') / share);
}

function walkFloat(at: At, { pressed, float }: StackSizes): number {
  const [travel, rate, force] = float as NonNullable<StackSizes['float']>;
  const onHub = at('P') * Math.PI * (pressed[1] ** 2 - pressed[0] ** 2);
  close(at('z'), Math.min(Math.max((onHub - force) / rate, 0), travel), 4e-3);
  return at('z');
}

export function walkCheck(at: At, check: CheckSizes, beside: Pick<ValveSizes, 'bleed' | 'needle'>, fluid: Fluid): void {
  const { ports, land, rate, force, travel } = check;
  walkBleed(at, beside, fluid);
  within(at('Q_c'), at('Q') - at('Q_b'), at('Q'), 1e-3);
  close(at('Δp ports'), holeDrop(at('Q_c'), ports, fluid));
  close(at('p'), at('Δp') - at('Δp ports'));
  const plate = (Math.PI * (land[1] ** 2 - land[0] ** 2)) / (2 * Math.log(land[1] / land[0]));
  close(at('x'), Math.min((at('p') * plate - force) / rate, travel), 4e-3);
  close(at('p'), curtainDrop(at('x'), at('Q_c'), land, fluid), 4e-3);
  close(at('aQ_c + bQ_c²'), at('p'));
}
