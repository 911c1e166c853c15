/**
 * Two dampers by hand: a monotube in compression at three speeds, and a cartridge with a base valve once in each direction.
 *   monotube    F = dp A_a + F_gas + F_friction,                            A_a = A_p - A_r
 *   cartridge   F = F_gas +- (dp_base A_r + dp_piston A_a + F_friction)     the base passes A_r v, the piston A_a v
 *
 * symbol         unit  meaning
 * A_p, A_r, A_a  m2    bore, rod, ring between them
 * v              m/s   shaft speed, without sign
 */
import type { Project } from '../../../src/model/project.ts';
import { type Areas, areasOf, frictionAt, gasForce, handStack, handValve, oilByHand, portHoles } from './document.ts';
import { curtainDrop, fallingRoot, holeDrop, type Oil } from './flow.ts';
import { newSheet, type Sheet } from './sheet.ts';
import { type StackByHand, stackByHand } from './stack.ts';
import { valveByHand } from './valve.ts';

export interface MonotubeByHand {
  readonly oil: Sheet;
  readonly stack: StackByHand;
  readonly sizes: Sheet;
  /** Pressure at which the stack opens [Pa]. */
  readonly opensAt: number;
  readonly speeds: readonly { readonly speed: number; readonly sheet: Sheet }[];
}

export function monotubeByHand(project: Project, speeds: readonly number[]): MonotubeByHand {
  const { oil, sheet } = oilByHand(project);
  const stack = stackByHand(handStack(project, 'pistonCompression'));
  const valve = handValve(project, 'pistonCompression', stack.kappa);
  const sizes = newSheet();
  const areas = areasOf(project, sizes);
  const gas = gasForce(project, areas, sizes);
  const atSpeed = (speed: number) => {
    const steps = newSheet();
    const A_a = areas.A_p - areas.A_r;
    const dp = valveByHand(valve, A_a * speed, oil, steps);
    const damping = steps.put('F_damping', 'Δp (A_p − A_r)', dp * A_a, 'N');
    steps.put('F', 'F_damping + F_gas + F_friction', damping + gas + frictionAt(project, speed), 'N');
    return { speed, sheet: steps };
  };
  return { oil: sheet, stack, sizes, opensAt: valve.seat / stack.kappa, speeds: speeds.map(atSpeed) };
}

export interface CartridgeByHand {
  readonly sizes: Sheet;
  readonly midValve: StackByHand;
  readonly rebound: StackByHand;
  readonly base: StackByHand;
  readonly compression: { readonly piston: Sheet; readonly base: Sheet; readonly force: Sheet };
  readonly reboundStroke: { readonly piston: Sheet; readonly check: Sheet; readonly force: Sheet };
}

/** @param oil  as the program gives it: that a viscosity index means is no matter for a pocket calculator */
export function cartridgeByHand(project: Project, speed: number, oil: Oil): CartridgeByHand {
  const sizes = newSheet();
  sizes.put('ν', 'as `shimwright fluid` gives it', oil.nu, 'mm²/s');
  sizes.put('ρ', 'the same', oil.density, 'kg/m³');
  const areas = areasOf(project, sizes);
  const gas = gasForce(project, areas, sizes);
  const friction = sizes.put('F_friction', 'seal and film of oil at this speed', frictionAt(project, speed), 'N');
  const places = ['pistonCompression', 'pistonRebound', 'baseCompression'] as const;
  const [midValve, rebound, base] = places.map((place) => stackByHand(handStack(project, place)));
  const valves = [midValve, rebound, base].map(({ kappa }, i) => handValve(project, places[i], kappa));
  const [Q_a, Q_r] = [(areas.A_p - areas.A_r) * speed, areas.A_r * speed];
  const run = (valve: (typeof valves)[number], Q: number) => {
    const sheet = newSheet();
    return { sheet, dp: valveByHand(valve, Q, oil, sheet) };
  };
  const [pistonIn, pistonOut, baseIn] = [run(valves[0], Q_a), run(valves[1], Q_a), run(valves[2], Q_r)];
  const check = newSheet();
  const checkDrop = refillDrop(project, Q_r, oil, check);
  return {
    sizes,
    midValve,
    rebound,
    base,
    compression: {
      piston: pistonIn.sheet,
      base: baseIn.sheet,
      force: forces(areas, { base: baseIn.dp, piston: pistonIn.dp }, gas, friction),
    },
    reboundStroke: {
      piston: pistonOut.sheet,
      check,
      force: forces(areas, { base: checkDrop, piston: pistonOut.dp }, gas, -friction),
    },
  };
}

/** Friction carries the sign of the stroke. */
function forces({ A_p, A_r }: Areas, dp: Record<'base' | 'piston', number>, gas: number, friction: number): Sheet {
  const sheet = newSheet();
  const sign = Math.sign(friction);
  const atBase = sheet.put('Δp_base A_r', '', dp.base * A_r, 'N');
  const atPiston = sheet.put('Δp_piston (A_p − A_r)', '', dp.piston * (A_p - A_r), 'N');
  const damping = sheet.put('F_damping', 'their sum, against the stroke', sign * (atBase + atPiston), 'N');
  sheet.put('F', 'F_damping + F_gas + F_friction', damping + gas + friction, 'N');
  return sheet;
}

/** The plate lifts by x until what passes under it is the flow; the bleed beside it is left out. */
function refillDrop(project: Project, Q: number, oil: Oil, { put, ...rest }: Sheet): number {
  const check = project.damper.refillCheck;
  if (!check) throw new Error('no refill check');
  const [r1, r2] = [check.seat.innerDiameter_mm / 2000, check.seat.outerDiameter_mm / 2000];
  const area = (Math.PI * (r2 ** 2 - r1 ** 2)) / (2 * Math.log(r2 / r1));
  const pressureAt = (x: number) => (check.preload_N + check.rate_N_mm * 1000 * x) / area;
  const mismatch = (x: number) => curtainDrop({ r1, r2 }, x, Q, oil).drop - pressureAt(x);
  put('Q', 'flow through the check', Q, 'mL/s');
  put('A_plate', 'π (r₂² − r₁²)/(2 ln r₂/r₁)', area, 'mm²');
  const x = put(
    'x',
    'lift of the plate; tried until the next two lines agree',
    fallingRoot(mismatch, 1e-6, check.travel_mm / 1000),
    'mm',
  );
  const p = put('p', '(preload + rate · x)/A_plate', pressureAt(x), 'kPa');
  put('aQ + bQ²', 'curtain of height x, as above', curtainDrop({ r1, r2 }, x, Q, oil).drop, 'kPa');
  const ports = holeDrop('ports', portHoles(check.ports), Q, oil, { put, ...rest });
  return put('Δp', 'p + Δp ports', p + ports, 'kPa');
}
