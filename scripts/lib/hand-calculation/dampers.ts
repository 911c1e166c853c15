/**
 * A damper by hand, at its speeds in both directions.
 *   no base valve   F = F_gas +- (dp_piston A_a + F_friction)                  A_a = A_p - A_r
 *   base valve      F = F_gas +- (dp_base A_r + dp_piston A_a + F_friction)    the base passes A_r v, the piston A_a v
 *
 * symbol         unit  meaning
 * A_p, A_r, A_a  m2    bore, rod, ring between them
 * v              m/s   shaft speed, without sign
 */
import type { Project, ValvePlace } from '../../../src/model/project.ts';
import { checkByHand } from './check.ts';
import { handCheck, handStack, handValve } from './document.ts';
import type { Oil } from './flow.ts';
import { oilByHand } from './oil.ts';
import { newSheet, type Sheet } from './sheet.ts';
import { type Areas, ATMOSPHERE_PA, areasOf, frictionAt, type Gas, gasByHand } from './sizes.ts';
import { type StackByHand, stackByHand } from './stack.ts';
import { type HandValve, opensAt, type Passed, valveByHand } from './valve.ts';

export type Direction = 'compression' | 'rebound';

export interface StrokeByHand {
  readonly direction: Direction;
  readonly speed: number;
  readonly piston: Sheet;
  /** Base valve in compression, refill check in rebound. */
  readonly base?: Sheet;
  readonly force: Sheet;
}

export interface ValveByHand {
  readonly place: ValvePlace;
  readonly stack: StackByHand;
  readonly valve: HandValve;
}

export interface DamperByHand {
  readonly oil: Sheet;
  readonly sizes: Sheet;
  readonly valves: readonly ValveByHand[];
  /** Compression, then rebound; rising speeds. */
  readonly strokes: readonly StrokeByHand[];
}

const PLACES = ['pistonCompression', 'baseCompression', 'pistonRebound'] as const;

/** @param nu100  of an oil known by its viscosity index, at 100 degrees [mm2/s] */
export function damperByHand(project: Project, speeds: readonly number[], nu100: number): DamperByHand {
  const { oil, sheet } = oilByHand(project, nu100);
  const sizes = newSheet();
  const areas = areasOf(project, sizes);
  const gas = gasByHand(project, areas, sizes);
  const valves = PLACES.filter((place) => project.damper.valves[place]).map((place) => {
    const stack = stackByHand(handStack(project, place));
    const valve = handValve(project, place, stack.kappa, stack.pressed);
    stack.sheet.put('P opens', stack.pressed ? '(h_s + h₀)/κ' : 'h_s/κ', opensAt(valve), 'MPa');
    return { place, stack, valve };
  });
  const damper: Damper = { project, oil, areas, gas, valves };
  const strokes = (['compression', 'rebound'] as const).flatMap((direction) =>
    speeds.map((speed) => strokeByHand(damper, direction, speed)),
  );
  return { oil: sheet, sizes, valves, strokes };
}

interface Damper {
  readonly project: Project;
  readonly oil: Oil;
  readonly areas: Areas;
  readonly gas: Gas;
  readonly valves: readonly ValveByHand[];
}

function strokeByHand(damper: Damper, direction: Direction, speed: number): StrokeByHand {
  const { project, oil, areas } = damper;
  const inwards = direction === 'compression';
  const through = (place: ValvePlace, area: number): Passed | undefined => {
    const found = damper.valves.find((one) => one.place === place);
    return found && valveByHand(found.valve, area * speed, speed, oil);
  };
  const piston = through(inwards ? 'pistonCompression' : 'pistonRebound', areas.A_p - areas.A_r);
  if (!piston) throw new Error('no valve in the piston');
  const refill = () =>
    project.damper.refillCheck ? checkByHand(handCheck(project), areas.A_r * speed, oil) : undefined;
  const base = inwards ? through('baseCompression', areas.A_r) : refill();
  const friction = frictionAt(project, speed);
  const force = forceSteps(damper, direction, friction, { piston: piston.dp, base: base?.dp });
  return { direction, speed, piston: piston.sheet, ...(base && { base: base.sheet }), force };
}

interface Drops {
  readonly piston: number;
  readonly base?: number;
}

/** @throws Error where a chamber would fall below the atmosphere, where oil gives off air */
function forceSteps({ areas, gas }: Damper, direction: Direction, friction: number, { piston, base }: Drops): Sheet {
  const sheet = newSheet();
  const { put } = sheet;
  const [sign, plus, minus] = direction === 'compression' ? [1, '+', '−'] : [-1, '−', '+'];
  const p_c = put(
    'p_c',
    base === undefined ? 'p_gas' : `p_gas ${plus} Δp_base`,
    gas.pressure + sign * (base ?? 0),
    'MPa',
  );
  const p_r = put('p_r', `p_c ${minus} Δp_piston`, p_c - sign * piston, 'MPa');
  if (Math.min(p_c, p_r) < ATMOSPHERE_PA) throw new Error('the oil pulls apart; that is not worked out here');
  const atBase = base === undefined ? 0 : put('Δp_base A_r', '', base * areas.A_r, 'N');
  const atPiston = put('Δp_piston (A_p − A_r)', '', piston * (areas.A_p - areas.A_r), 'N');
  const sum = base === undefined ? 'that, against the stroke' : 'their sum, against the stroke';
  const damping = put('F_damping', sum, sign * (atBase + atPiston), 'N');
  const rub = put('F_friction', 'seal and film of oil, against the stroke', sign * friction, 'N');
  put('F', 'F_damping + F_gas + F_friction', damping + gas.force + rub, 'N');
  return sheet;
}
