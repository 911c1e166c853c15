/** Part of the protocol: what the pages beside the bench ask of the solver. */
import type { Project } from '../src/model/project.ts';
import type { SearchRequest } from '../src/model/search-request.ts';
import type {
  ChassisQuestion,
  RatioWish,
  Samples,
  SearchSettings,
  SensitivityQuestion,
  Theory,
  ToleranceSamplesQuestion,
} from '../src/solver/index.ts';

/** One start of a search; it knows nothing of the others. */
export interface SearchStartRequest {
  readonly project: Project;
  readonly request: SearchRequest;
  readonly settings: SearchSettings & { readonly theory: Theory };
  /** Whole number from 0. */
  readonly start: number;
}

/** Sag, rates, frequency and damping ratios of the chassis of a project, for force curves that the page has. */
export interface ChassisRequest extends ChassisQuestion {
  readonly project: Project;
}

/** The forces of an aim by damping ratios. */
export interface WantedCurveRequest extends RatioWish {
  readonly project: Project;
}

/** What a fit of a build may change. */
export interface FitChoicesRequest {
  readonly project: Project;
  readonly buildId: string;
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
