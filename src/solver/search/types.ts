/** Plain records of a search for stacks. Forces are those at the shaft less the gas force, positive in compression. */
import type { DamperInput, StackPlace, WavesOnset } from '../damper/types.ts';
import type { ShimInput, Theory, TheoryChoice } from '../types.ts';

export interface AimPoint {
  /** + in compression; never 0, where friction alone decides [m/s]. */
  readonly shaftSpeed_m_s: number;
  /** Wanted at the shaft, friction included, gas left out [N]. */
  readonly force_N: number;
}

/** One size of shim that stacks may be laid from. */
export interface SupplyItem {
  readonly shim: ShimInput;
  /** How many there are for all searched places together; Infinity in a catalogue. */
  readonly count: number;
}

/** What may be done to the stack of one place. Shims are named by their index in the supply, piston side first. */
export interface SearchPlace {
  readonly place: StackPlace;
  /** The stack as it is. */
  readonly present: readonly number[];
  /** How many of a size must stay, by index in the supply. */
  readonly kept: ReadonlyMap<number, number>;
  /** The face shim stays the one it is. */
  readonly keepsFace: boolean;
}

export interface SearchLimits {
  /** Single shims of one stack. */
  readonly maxShims: number;
  /** Single shims that may be added to, or taken out of, the present stacks together; absent, any number. */
  readonly maxChanges?: number;
  /** Height of one stack, all shims [m]. */
  readonly height_m?: { readonly from: number; readonly upTo: number };
  /** Least reserve of life and of yield over all speeds of the aim [-]; shims of unknown strength do not count. */
  readonly minFatigueReserve?: number;
  readonly minYieldReserve?: number;
  /** Gas pressure that must be left above the one needed to keep oil from pulling apart [Pa]; absent, not looked at. */
  readonly minGasMargin_Pa?: number;
}

export interface SearchProblem {
  /** As it stands; the stacks of the searched places are replaced. */
  readonly damper: DamperInput;
  readonly places: readonly SearchPlace[];
  readonly supply: readonly SupplyItem[];
  readonly aim: readonly AimPoint[];
  readonly limits: SearchLimits;
  /** Of the answers that are handed on; `auto` tries stacks with large deflection, and solves the best of them by itself. */
  readonly theory: TheoryChoice;
}

export interface SearchSettings {
  /** Whole number; the same seed, problem and starts give the same answer on every machine. */
  readonly seed: number;
  /** Stacks that one start proposes. */
  readonly steps: number;
  /** Answers that one start hands on. */
  readonly answers: number;
}

/** The stacks of one answer, by place: indices in the supply, piston side first. */
export type Arrangement = Readonly<Partial<Record<StackPlace, readonly number[]>>>;

/** What a whole force curve says of an answer. */
export interface Judgement {
  /** Root of the mean square of force less aim over the points of the aim [N]. */
  readonly rms_N: number;
  /** ... as a share of the root mean square of the aim [-]. */
  readonly rmsShare: number;
  /** Largest distance, with its sign, and where [N, m/s]. */
  readonly worst: { readonly difference_N: number; readonly shaftSpeed_m_s: number };
  /** Force less gas at the points of the aim [N]. */
  readonly force_N: readonly number[];
  /** Least reserve of the searched stacks; absent where no strength is known [-]. */
  readonly fatigueReserve?: number;
  readonly yieldReserve?: number;
  /** Gas pressure less the one needed, at the worst point of the aim [Pa]. */
  readonly gasMargin_Pa: number;
  /** Which theory gave the searched stacks; absent in answers that were kept before it was told. */
  readonly theories?: Readonly<Partial<Record<StackPlace, Theory>>>;
  /** Where those of large deflection begin to ruffle. */
  readonly waves: Readonly<Partial<Record<StackPlace, WavesOnset>>>;
}

export interface SearchAnswer {
  readonly arrangement: Arrangement;
  /** Single shims that differ from the present stacks: the greater of added and taken out. */
  readonly changes: number;
  readonly judgement: Judgement;
}

/** What one start found, best first, and how much it looked at. */
export interface StartResult {
  readonly start: number;
  readonly answers: readonly SearchAnswer[];
  /** Stacks proposed, those judged with small deflection alone, and those solved with the theory asked for. */
  readonly counts: { readonly proposed: number; readonly screened: number; readonly judged: number };
  /** Answers that a limit refused at the last judgement, or that did not solve there. */
  readonly refused: number;
}
