/** What each change does to the force of a damper, at every speed and in both directions. */
import { validateProject } from '../../../src/model/validate.ts';
import { type FailedForce, type ForcePoint, forceCurveForBuild } from '../../../src/solver/index.ts';
import type { MatterCase } from './cases.ts';
import { type Change, changesOf, type Side } from './changes.ts';

/** By how much a damper resists more [N], or why there is no telling. */
export type Effect = number | { readonly reason: string };

type Effects = readonly (Effect | undefined)[];

export interface ChangeEffects {
  readonly label: string;
  /** One per speed; absent for a side that the damper cannot take. */
  readonly lower: Effects;
  readonly upper: Effects;
}

export interface CaseEffects {
  readonly title: string;
  /** Positive in compression. */
  readonly speeds_m_s: readonly number[];
  /** As it is drawn, without sign [N]. */
  readonly damping_N: readonly number[];
  readonly changes: readonly ChangeEffects[];
}

/** @throws Error when the damper as it is drawn has no force at one of the speeds */
export function effectsOf({ title, project, speeds_m_s: speeds }: MatterCase): CaseEffects {
  const speeds_m_s = speeds.flatMap((speed) => [speed, -speed]);
  const drawn = pointsOf({ project }, speeds_m_s).map(convergedOrThrow);
  const effects = (side: Side | undefined): Effects => (side ? effectsOfSide(side, drawn) : []);
  return {
    title,
    speeds_m_s,
    damping_N: drawn.map(({ dampingForce_N }) => Math.abs(dampingForce_N)),
    changes: changesOf(project).map(({ label, lower, upper }: Change) => ({
      label,
      lower: effects(lower),
      upper: effects(upper),
    })),
  };
}

const pointsOf = ({ project, coefficients }: Side, speeds_m_s: readonly number[]) =>
  forceCurveForBuild(project, project.baselineBuild, { speeds_m_s, theory: 'large-deflection', coefficients }).points;

/** None for a document that cannot be. */
function effectsOfSide(side: Side, drawn: readonly ForcePoint[]): Effects {
  if (!validateProject(side.project).ok) return [];
  const speeds_m_s = drawn.map(({ shaftSpeed_m_s }) => shaftSpeed_m_s);
  const points = pointsOf(side, speeds_m_s);
  return drawn.map((point, i) => {
    const direction = Math.sign(point.shaftSpeed_m_s);
    return side.without?.includes(direction) ? undefined : difference(points[i], point);
  });
}

function difference(point: ForcePoint | FailedForce, drawn: ForcePoint): Effect {
  if (point.status !== 'converged') return { reason: point.reason };
  return Math.sign(drawn.shaftSpeed_m_s) * (point.force_N - drawn.force_N);
}

function convergedOrThrow(point: ForcePoint | FailedForce): ForcePoint {
  if (point.status === 'converged') return point;
  throw new Error(`no force at ${point.shaftSpeed_m_s} m/s: ${point.reason}`);
}
