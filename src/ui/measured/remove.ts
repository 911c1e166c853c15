/** Takes a measurement out of its build; undo brings it back. */
import type { Measurement } from '../../model/measurement.ts';
import { editProject } from '../app/apply.ts';
import { tell } from '../app/notices.ts';
import { withBuild } from '../app/store.ts';
import { undoAct } from '../app/undo-act.ts';
import { measuredWords as words } from '../text/measured.ts';

export function removeMeasurement(buildId: string, { id, name }: Measurement): void {
  const without = (measurements: readonly Measurement[] = []) => measurements.filter((each) => each.id !== id);
  const fault = editProject(
    () => withBuild(buildId, (build) => ({ ...build, measurements: without(build.measurements) })),
    { label: words.remove(name) },
  );
  if (!fault) tell(words.removed(name), { action: undoAct() });
}
