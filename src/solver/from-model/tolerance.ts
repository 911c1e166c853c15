/**
 * Bands of force of a build whose parts, oil and gas scatter.
 *
 * symbol  unit  meaning
 * v       m/s   shaft speed, positive in compression
 */
import type { Project } from '../../model/project.ts';
import { pascalsFromBars } from '../../units/si.ts';
import type { StackTheories } from '../damper/types.ts';
import { damperFromProject } from '../from-model.ts';
import { type ForceStudy, forceStudy } from '../tolerance/force-study.ts';
import { joinSamples, type Samples, sampleStudy, type Values } from '../tolerance/sample-study.ts';
import { TOLERANCE_NAMES, type ToleranceName, type Tolerances } from '../tolerance/scatter-table.ts';
import { type ShareEstimate, shareEstimator } from '../tolerance/share-estimates.ts';
import { type Spread, summarise } from '../tolerance/summarise.ts';
import type { SolveHooks, TheoryChoice } from '../types.ts';
import { oilFromDocument } from './fluid.ts';
import { gasFrom } from './gas.ts';
import { tolerancesOfProject } from './tolerances.ts';

interface ScatterQuestion {
  /** Positive in compression. */
  readonly speeds_m_s: readonly number[];
  readonly theory: TheoryChoice;
  /** As in `BuildCurveOptions`. */
  readonly stroke_m?: number;
  /** Replaces single entries of the document, which replace those of the table. */
  readonly tolerances?: Partial<Tolerances>;
  /** Whole number; the same seed gives the same samples. */
  readonly seed: number;
}

export interface ToleranceQuestion extends ScatterQuestion {
  /** How many samples there are to be, those solved before included. */
  readonly samples: number;
  /** Samples of the same question that were solved before. */
  readonly before?: Samples;
}

export interface ToleranceSamplesQuestion extends ScatterQuestion {
  /** Number of the first sample, counted from 0. */
  readonly from: number;
  /** One past the last. */
  readonly to: number;
}

export interface ToleranceSamples {
  readonly speeds_m_s: readonly number[];
  /** As it is drawn [N]. */
  readonly drawn_N: Values;
  /** Tolerances of parts that the build has. */
  readonly parts: readonly ToleranceName[];
  /** Which theory gave each stack, as it is drawn; the samples keep to it. */
  readonly theories: StackTheories;
  /** Why some samples have no force, each reason once. */
  readonly refusals: readonly string[];
  readonly samples: Samples;
}

export interface ForceSpread extends ToleranceSamples {
  /** Per speed [N]; shares by the order of `TOLERANCE_NAMES`. */
  readonly spreads: readonly (Spread | null)[];
}

/** Shares by the order of the names. */
export interface ToleranceReading {
  readonly names: readonly ToleranceName[];
  /** Per speed [N]. */
  readonly spreads: readonly (Spread | null)[];
  /** Per speed, with how far the samples leave them open. */
  readonly shares: readonly (readonly ShareEstimate[])[];
  /** Over all speeds of a direction, each counting by its variance. */
  readonly overRange: { readonly compression: readonly ShareEstimate[]; readonly rebound: readonly ShareEstimate[] };
}

function studyOf(project: Project, buildId: string, question: ScatterQuestion, hooks: SolveHooks): ForceStudy {
  const { speeds_m_s, theory, stroke_m } = question;
  const damper = damperFromProject(project, buildId, stroke_m);
  const { fluid, gas } = project;
  const scattering = {
    damper,
    oilWarmer: (by_K: number) => oilFromDocument({ ...fluid, temperature_degC: fluid.temperature_degC + by_K }),
    gasHigher: (by_Pa: number) =>
      gasFrom(
        { ...gas, gaugePressure_bar: gas.gaugePressure_bar + by_Pa / pascalsFromBars(1) },
        damper,
        damper.stroke_m,
      ),
  };
  const tolerances = { ...tolerancesOfProject(project), ...question.tolerances };
  return forceStudy(scattering, tolerances, speeds_m_s, theory, hooks);
}

/**
 * Samples by their numbers: parts of one study may be solved anywhere, and put together by `readTolerance`.
 * @throws InputError as `damperFromProject` does; SolveStopped when the caller stops the run
 */
export function toleranceSamples(
  project: Project,
  buildId: string,
  question: ToleranceSamplesQuestion,
  hooks: SolveHooks = {},
): ToleranceSamples {
  const { speeds_m_s, seed, from, to } = question;
  const study = studyOf(project, buildId, question, hooks);
  const samples = sampleStudy(study, { seed, from, to }, hooks);
  const { drawn: drawn_N, parts, theories } = study;
  return { speeds_m_s, drawn_N, parts, theories, refusals: [...study.refusals], samples };
}

/**
 * @param solved  samples of one study, at least one part
 * @param seed    of the chance by which the intervals of the shares are drawn
 */
export function readTolerance(
  speeds_m_s: readonly number[],
  solved: readonly Samples[],
  seed: number,
): ToleranceReading {
  const samples = solved.reduce(joinSamples);
  const estimator = shareEstimator(samples, seed);
  const over = (way: 1 | -1) => estimator.at(speeds_m_s.flatMap((v, i) => (v * way > 0 ? [i] : [])));
  return {
    names: TOLERANCE_NAMES,
    spreads: summarise(samples),
    shares: speeds_m_s.map((_, i) => estimator.at([i])),
    overRange: { compression: over(1), rebound: over(-1) },
  };
}

/** @throws InputError as `damperFromProject` does; SolveStopped when the caller stops the run */
export function toleranceForBuild(
  project: Project,
  buildId: string,
  { samples: to, before, ...question }: ToleranceQuestion,
  hooks: SolveHooks = {},
): ForceSpread {
  const solved = toleranceSamples(project, buildId, { ...question, from: before?.a.length ?? 0, to }, hooks);
  const samples = before ? joinSamples(before, solved.samples) : solved.samples;
  return { ...solved, samples, spreads: summarise(samples) };
}
