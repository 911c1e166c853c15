/**
 * Plain SI records that go into and come out of the solver. Nothing here knows the project document.
 *
 * z points from the piston face into the stack; lifts are mid-surface displacements from the hub plane along z.
 * Pressures are absolute where the name says so, otherwise differences. Shims are listed piston side first.
 */

/** Theories in which every shim stays round. */
export type AxisymmetricTheory = 'small-deflection' | 'large-deflection';

/** Which plate theory gave a number. */
export type Theory = AxisymmetricTheory | 'port-periodic';

/** What may be asked for: a theory, or the choice between large deflection and port-periodic, stack by stack. */
export type TheoryChoice = Theory | 'auto';

/**
 * Why the round theory does not serve over the range that is used.
 * - `ports`: they are too few to press as if they were all round.
 * - `waves`: the rim ruffles, or whether it does could not be told.
 * - `not-solved`: the round state itself was not found.
 */
export type LeavesRound = 'ports' | 'waves' | 'not-solved';

/** Why the round theory stands in where `auto` would have followed the waves. */
export interface Fallback {
  readonly status: FailureStatus | 'beyond-table';
  readonly reason: string;
}

/**
 * How a numerical solve ended. Only `converged` carries numbers.
 * - `not-converged`: the iteration ran out of steps; `reason` names the residual and the tolerance.
 * - `contact-not-resolved`: no consistent set of contacts was found.
 * - `singular`: a stiffness matrix could not be factored.
 */
export type FailureStatus = 'not-converged' | 'contact-not-resolved' | 'singular';
export type SolveStatus = 'converged' | FailureStatus;

/** One single shim (counts already expanded). */
export interface ShimInput {
  readonly outerRadius_m: number;
  readonly thickness_m: number;
  readonly youngsModulus_Pa: number;
  readonly poissonsRatio: number;
  /** Bore; a shim whose bore is larger than the clamp is held by its neighbours alone (a preload ring). */
  readonly innerRadius_m?: number;
  /** Height of the rim over the shim's own hub plane when unloaded; > 0 is coned away from the piston. */
  readonly dish_m?: number;
  /** Limits of its metal as far as they are known; see life/strength.ts for what is assumed otherwise. */
  readonly strength?: Partial<Strength>;
}

/** What a metal bears [Pa]. */
export interface Strength {
  readonly yield_Pa: number;
  readonly tensile_Pa: number;
  /** Amplitude of reversed bending that the surface bears for ever. */
  readonly endurance_Pa: number;
}

/** Share of its limits that a shim uses, the reciprocal of its reserve: 0 unloaded, 1 at the limit. */
export interface ShimUse {
  /** Of endless life, swinging between closed and open. */
  readonly fatigue: number;
  /** Of yield; above 1 the shim takes a set. */
  readonly yield: number;
}

/** A coil spring that presses on the last shim along a circle. */
export interface CoilSpringInput {
  readonly radius_m: number;
  readonly rate_N_m: number;
  /** Force at rest, towards the piston [N]. */
  readonly preload_N: number;
}

/** The hub may rise bodily against a check spring, from its stop on the piston up to `travel_m`. */
export interface FloatInput {
  readonly travel_m: number;
  readonly rate_N_m: number;
  /** Force of the check spring with the hub on its stop [N]. */
  readonly preload_N: number;
}

/** A stack on its clamp. */
export interface StackInput {
  readonly clampRadius_m: number;
  readonly shims: readonly ShimInput[];
  /** Ring of the face shim on which the full pressure acts. */
  readonly pressureZone: { readonly innerRadius_m: number; readonly outerRadius_m: number };
  /** Land on which the face shim rests; `height_m` above the hub plane (> 0 preloads the face shim). */
  readonly seat?: { readonly innerRadius_m: number; readonly outerRadius_m: number; readonly height_m: number };
  /** Rigid plate, `gap_m` above the top of the unloaded stack; it covers all radii up to its own, or all without one. */
  readonly backingPlate?: { readonly gap_m: number; readonly outerRadius_m?: number };
  readonly coilSpring?: CoilSpringInput;
  readonly float?: FloatInput;
  readonly ports?: PortsUnderShims;
}

/** Equal ports evenly spaced round the pressure zone: the pressure acts on what they open to the face shim alone. */
export interface PortsUnderShims {
  readonly count: number;
  /** Share of the zone's circumference that the ports open to the shims, above 0 and at most 1 [-]. */
  readonly coveredFraction: number;
}

