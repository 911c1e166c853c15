/**
 * Friction of a floating piston between oil and gas. It turns with the floating piston and not with the shaft: of what its chamber
 * gains, N, the oil takes up a part by its compression and leaves the rest, U, to the floating piston. It holds back p_s = p - p_g, and
 * its seal bends by a little way before it slides, worth a volume B (Dahl's law):
 *   dp_s/dt = k U,   k = (p_f / B)(1 - sign(U) p_s / p_f)
 * With N = U + c dp/dt, dp/dt = dp_s/dt + (n p_g/V_g) U it follows that
 *   U = N / (1 + c (n p_g/V_g + k)),   which has the sign of N.
 * So it sticks where it turns, until p has moved by 2 p_f, and holds p_f once it has slid by some B. Of the work p_s U the seal keeps
 * what bends it, p_s^2 B/(2 p_f); the rest, p_s U sign(U) p_s/p_f, is lost and never below 0. Oil that would be pulled below air release
 * stays there beside a void: it yields for ever, and the floating piston stands still.
 * Source: balance of volume; P. R. Dahl, A solid friction model, 1968 (from memory). Left out: mass of the floating piston, breakaway
 * above sliding, viscous friction.
 *
 * symbol    unit    meaning
 * p         Pa      absolute pressure of the oil beside the floating piston
 * p_g, V_g  Pa, m3  gas; n its exponent
 * p_s, p_f  Pa      what the floating piston holds back, and the most it can
 * N         m3/s    oil that flows in, and room that its chamber loses
 * U         m3/s    volume that the gas loses: speed of the floating piston times its face
 * c         m3/Pa   how much the oil beside it yields to pressure
 * B         m3      what the seal bends before it slides
 */
import { gasPressureIn } from './gas-root.ts';
import type { OilState } from './oil-state.ts';
import type { CycleGas } from './types.ts';

/**
 * B as the stroke of the shaft that moves the floating piston as far [m]. No document says it; it is small beside any stroke, and half
 * or twice as much of it changes the loss of a stroke of 30 mm by less than a percent.
 */
const SEAL_BENDS_M = 2e-5;

/** Holds the chamber next to the gas at one moment. */
export class FloatingPiston {
  /** p. */
  oilPressure_Pa = 0;
  gasPressure_Pa = 0;
  void_m3 = 0;
  /** U. */
  flow_m3_s = 0;
  /** Never below 0. */
  loss_W = 0;
  /** Of the oil beside it over its content [-]. */
  #volume = 0;
  /** c, infinite beside a void. */
  #yields_m3_Pa = 0;
  /** dp_g/dV_g without its sign [Pa/m3]. */
  #gasStiffness = 0;
  readonly #bends_m3: number;

  /**
   * @param gas  with a friction above 0
   * @param area_m2  what sinks into the gas per metre of stroke
   */
  constructor(
    readonly gas: CycleGas,
    readonly oil: OilState,
    area_m2: number,
  ) {
    this.#bends_m3 = SEAL_BENDS_M * area_m2;
  }

  /** Fills pressures and void; both pressures are NaN where there are none. */
  part(content_m3: number, oilRoom_m3: number, gasVolume_m3: number): void {
    const { gas, oil } = this;
    const s = oilRoom_m3 / content_m3;
    const p = content_m3 > 0 ? oil.pressure(s) : Number.NaN;
    const p_g = gasVolume_m3 > 0 ? gasPressureIn(gas, gasVolume_m3) : Number.NaN;
    [this.oilPressure_Pa, this.gasPressure_Pa] = [p, p_g];
    this.void_m3 = Math.max(0, oilRoom_m3 - content_m3 * oil.floorVolume);
    this.#volume = Math.min(s, oil.floorVolume);
    this.#gasStiffness = (gas.polytropicExponent * p_g) / gasVolume_m3;
    if (this.void_m3 > 0) this.#yields_m3_Pa = Number.POSITIVE_INFINITY;
    else this.#yields_m3_Pa = p > 0 ? 0 - content_m3 * oil.volumeSlope(p) : Number.NaN;
  }

  /**
   * Fills flow and loss, once the pressures are there.
   * @param inflow_m3_s  content
   * @param lostRoom_m3_s  of the chamber
   */
  move(inflow_m3_s: number, lostRoom_m3_s: number): void {
    const N = inflow_m3_s * this.#volume + lostRoom_m3_s;
    const p_f = this.gas.separatorFriction_Pa;
    const p_s = this.oilPressure_Pa - this.gasPressure_Pa;
    // A step may carry p_s past p_f by what its error allows: there it slides on.
    const spent = Math.min(1, (Math.sign(N) * p_s) / p_f);
    const k = (p_f / this.#bends_m3) * (1 - spent);
    this.flow_m3_s = N / (1 + this.#yields_m3_Pa * (this.#gasStiffness + k));
    this.loss_W = p_s * this.flow_m3_s * spent;
  }

  /** In the bent seal [J]. */
  get storedEnergy_J(): number {
    const p_s = this.oilPressure_Pa - this.gasPressure_Pa;
    return (p_s ** 2 * this.#bends_m3) / (2 * this.gas.separatorFriction_Pa);
  }
}
