/** What the program says where a person calculated by hand: small deflection without port jets, then with them, then large. */
import type { Project } from '../../../src/model/project.ts';
import { type Coefficients, type ForcePoint, forceCurveForBuild, type Theory } from '../../../src/solver/index.ts';

export interface ProgramPoints {
  readonly withoutJets: ForcePoint;
  readonly small: ForcePoint;
  readonly large: ForcePoint;
}

/** @throws Error where the program has no force */
export function programAt(project: Project, speed_m_s: number): ProgramPoints {
  const at = (theory: Theory, coefficients?: Partial<Coefficients>): ForcePoint => {
    const options = { speeds_m_s: [speed_m_s], theory, coefficients };
    const [point] = forceCurveForBuild(project, project.baselineBuild, options).points;
    if (point.status !== 'converged') throw new Error(`no force at ${speed_m_s} m/s: ${point.reason}`);
    return point;
  };
  return {
    withoutJets: at('small-deflection', { portMomentum: 0 }),
    small: at('small-deflection'),
    large: at('large-deflection'),
  };
}
