/**
 * A damper as it may come out of the workshop: everything that scatters, each off by so many standard deviations.
 *
 * symbol  unit           meaning
 * z       -              standard deviations off
 * d       of the entry   how far off that is
 */
import { stackPlaces, valveAt } from '../damper/damper-valves.ts';
import type {
  BleedInput,
  DamperInput,
  FluidState,
  GasInput,
  PortsInput,
  StackPlace,
  ValveInput,
} from '../damper/types.ts';
import { withStack } from '../damper/with-stack.ts';
import type { ShimInput } from '../types.ts';
import { DEVIATIONS, type ToleranceName, type Tolerances } from './scatter-table.ts';

/** What the document knows of oil and gas beyond their state in the damper. */
export interface ScatteringDamper {
  readonly damper: DamperInput;
  /** So much warmer than it is [K]. */
  readonly oilWarmer: (by_K: number) => FluidState;
  /** Charged to so much more than it is [Pa]. */
  readonly gasHigher: (by_Pa: number) => GasInput;
}

export interface Factor {
  readonly name: ToleranceName;
  readonly apply: (damper: DamperInput, d: number) => DamperInput;
}

/**
 * In a fixed order, the many shims last (sample-study.ts); every place of the damper that has the part. Oil warms before its
 * viscosity scatters.
 */
export function factorsOf({ damper, oilWarmer, gasHigher }: ScatteringDamper): Factor[] {
  const places = stackPlaces(damper);
  return [
    ...places.flatMap(mountingFactors),
    ...bleedFactors(damper),
    { name: 'temperature', apply: (of, d) => ({ ...of, fluid: oilWarmer(d) }) },
    { name: 'viscosity', apply: (of, d) => ({ ...of, fluid: thicker(of.fluid, d) }) },
    { name: 'gas', apply: (of, d) => ({ ...of, gas: gasHigher(d) }) },
    ...places.flatMap((place) => shimFactors(damper, place)),
  ];
}

/** @param z  one a factor */
export const scattered = (
  damper: DamperInput,
  factors: readonly Factor[],
  tolerances: Tolerances,
  z: readonly number[],
) => factors.reduce((of, { name, apply }, i) => apply(of, (tolerances[name] / DEVIATIONS) * z[i]), damper);

function shimFactors(damper: DamperInput, place: StackPlace): Factor[] {
  const { shims } = valveAt(damper, place).stack;
  const thicknesses = shims.map(
    (_, s): Factor => ({
      name: 'thickness',
      apply: eachShim(place, (shim, at, d) => (at === s ? { ...shim, thickness_m: shim.thickness_m + d } : shim)),
    }),
  );
  const diameters = sizesOf(shims).map(
    (members): Factor => ({
      name: 'diameter',
      apply: eachShim(place, (shim, at, d) =>
        members.has(at) ? { ...shim, outerRadius_m: shim.outerRadius_m + d / 2 } : shim,
      ),
    }),
  );
  return [...thicknesses, ...diameters];
}

function mountingFactors(place: StackPlace): Factor[] {
  return [
    {
      name: 'clamp',
      apply: (of, d) => {
        const { stack } = valveAt(of, place);
        return withStack(of, place, { ...stack, clampRadius_m: stack.clampRadius_m + d / 2 });
      },
    },
    {
      name: 'seat',
      apply: (of, d) => {
        const { stack } = valveAt(of, place);
        return withStack(of, place, { ...stack, seat: { ...stack.seat, height_m: stack.seat.height_m + d } });
      },
    },
    {
      name: 'portEdge',
      apply: (of, d) => {
        const { stack } = valveAt(of, place);
        return withStack(of, place, withPortEdge(stack, d));
      },
    },
    { name: 'ports', apply: (of, d) => withPorts(of, place, (ports) => drilledWider(ports, d)) },
  ];
}

/** Where the zone ends and the land begins, turned as one edge. */
function withPortEdge(stack: ValveInput['stack'], d: number): ValveInput['stack'] {
  const { pressureZone, seat } = stack;
  return {
    ...stack,
    pressureZone: { ...pressureZone, outerRadius_m: pressureZone.outerRadius_m + d / 2 },
    seat: { ...seat, innerRadius_m: seat.innerRadius_m + d / 2 },
  };
}

const eachShim =
  (place: StackPlace, change: (shim: ShimInput, at: number, d: number) => ShimInput): Factor['apply'] =>
  (damper, d) => {
    const { stack } = valveAt(damper, place);
    return withStack(damper, place, { ...stack, shims: stack.shims.map((shim, at) => change(shim, at, d)) });
  };

/** Places of the shims of each size of a stack. */
function sizesOf(shims: readonly ShimInput[]): ReadonlySet<number>[] {
  const sizes = new Map<string, Set<number>>();
  shims.forEach(({ outerRadius_m, innerRadius_m, thickness_m }, s) => {
    const key = `${outerRadius_m} ${innerRadius_m} ${thickness_m}`;
    sizes.set(key, (sizes.get(key) ?? new Set()).add(s));
  });
  return [...sizes.values()];
}

function withPorts(damper: DamperInput, place: StackPlace, change: (ports: PortsInput) => PortsInput): DamperInput {
  const valve = valveAt(damper, place);
  const changed = { ...valve, ports: change(valve.ports) };
  if (place !== 'base') return { ...damper, [place]: changed };
  return { ...damper, ...(damper.base && { base: { ...damper.base, compression: changed } }) };
}

function drilledWider(ports: PortsInput, d: number): PortsInput {
  const wider = (ports.hydraulicDiameter_m + d) / ports.hydraulicDiameter_m;
  return { ...ports, hydraulicDiameter_m: ports.hydraulicDiameter_m * wider, area_m2: ports.area_m2 * wider ** 2 };
}

/** None where no hole is open. */
function bleedFactors({ bleed, base }: DamperInput): Factor[] {
  const wider = (of: BleedInput, d: number): BleedInput => ({ ...of, diameter_m: of.diameter_m + d });
  const piston: Factor = { name: 'bleed', apply: (of, d) => ({ ...of, bleed: wider(of.bleed, d) }) };
  const ofBase: Factor = {
    name: 'bleed',
    apply: (of, d) => (of.base?.bleed ? { ...of, base: { ...of.base, bleed: wider(of.base.bleed, d) } } : of),
  };
  return [...(bleed.count > 0 ? [piston] : []), ...(base?.bleed && base.bleed.count > 0 ? [ofBase] : [])];
}

const thicker = (fluid: FluidState, share: number): FluidState => ({
  ...fluid,
  dynamicViscosity_Pa_s: fluid.dynamicViscosity_Pa_s * (1 + share),
});
