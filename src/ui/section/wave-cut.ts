/** A waved stack cut along one radius, as a state of its own: what every layer of a half section draws. */
import type { ValveBody, Valving } from '../../model/project.ts';
import { metresFromMillimetres } from '../../units/si.ts';
import { shimOutlines } from './geometry.ts';
import type { StackState } from './shape-at.ts';
import { seatClearance } from './touching.ts';
import { liftAt } from './wave-shape.ts';

export interface Cut {
  /** Phase, see `wave-shape.ts` [rad]. */
  readonly phi: number;
  /** The stress along the shims is known at the crest alone. */
  readonly stressed: boolean;
}

/** Lifts and opening are those of the cut; forces and the greatest stresses stay those of the whole stack. */
export function cutState(state: StackState, valving: Valving, body: ValveBody, { phi, stressed }: Cut): StackState {
  const { stresses, shape, ...rest } = state;
  const lift_m = shape.lift_m.map((_, s) => liftAt(shape, s, phi));
  const { radius_m, firstNode } = shape;
  const cut = { ...rest, shape: { radius_m, firstNode, lift_m, waves: 0 } };
  const clear_mm = seatClearance(shimOutlines(valving, cut), valving, body);
  return {
    ...cut,
    shimEdgeLift_m: lift_m.map((lift) => lift[lift.length - 1]),
    seatOpening_m: clear_mm === undefined ? state.seatOpening_m : metresFromMillimetres(clear_mm),
    ...(stressed && stresses && { stresses }),
  };
}