/** Deflected shape of every single shim on one radial mesh. */
export interface StackShape {
  /** Strictly rising node radii, length n [m]. */
  readonly radius_m: Float64Array;
  /**
   * Per single shim: mid-surface lift at its own nodes, from its bore (node `firstNode[s]`) to its rim; the mean round
   * the circle where it waves [m].
   */
  readonly lift_m: readonly Float64Array[];
  /** Per single shim: index in `radius_m` of its innermost node, 0 for every shim on the clamp. */
  readonly firstNode: readonly number[];
  /**
   * Of waved shims, per single shim, harmonic by harmonic from the first: h_k(r) at its own nodes, with
   * w(r, θ) = lift + Σ h_k cos(k · waves · θ) and a port, where there are ports, at θ = 0 [m].
   */
  readonly harmonics_m?: readonly (readonly Float64Array[])[];
}

/** How the face shim of a periodic stack waves. */
export interface Wave {
  /** Waves round the circle; 0 where the state is round. */
  readonly waves: number;
  /** Lift of its rim, least and greatest round the circle [m]. */
  readonly minEdgeLift_m: number;
  readonly maxEdgeLift_m: number;
}

/** How far an axisymmetric state is from ruffling into waves round the circle. */
export interface Waviness {
  /** Least stiffness against waves over that at rest: 1 at rest, 0 at the onset, below 0 where the state is unstable. */
  readonly margin: number;
  /** Number of waves that has it. */
  readonly waves: number;
}

/** Stress on one face, one number a node; tension is positive. */
export interface FaceStress {
  readonly radial_Pa: Float64Array;
  readonly hoop_Pa: Float64Array;
}

export type StressFace = 'piston' | 'far';
export type StressDirection = 'radial' | 'hoop';

/** The greatest stress of a shim and where it is. */
export interface PeakStress {
  /** Tension is positive. */
  readonly stress_Pa: number;
  readonly radius_m: number;
  readonly face: StressFace;
  readonly direction: StressDirection;
}

/** Surface stress along one single shim, from its bore to its rim. */
export interface ShimStress {
  readonly radius_m: Float64Array;
  /** The face towards the piston, and the one away from it. */
  readonly piston: FaceStress;
  readonly far: FaceStress;
  readonly peak: PeakStress;
}

export interface ConvergedLift {
  readonly status: 'converged';
  readonly pressure_Pa: number;
  readonly iterations: number;
  /** Largest out-of-balance generalised force over the largest applied or contact one [-]. */
  readonly residual: number;
  /** Lifts and opening are means round the circle where the stack waves. */
  readonly faceEdgeLift_m: number;
  readonly zoneEdgeLift_m: number;
  /** Least clearance over the seat land, never below 0 by more than the contact tolerance [m]. */
  readonly seatOpening_m: number;
  readonly shimEdgeLift_m: readonly number[];
  /** Largest radial surface stress of each single shim [Pa]. */
  readonly shimStress_Pa: readonly number[];
  /** Largest radial surface stress round the clamp edge, from the clamp moment and membrane force [Pa]. */
  readonly shimClampStress_Pa: readonly number[];
  /** Rise of the hub on its float, 0 without one [m]. */
  readonly hubRise_m: number;
  /** Axial forces [N]: applied + seat = clamp + plate + spring. */
  readonly appliedForce_N: number;
  readonly clampForce_N: number;
  readonly seatForce_N: number;
  readonly plateForce_N: number;
  readonly springForce_N: number;
  /** Present when asked for, under large deflection. */
  readonly waviness?: Waviness;
  /** Of the port-periodic theory. */
  readonly wave?: Wave;
  /** Present when asked for: radial and hoop stress along every single shim, of a waved one along its crest. */
  readonly stress?: readonly ShimStress[];
  readonly shape: StackShape;
}

export interface FailedLift {
  readonly status: FailureStatus;
  readonly pressure_Pa: number;
  readonly iterations: number;
  readonly residual: number;
  readonly reason: string;
}

export type LiftPoint = ConvergedLift | FailedLift;

export interface LiftResult {
  /** The one that gave the points. */
  readonly theory: Theory;
  readonly points: readonly LiftPoint[];
  /** Of `auto`: the port-periodic theory solves less than the round one, whose points these are. */
  readonly fallback?: Fallback;
}

/** How the pressure on the face shim is spread beyond the pressure zone. */
export type LandPressure = 'none' | 'falling';

export interface LiftOptions {
  readonly theory: TheoryChoice;
  /** `falling`: the zone pressure falls with ln r to nothing across the seat land; `none` (default): zone only. */
  readonly landPressure?: LandPressure;
  /** Also test every converged state for waviness; under small deflection there is none to find. */
  readonly waviness?: boolean;
  /** Also read the stress along every shim of every converged state. */
  readonly profiles?: boolean;
}

/** Progress and stop come in as plain callbacks; the solver knows no clock, worker or page. */
export interface SolveHooks {
  readonly onProgress?: (done: number, total: number) => void;
  readonly shouldStop?: () => boolean;
}
