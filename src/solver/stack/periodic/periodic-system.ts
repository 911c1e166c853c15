/**
 * A stack of periodic plates turned into what the equations need: its layout, the plates, their contact at every node
 * and every place round the period, and storage.
 */
import { createContactProblem } from '../../contact/complementarity.ts';
import { createCompliance } from '../../contact/compliance.ts';
import { type ContactPairs, RIGID } from '../../contact/contact-pairs.ts';
import { type CircleBasis, createCircleBasis } from '../../plate/periodic/circle-basis.ts';
import { addPeriodicPressure, loadShares, type PortLoad } from '../../plate/periodic/periodic-load.ts';
import { createPeriodicPlate, type PeriodicPlate } from '../../plate/periodic/periodic-plate.ts';
import type { StackInput } from '../../types.ts';
import type { BalancedSystem } from '../balanced-system.ts';
import { type LaidStack, type LayOptions, layStack, loadedPlate } from '../laid-stack.ts';
import { periodicBody } from './periodic-body.ts';
import type { WavePattern } from './wave-pattern.ts';

export interface PeriodicSystem extends BalancedSystem, LaidStack {
  readonly basis: CircleBasis;
  readonly load: PortLoad;
  readonly plates: readonly PeriodicPlate[];
}

/** Of elements a thousandth of the span long, whose lifts rounding leaves some parts in 10⁷ of play. */
const NOISE = { correction: 1e-6, residual: 1e-3 };

export interface PeriodicOptions extends LayOptions, WavePattern {}

/**
 * @param stack already validated (see validate-stack.ts)
 * @throws InputError `stack.no-room` when seat and backing plate leave less than the thickness of the shims
 */
export function createPeriodicSystem(stack: StackInput, options: PeriodicOptions): PeriodicSystem {
  const layout = layStack(stack, options);
  const { tables, laid } = layout;
  const basis = createCircleBasis(options.waves, options.harmonics);
  const plates = laid.map((plate) => createPeriodicPlate(tables, basis, plate));
  loadFirstPlates(plates, layout, loadShares(basis, options.load));
  const bodies = plates.map((plate, k) => periodicBody(plate, laid[k].clamped));
  const compliances = bodies.map(createCompliance);
  const pairs = pairsRound(layout.pairs, basis.lifts);
  return {
    ...layout,
    basis,
    load: options.load,
    plates,
    pairs,
    riseShare: repeated(layout.riseShare, basis.lifts),
    bodies,
    noise: NOISE,
    isLinear: false,
    compliances,
    contact: createContactProblem(pairs, compliances),
    steps: plates.map((p) => new Float64Array(p.size)),
    hubRise_m: 0,
    factored: false,
  };
}

/** Every pair of the radial mesh at each of `lifts` places round the period. */
function pairsRound(pairs: ContactPairs, lifts: number): ContactPairs {
  const places = (nodes: Int32Array) => nodes.map((node, i) => (node === RIGID ? RIGID : node * lifts + (i % lifts)));
  return {
    size: pairs.size * lifts,
    node: repeated(pairs.node, lifts),
    below: repeated(pairs.below, lifts),
    belowNode: places(repeated(pairs.belowNode, lifts)),
    above: repeated(pairs.above, lifts),
    aboveNode: places(repeated(pairs.aboveNode, lifts)),
    gap0_m: repeated(pairs.gap0_m, lifts),
  };
}

function repeated<A extends Int8Array | Int32Array | Float64Array>(values: A, times: number): A {
  const out = new (values.constructor as new (length: number) => A)(values.length * times);
  for (let i = 0; i < out.length; i++) out[i] = values[Math.floor(i / times)];
  return out;
}

/** The pressure acts on the first plate, from the piston on, that covers an element. */
function loadFirstPlates(plates: readonly PeriodicPlate[], { tables, ring }: LaidStack, shares: Float64Array): void {
  const even = { ...ring, covered: 1 };
  for (let e = 0; e < tables.elements; e++) {
    const plate = loadedPlate(plates, e);
    if (plate) addPeriodicPressure(plate, tables, even, e, shares);
  }
}
