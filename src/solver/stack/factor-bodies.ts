/** Factors of the tangents of a stack's plates: exact ones, which may be indefinite, or stiffened ones, which are not. */
import { forgetColumns } from '../contact/compliance.ts';
import { type BandedFactor, factorBandedLdl } from '../linalg/banded-ldl.ts';
import type { BalancedSystem, Body } from './balanced-system.ts';

/** @returns the negative modes of all exact tangents at the last `assembleInternal`, or undefined where one has no factor */
export function factorExact(system: BalancedSystem): number | undefined {
  let negative = 0;
  for (const [k, body] of system.bodies.entries()) {
    const factor = refactor(body, 1);
    if (factor.status === 'singular') return undefined;
    negative += factor.negativePivots;
    forgetColumns(system.compliances[k]);
  }
  system.factored = true;
  return negative;
}

/** The tangent, exact where that is positive definite, else with as much of the push kept as leaves it so. @returns false without a factor */
export function factorBody(body: Body): boolean {
  if (isDefinite(body, 1)) return true;
  let [kept, broken] = [0, 1];
  let isReady = false;
  for (let halving = 0; halving < body.pushHalvings; halving++) {
    const push = (kept + broken) / 2;
    isReady = isDefinite(body, push);
    if (isReady) kept = push;
    else broken = push;
  }
  return isReady || refactor(body, kept).status === 'factored';
}

function isDefinite(body: Body, push: number): boolean {
  const { status, negativePivots } = refactor(body, push);
  return status === 'factored' && negativePivots === 0;
}

function refactor({ size, b, d, band, assembleBand }: Body, push: number): BandedFactor {
  assembleBand(push);
  return factorBandedLdl(band, size, b, d);
}
