/** The line and the marks of each build: colour by the colours in use, dash and mark by its place. */
import { type BuildMark, buildColour, buildDash, buildMark, colourIndex } from './palette.ts';
import { isDark } from './preferences.ts';
import { project } from './store.ts';

export interface Line {
  readonly colour: string;
  readonly dash: string;
}

interface Place {
  readonly position: number;
  readonly isBaseline: boolean;
}

function placeOf(buildId: string): Place {
  const { builds, baselineBuild } = project.value;
  const others = builds.filter(({ id }) => id !== baselineBuild);
  return { position: others.findIndex(({ id }) => id === buildId), isBaseline: buildId === baselineBuild };
}

export function lineOf(buildId: string): Line {
  const ids = project.value.builds.map((build) => build.id);
  const { position, isBaseline } = placeOf(buildId);
  return { colour: buildColour(colourIndex(ids, buildId), isDark()), dash: buildDash(position, isBaseline) };
}

/** Where points are drawn, not lines. */
export function marksOf(buildId: string): { readonly colour: string; readonly mark: BuildMark } {
  const { position, isBaseline } = placeOf(buildId);
  return { colour: lineOf(buildId).colour, mark: buildMark(position, isBaseline) };
}
