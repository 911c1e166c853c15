/** Bands of force of a build whose parts, oil and gas scatter. */
import type { Project } from '../../model/project.ts';
import { pascalsFromBars } from '../../units/si.ts';
import { damperFromProject } from '../from-model.ts';
import { forceStudy } from '../tolerance/force-study.ts';
import { joinSamples, type Samples, sampleStudy, type Values } from '../tolerance/sample-study.ts';
import { DEFAULT_TOLERANCES, type Tolerances } from '../tolerance/scatter-table.ts';
import { type Spread, summarise } from '../tolerance/summarise.ts';
import type { SolveHooks, Theory } from '../types.ts';
import { oilFromDocument } from './fluid.ts';
import { gasFrom } from './gas.ts';

export interface ToleranceQuestion {
  /** Positive in compression. */
  readonly speeds_m_s: readonly number[];
  readonly theory: Theory;
  /** As in `BuildCurveOptions`. */
  readonly stroke_m?: number;
  /** Replaces single entries of the table. */
  readonly tolerances?: Partial<Tolerances>;
  /** Whole number; the same seed gives the same samples. */
  readonly seed: number;
  /** How many samples there are to be, those solved before included. */
  readonly samples: number;
  /** Samples of the same question that were solved before. */
  readonly before?: Samples;
}

export interface ForceSpread {
  readonly speeds_m_s: readonly number[];
  /** As it is drawn [N]. */
  readonly drawn_N: Values;
  /** Per speed [N]; shares by the order of `TOLERANCE_NAMES`. */
  readonly spreads: readonly (Spread | null)[];
  /** Why some samples have no force, each reason once. */
  readonly refusals: readonly string[];
  /** To go on from. */
  readonly samples: Samples;
}

/** @throws InputError as `damperFromProject` does; SolveStopped when the caller stops the run */
export function toleranceForBuild(
  project: Project,
  buildId: string,
  question: ToleranceQuestion,
  hooks: SolveHooks = {},
): ForceSpread {
  const { speeds_m_s, theory, stroke_m, seed, before } = question;
  const damper = damperFromProject(project, buildId, stroke_m);
  const { fluid, gas } = project;
  const sizes = damper;
  const scattering = {
    damper,
    oilWarmer: (by_K: number) => oilFromDocument({ ...fluid, temperature_degC: fluid.temperature_degC + by_K }),
    gasHigher: (by_Pa: number) =>
      gasFrom(
        { ...gas, gaugePressure_bar: gas.gaugePressure_bar + by_Pa / pascalsFromBars(1) },
        sizes,
        damper.stroke_m,
      ),
  };
  const tolerances = { ...DEFAULT_TOLERANCES, ...question.tolerances };
  const study = forceStudy(scattering, tolerances, speeds_m_s, theory, hooks);
  const range = { seed, from: before?.a.length ?? 0, to: question.samples };
  const solved = sampleStudy(study, range, hooks);
  const samples = before ? joinSamples(before, solved) : solved;
  return { speeds_m_s, drawn_N: study.drawn, spreads: summarise(samples), refusals: [...study.refusals], samples };
}
