/** What goes into the mechanics of a chassis and comes out of it, in SI. Wheel travel is 0 at full extension. */

/** A spring at the shaft: what it pushes with once the shaft has moved `s` from full extension, and how steeply that rises. */
export type SpringLaw = (shaftTravel_m: number) => { readonly force_N: number; readonly rate_N_m: number };

/** The linkage at a wheel travel. */
export interface LinkState {
  readonly shaftTravel_m: number;
  /** ds/dx, shaft travel per wheel travel. */
  readonly ratio: number;
  /** d2s/dx2 [1/m]. */
  readonly ratioSlope_1_m: number;
}

export type Linkage = (wheelTravel_m: number) => LinkState;

export interface ChassisInput {
  readonly vehicleSprungMass_kg: number;
  readonly riderSprungMass_kg: number;
  readonly unsprungMass_kg?: number;
  readonly wheelTravel_m: number;
  readonly linkage: Linkage;
  /** All springs of this end, each once. */
  readonly springs: readonly SpringLaw[];
  readonly damperCount: number;
  /** Of the direction in which the wheel travels, from the upright [rad]. */
  readonly legAngle_rad: number;
}

/** Everything about one wheel travel, undamped. */
export interface WheelState {
  readonly wheelTravel_m: number;
  readonly link: LinkState;
  /** Along the wheel travel [N]. */
  readonly springForce_N: number;
  /** Upright load that stands in balance with it [N]. */
  readonly uprightForce_N: number;
  /** Along the wheel travel: what comes of the springs and what of the changing ratio [N/m]. */
  readonly rateOfSprings_N_m: number;
  readonly rateOfLinkage_N_m: number;
  /** Of the wheel, upright [N/m]. */
  readonly wheelRate_N_m: number;
}

export type Sag =
  | { readonly status: 'balanced'; readonly state: WheelState }
  /** The springs hold more than the load at full extension, or less than it at full compression. */
  | { readonly status: 'topped-out' | 'bottomed-out'; readonly state: WheelState }
  | { readonly status: 'not-converged'; readonly reason: string };

export type Vibration =
  | {
      readonly status: 'swings';
      /** Of the sprung mass on its springs, the tyre taken as rigid [Hz]. */
      readonly naturalFrequency_Hz: number;
      /** Upright at the wheel [N s/m]. */
      readonly criticalDamping_N_s_m: number;
      /** Of one damper at its shaft that is critical [N s/m]. */
      readonly criticalShaftDamping_N_s_m: number;
    }
  /** A wheel rate of 0 or less, or no mass: there is no frequency. */
  | { readonly status: 'no-swing' };
