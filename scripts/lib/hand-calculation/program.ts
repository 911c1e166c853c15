/** What the program says where a person calculated by hand: small deflection without port jets, then with them, large, and its own choice. */
import type { Project } from '../../../src/model/project.ts';
import {
  type Coefficients,
  type ForcePoint,
  forceCurveForBuild,
  type TheoryChoice,
} from '../../../src/solver/index.ts';

export interface ProgramPoints {
  readonly withoutJets: ForcePoint;
  readonly small: ForcePoint;
  readonly large: ForcePoint;
  readonly byDefault: ForcePoint;
}

/** Of the charts of the bench, which `auto` chooses for. */
const TOP_SPEED_M_S = 2;

/** At each of the speeds. @throws Error where the program has no force */
export function programPoints(project: Project, speeds_m_s: readonly number[]): ProgramPoints[] {
  const asked = [...speeds_m_s, TOP_SPEED_M_S, -TOP_SPEED_M_S];
  const by = (theory: TheoryChoice, coefficients?: Partial<Coefficients>): ForcePoint[] => {
    const { points } = forceCurveForBuild(project, project.baselineBuild, { speeds_m_s: asked, theory, coefficients });
    return speeds_m_s.map((speed, i) => {
      const point = points[i];
      if (point.status !== 'converged') throw new Error(`no force at ${speed} m/s: ${point.reason}`);
      return point;
    });
  };
  const withoutJets = by('small-deflection', { portMomentum: 0 });
  const [small, large, byDefault] = (['small-deflection', 'large-deflection', 'auto'] as const).map((one) => by(one));
  return speeds_m_s.map((_, i) => ({
    withoutJets: withoutJets[i],
    small: small[i],
    large: large[i],
    byDefault: byDefault[i],
  }));
}
