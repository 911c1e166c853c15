/** What differs between a project as it is now and as it was saved: build by build, in the words of the bench. */
import type { Build, Project } from '../../model/project.ts';
import { describeDifference } from '../app/difference.ts';
import { writeField } from '../app/quantities.ts';
import { keeping } from '../text/keeping.ts';

const length = (value_mm: number): string => writeField('length', value_mm);

function describeBuild(now: Build | undefined, then: Build | undefined, { damper }: Project): string[] {
  if (!then) return now ? [keeping.states.gone(now.name)] : [];
  if (!now) return [keeping.states.added(then.name)];
  const difference = describeDifference(now, then, damper.layout, length);
  return difference ? [keeping.states.changed(then.name, difference)] : [];
}

export function compareProjects(now: Project, then: Project): string[] {
  const ids = new Set([...now.builds, ...then.builds].map(({ id }) => id));
  const sameLayout = now.damper.layout === then.damper.layout;
  const lines = [...ids].flatMap((id) => {
    const [before, after] = [now, then].map(({ builds }) => builds.find((build) => build.id === id));
    return sameLayout || !before || !after ? describeBuild(before, after, now) : [];
  });
  if (lines.length > 0) return lines;
  return [JSON.stringify(now) === JSON.stringify(then) ? keeping.states.sameAsNow : keeping.states.otherwise];
}
