/** A search with a planted answer on an invented damper: the aim is the curve of a stack that the drawer can lay. */
import type { DrawerShim, Project, ShimRow } from '../../src/model/project.ts';
import type { SearchRequest } from '../../src/model/search-request.ts';
import { forceCurveForBuild, type TheoryChoice } from '../../src/solver/index.ts';
import { loadDemo } from './demo-curves.ts';

const DIAMETERS_MM = [34, 32, 30, 28, 26, 24, 22, 20, 18, 16];
const THICKNESSES_MM = [0.1, 0.15, 0.2, 0.25, 0.3, 0.4];
export const SPEEDS = [0.05, 0.1, 0.2, 0.3, 0.5, 0.7, 1, 1.4];

/** One of every size: 60 shims. */
export const DRAWER: DrawerShim[] = DIAMETERS_MM.flatMap((outerDiameter_mm) =>
  THICKNESSES_MM.map((thickness_mm) => ({ outerDiameter_mm, thickness_mm, count: 1 })),
);

const row = (outerDiameter_mm: number, thickness_mm: number): ShimRow => ({ outerDiameter_mm, thickness_mm, count: 1 });
/** Two stages behind a crossover. */
export const PLANTED: ShimRow[] = [
  row(34, 0.15),
  row(32, 0.15),
  row(20, 0.1),
  row(30, 0.2),
  row(26, 0.2),
  row(22, 0.25),
  row(18, 0.3),
];

export function demoWithDrawer(): Project {
  return { ...loadDemo('larkspur-trail-rear.shimwright.json'), drawer: DRAWER };
}

/** The baseline with other shims behind its compression ports. */
export function withCompression(project: Project, shims: readonly ShimRow[]): Project {
  const builds = project.builds.map((build) => {
    if (build.id !== project.baselineBuild) return build;
    const pistonCompression = { ...build.valves.pistonCompression, shims: [...shims] };
    return { ...build, valves: { ...build.valves, pistonCompression } };
  });
  return { ...project, builds };
}

/** Force less gas of the baseline, the aim of a search for it. */
export function aimOf(
  project: Project,
  speeds_m_s: readonly number[],
  theory: TheoryChoice = 'large-deflection',
): SearchRequest['aim'] {
  const { points } = forceCurveForBuild(project, project.baselineBuild, { speeds_m_s, theory });
  return points.map((point) => {
    if (point.status !== 'converged') throw new Error(`no force at ${point.shaftSpeed_m_s} m/s: ${point.reason}`);
    return { shaftSpeed_m_s: point.shaftSpeed_m_s, force_N: point.force_N - point.gasForce_N };
  });
}

export function plantedStudy(
  limits: SearchRequest['limits'] = {},
  theory?: TheoryChoice,
): { project: Project; request: SearchRequest } {
  const project = demoWithDrawer();
  const aim = aimOf(withCompression(project, PLANTED), SPEEDS, theory);
  const request: SearchRequest = {
    buildId: project.baselineBuild,
    places: ['pistonCompression'],
    aim,
    source: { kind: 'drawer' },
    limits,
  };
  return { project, request };
}
