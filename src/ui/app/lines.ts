/** The line of each build: colour by the colours in use, dash by its place. */
import { buildColour, buildDash, colourIndex } from './palette.ts';
import { isDark } from './preferences.ts';
import { project } from './store.ts';

export interface Line {
  readonly colour: string;
  readonly dash: string;
}

export function lineOf(buildId: string): Line {
  const ids = project.value.builds.map((build) => build.id);
  const others = ids.filter((id) => id !== project.value.baselineBuild);
  return {
    colour: buildColour(colourIndex(ids, buildId), isDark()),
    dash: buildDash(others.indexOf(buildId), buildId === project.value.baselineBuild),
  };
}
