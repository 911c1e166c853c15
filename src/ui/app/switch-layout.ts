/** Changes the layout of the damper on the bench, and says what came in or was laid aside. */
import type { Layout } from '../../model/project.ts';
import { text } from '../text/en.ts';
import { editOrTell } from './edit-or-tell.ts';
import { changeLayout, type LaidAside, NOTHING_ASIDE } from './layout-change.ts';
import { tell } from './notices.ts';
import { hasBase } from './places.ts';
import { openId, project } from './store.ts';
import { undoAct } from './undo-act.ts';

/** By project; kept while the page is open. */
const laidAside = new Map<string, LaidAside>();

function message(before: Layout, after: Layout): string | undefined {
  if (hasBase(before) === hasBase(after)) return undefined;
  return hasBase(after) ? text.damper.baseAdded : text.damper.baseLaidAside;
}

export function switchLayout(layout: Layout): void {
  const before = project.value.damper.layout;
  const changed = changeLayout(project.value, layout, laidAside.get(openId.value) ?? NOTHING_ASIDE);
  if (!editOrTell(() => changed.project, text.damper.layout)) return;
  laidAside.set(openId.value, changed.aside);
  const said = message(before, layout);
  if (said) tell(said, { action: undoAct() });
}
