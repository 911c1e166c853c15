/** Part of the protocol: what the pages beside the bench ask of the solver. */
import type { Project } from '../src/model/project.ts';
import type { SearchRequest } from '../src/model/search-request.ts';
import type { ChassisQuestion, RatioWish, SearchSettings, SensitivityQuestion, Theory } from '../src/solver/index.ts';

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
