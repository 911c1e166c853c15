/**
 * Rates of the chambers of a damper over time (types.ts). State: what the oil content m of every chamber but the root is over
 * that at the charge of the gas, z = m - V/s0; of the root too, beside a floating piston with friction; then the openness y of every check
 * that lags. So the state goes with pressure, and between steps it is interpolated as well as that.
 *   V_i = V_i(0) - s_i x,   p_i = p(V_i / m_i),   m_root = M - sum m_i,   p_root from the gas
 *   Q_i = steady(p_i - p_parent) + checks - d_i v,   dz_i/dt = -q_i + sum of q of the chambers behind + s_i v/s0
 * A valve passes volume as it is in the chamber, so its content flow is q = Q / s(p_i); then a slow stroke gives back the static flow exactly.
 * Force: F = sum s_i (p_i - p_atm) + friction(v) + stop(x, v). What the whole root holds, M, never changes. Oil and gas of
 * the root share a pressure (gas-root.ts), unless a floating piston holds them apart (floating-piston.ts): then dz_root/dt = sum of q - (U - s_root v)/s0.
 * Source: balance of volume. Left out: inertia of oil and of the floating piston, walls that give, oil that drags on the piston.
 *
 * symbol   unit   meaning
 * m, M     m3     oil content of a chamber, of all: volume at atmospheric pressure
 * V, s     m3,m2  volume of a chamber, and what it loses per metre of stroke
 * s0       -      volume of the oil over its content under the charge
 * x, v     m,m/s  stroke from full extension, shaft speed
 * p        Pa     absolute pressure
 * Q, q     m3/s   flow from a chamber to its parent as volume, as content
 * U        m3/s   volume that the gas loses to the floating piston
 * d        m2     volume dragged into a chamber by the piston, per metre
 */
import { STANDARD_ATMOSPHERE_PA } from '../../units/si.ts';
import type { HermiteTable } from '../numeric/hermite-table.ts';
import { checksOf, type LinkCheck } from './check-lag.ts';
import { FloatingPiston } from './floating-piston.ts';
import { bothWays } from './flow-table.ts';
import { gasEnergy, gasPressure, gasVolume } from './gas-root.ts';
import { type OilState, oilState } from './oil-state.ts';
import type { CycleModel, Drive } from './types.ts';

/** Holds the damper at one moment; every array has one entry a chamber, the root first. */
export class CycleNetwork {
  readonly names: readonly string[];
  readonly pressure_Pa: Float64Array;
  /** Content flow towards the gas; 0 for the root. */
  readonly flow_m3_s: Float64Array;
  readonly void_m3: Float64Array;
  readonly content_m3: Float64Array;
  position_m = 0;
  speed_m_s = 0;
  gasPressure_Pa = 0;
  readonly stateLength: number;
  readonly oil: OilState;
  readonly #parents: Int32Array;
  readonly #swept: Float64Array;
  readonly #extended: Float64Array;
  readonly #dragged: Float64Array;
  readonly #steady: readonly HermiteTable[];
  readonly #checks: readonly LinkCheck[];
  readonly #separator: FloatingPiston | undefined;
  /** Where the openness of the checks begins in a state. */
  readonly #firstCheck: number;
  readonly #lags: boolean;
  readonly #chargedVolume: number;
  #total_m3 = 0;

  constructor(
    readonly model: CycleModel,
    readonly drive: Drive,
  ) {
    const all = [model.root, ...model.chambers];
    this.names = all.map(({ name }) => name);
    const arrays = () => new Float64Array(all.length);
    [this.pressure_Pa, this.flow_m3_s, this.void_m3, this.content_m3] = [arrays(), arrays(), arrays(), arrays()];
    this.#parents = Int32Array.from([0, ...model.chambers.map(({ parent }) => this.names.indexOf(parent))]);
    this.#swept = Float64Array.from(all, ({ sweptArea_m2 }) => sweptArea_m2);
    this.#extended = Float64Array.from(all, ({ extendedVolume_m3 }) => extendedVolume_m3);
    this.#dragged = Float64Array.from([0, ...model.chambers.map(({ link }) => link.draggedArea_m2 ?? 0)]);
    this.#steady = model.chambers.map(({ link }) => bothWays(link.outward.steady, link.inward.steady));
    this.#checks = model.chambers.flatMap(({ link }, i) => checksOf(link, i + 1));
    this.#lags = model.checkLag_s > 0;
    this.oil = oilState(model.oil, model.airReleasePressure_Pa);
    this.#chargedVolume = this.oil.volume(model.root.gas.absolutePressure_Pa);
    const { gas } = model.root;
    const into_m2 = this.#swept.reduce((sum, area) => sum + area, 0);
    this.#separator = gas.separatorFriction_Pa > 0 ? new FloatingPiston(gas, this.oil, into_m2) : undefined;
    this.#firstCheck = model.chambers.length + (this.#separator ? 1 : 0);
    this.stateLength = this.#firstCheck + (this.#lags ? this.#checks.length : 0);
  }

