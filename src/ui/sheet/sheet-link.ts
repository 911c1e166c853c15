/** The link on the sheet, which carries the build in itself. */
import { effect, signal } from '@preact/signals';
import { projectOfBuild } from '../../model/link-form.ts';
import type { SheetLink } from '../../sheet/input.ts';
import { project, selectedBuild } from '../app/store.ts';
import { canPack, packLink } from '../storage/link.ts';

/** Undefined until the first one is packed; `none` where the build is too long, or the browser packs nothing. */
export const sheetLink = signal<SheetLink | 'none' | undefined>(undefined);

/** Follows the build on show; ends with the page. */
export function startSheetLink(): () => void {
  let last = 0;
  return effect(() => {
    const work = projectOfBuild(project.value, selectedBuild.value.id);
    const turn = ++last;
    const take = (fragment: string | undefined): void => {
      if (turn !== last) return;
      const address = location.href.replace(/#.*$/, '');
      sheetLink.value = fragment === undefined ? 'none' : { address: address + fragment, isWhole: true };
    };
    if (canPack()) void packLink(work).then(take);
    else take(undefined);
  });
}
