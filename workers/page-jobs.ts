/** Part of the protocol: what the pages beside the bench ask of the solver. */
import type { Project } from '../src/model/project.ts';
import type { SearchRequest } from '../src/model/search-request.ts';
import type {
  ChassisQuestion,
  FitChoice,
  FitName,
  RatioWish,
  Samples,
  SearchSettings,
  SensitivityQuestion,
  TheoryChoice,
  ToleranceSamplesQuestion,
} from '../src/solver/index.ts';

/** One start of a search; it knows nothing of the others. */
export interface SearchStartRequest {
  readonly project: Project;
  readonly request: SearchRequest;
  readonly settings: SearchSettings & { readonly theory: TheoryChoice };
  /** Whole number from 0. */
  readonly start: number;
}

/** What a search begins from; its limits do not count. */
export interface SearchPresentRequest {
  readonly project: Project;
  readonly request: SearchRequest;
  readonly theory: TheoryChoice;
}

/** Sag, rates, frequency and damping ratios of the chassis of a project, for force curves that the page has. */
export interface ChassisRequest extends ChassisQuestion {
  readonly project: Project;
}

/** The forces of an aim by damping ratios. */
export interface WantedCurveRequest extends RatioWish {
  readonly project: Project;
}

export interface FitRequest {
  readonly project: Project;
  readonly buildId: string;
  /** Of the build; absent, all that are kept with it. */
  readonly measurementIds?: readonly string[];
  /** Coefficients that may change; absent, the usual ones. */
  readonly names?: readonly FitName[];
  readonly theory: TheoryChoice;
}

/** What a fit of a build may change. */
export interface FitChoicesRequest {
  readonly project: Project;
  readonly buildId: string;
}

export interface FitChoicesResult {
  readonly choices: readonly FitChoice[];
}

/** What each shim of one stack of a build does. */
export type SensitivityRequest = SensitivityQuestion & { readonly project: Project; readonly buildId: string };

/** Some of the samples of a build whose parts scatter; parts of one study know nothing of each other. */
export type ToleranceSamplesRequest = ToleranceSamplesQuestion & {
  readonly project: Project;
  readonly buildId: string;
};

/** What samples that the page has say. */
export interface ToleranceReadingRequest {
  /** Of the samples. */
  readonly speeds_m_s: readonly number[];
  /** In the order of their numbers. */
  readonly solved: readonly Samples[];
  readonly seed: number;
}