  /** State at rest under the pressure of the gas, as it is before the drive starts; it fixes M. */
  restingState(): Float64Array {
    const { gas } = this.model.root;
    const oilAtExtension = this.#extended.reduce((sum, volume) => sum + volume, 0) - gas.volume_m3;
    this.#total_m3 = oilAtExtension / this.#chargedVolume;
    const x = this.drive.position(this.drive.start_s);
    const p = this.#restingPressure(x);
    const state = new Float64Array(this.stateLength);
    for (let i = 1; i < this.names.length; i++) {
      const V = this.#volume(i, x);
      state[i - 1] = V / this.oil.volume(p) - V / this.#chargedVolume;
    }
    if (this.#separator) {
      const V = this.#volume(0, x) - gasVolume(gas, p);
      state[this.names.length - 1] = V / this.oil.volume(p) - V / this.#chargedVolume;
    }
    return state;
  }

  /** One pressure all through: the chambers as one around the gas. */
  #restingPressure(x: number): number {
    let V = 0;
    for (let i = 0; i < this.names.length; i++) V += this.#volume(i, x);
    return gasPressure(this.model.root.gas, this.oil, this.#total_m3, V);
  }

  /** Content that moves the pressure of each chamber by `pressure_Pa`, then as much of each openness: what a tolerance means. */
  tolerances(pressure_Pa: number, openness: number): Float64Array {
    const { gas } = this.model.root;
    const stiffness = 0 - this.oil.volumeSlope(gas.absolutePressure_Pa);
    const middle = this.model.travel_m / 2;
    const out = new Float64Array(this.stateLength).fill(openness);
    for (let i = 1; i < this.names.length; i++) out[i - 1] = pressure_Pa * stiffness * this.#volume(i, middle);
    const oil = this.#extended[0] - gas.volume_m3;
    if (this.#separator) out[this.names.length - 1] = pressure_Pa * stiffness * oil;
    return out;
  }

  /** Reads a state, and writes its rates. */
  rates(t: number, y: Float64Array, out: Float64Array): void {
    this.read(t, y);
    const chambers = this.names.length;
    const follows = this.speed_m_s / this.#chargedVolume;
    for (let i = 1; i < chambers; i++) out[i - 1] = this.#swept[i] * follows - this.flow_m3_s[i];
    for (let i = 1; i < chambers; i++) {
      const parent = this.#parents[i];
      if (parent > 0) out[parent - 1] += this.flow_m3_s[i];
    }
    if (this.#separator) {
      const U = this.#separator.flow_m3_s;
      out[chambers - 1] = this.#intoRoot() + this.#swept[0] * follows - U / this.#chargedVolume;
    }
    if (!this.#lags) return;
    for (let k = 0; k < this.#checks.length; k++) {
      const { chamber, sign, check } = this.#checks[k];
      const drop = sign * this.#drop(chamber);
      out[this.#firstCheck + k] = (check.target(drop) - y[this.#firstCheck + k]) / this.model.checkLag_s;
    }
  }

  /** Fills the public fields with the state at a time. */
  read(t: number, y: Float64Array): void {
    this.position_m = this.drive.position(t);
    this.speed_m_s = this.drive.speed(t);
    const chambers = this.names.length;
    let root = this.#total_m3;
    for (let i = 1; i < chambers; i++) {
      this.#readChamber(i, y[i - 1]);
      root -= this.content_m3[i];
    }
    this.content_m3[0] = root;
    if (this.#separator) this.#readParted(this.#separator, y[chambers - 1]);
    else this.#readTogether();
    for (let i = 1; i < chambers; i++) this.flow_m3_s[i] = this.#steadyFlow(i);
    for (let k = 0; k < this.#checks.length; k++) {
      const { chamber, sign, check } = this.#checks[k];
      const drop = sign * this.#drop(chamber);
      const openness = this.#lags ? y[this.#firstCheck + k] : check.target(drop);
      this.flow_m3_s[chamber] += sign * openness * check.open(drop);
    }
    for (let i = 1; i < chambers; i++) this.flow_m3_s[i] /= this.#contentVolume(i);
    this.#separator?.move(this.#intoRoot(), this.#swept[0] * this.speed_m_s);
  }

  /** Of the pressures on the shaft [N]. */
  get pressureForce_N(): number {
    let sum = 0;
    for (let i = 0; i < this.names.length; i++) sum += this.#swept[i] * (this.pressure_Pa[i] - STANDARD_ATMOSPHERE_PA);
    return sum;
  }

  /** Lost in the valves [W]: content flow times the fall of enthalpy. */
  get valvePower_W(): number {
    let sum = 0;
    for (let i = 1; i < this.names.length; i++) {
      const above = this.oil.enthalpy(this.pressure_Pa[this.#parents[i]]);
      sum += this.flow_m3_s[i] * (this.oil.enthalpy(this.pressure_Pa[i]) - above);
    }
    return sum;
  }

  /** Lost by the friction of the floating piston, never below 0 [W]. */
  get separatorPower_W(): number {
    return this.#separator?.loss_W ?? 0;
  }

  /** Of gas, oil, voids, seal of the floating piston and atmosphere, over any fixed number [J]. */
  get storedEnergy_J(): number {
    const { oil, content_m3: m, void_m3: voids, model } = this;
    let sum = gasEnergy(model.root.gas, this.gasPressure_Pa) + (this.#separator?.storedEnergy_J ?? 0);
    for (let i = 0; i < this.names.length; i++) sum += m[i] * oil.energy(this.pressure_Pa[i]) - oil.floor_Pa * voids[i];
    for (let i = 0; i < this.names.length; i++) sum -= STANDARD_ATMOSPHERE_PA * this.#swept[i] * this.position_m;
    return sum;
  }

  #volume(i: number, x: number): number {
    return this.#extended[i] - this.#swept[i] * x;
  }

  #readChamber(i: number, z: number): void {
    const V = this.#volume(i, this.position_m);
    const m = V / this.#chargedVolume + z;
    this.content_m3[i] = m;
    this.pressure_Pa[i] = m > 0 ? this.oil.pressure(V / m) : Number.NaN;
    this.void_m3[i] = Math.max(0, V - m * this.oil.floorVolume);
  }

  #readTogether(): void {
    this.gasPressure_Pa = gasPressure(
      this.model.root.gas,
      this.oil,
      this.content_m3[0],
      this.#volume(0, this.position_m),
    );
    this.pressure_Pa[0] = this.gasPressure_Pa;
  }

  #readParted(separator: FloatingPiston, z: number): void {
    const m = this.content_m3[0];
    const oilRoom = this.#chargedVolume * (m - z);
    separator.part(m, oilRoom, this.#volume(0, this.position_m) - oilRoom);
    this.gasPressure_Pa = separator.gasPressure_Pa;
    [this.pressure_Pa[0], this.void_m3[0]] = [separator.oilPressure_Pa, separator.void_m3];
  }

  /** Content flow into the root. */
  #intoRoot(): number {
    let sum = 0;
    for (let i = 1; i < this.names.length; i++) if (this.#parents[i] === 0) sum += this.flow_m3_s[i];
    return sum;
  }

  /** Volume over content of the oil that leaves or enters chamber i. */
  #contentVolume(i: number): number {
    return Math.min(this.#volume(i, this.position_m) / this.content_m3[i], this.oil.floorVolume);
  }

  #steadyFlow(i: number): number {
    return this.#steady[i - 1].at(this.#drop(i)) - this.#dragged[i] * this.speed_m_s;
  }

  #drop(i: number): number {
    return this.pressure_Pa[i] - this.pressure_Pa[this.#parents[i]];
  }
}
