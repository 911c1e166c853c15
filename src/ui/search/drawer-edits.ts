/** Edits of the drawer: each a step of undo. */

import { addShims, drawerCsv, readDrawerCsv } from '../../model/drawer-csv.ts';
import type { DrawerShim, Project } from '../../model/project.ts';
import { parseShimList } from '../../model/shim-list.ts';
import type { InputFault } from '../../units/fault.ts';
import { faultInWords } from '../app/apply.ts';
import { editOrTell } from '../app/edit-or-tell.ts';
import { tell } from '../app/notices.ts';
import { project } from '../app/store.ts';
import { undoAct } from '../app/undo-act.ts';
import { exportName } from '../export/file-name.ts';
import { download } from '../storage/download.ts';
import { drawerWords as words } from '../text/drawer.ts';

export const shimsIn = (drawer: readonly DrawerShim[]): number => drawer.reduce((sum, { count }) => sum + count, 0);

/** Large before small, thin before thick. */
const sorted = (drawer: readonly DrawerShim[]): DrawerShim[] =>
  [...drawer].sort((a, b) => b.outerDiameter_mm - a.outerDiameter_mm || a.thickness_mm - b.thickness_mm);

const withDrawer = (drawer: readonly DrawerShim[]): Project => ({ ...project.value, drawer: [...drawer] });

export const withSize = (index: number, change: Partial<DrawerShim>): Project =>
  withDrawer(project.value.drawer.map((shim, i) => (i === index ? { ...shim, ...change } : shim)));

export const withoutBore = (index: number): Project =>
  withDrawer(
    project.value.drawer.map((shim, i) => {
      if (i !== index) return shim;
      const { innerDiameter_mm: _, ...rest } = shim;
      return rest;
    }),
  );

/** One more or one less of a size; never fewer than none. */
export function stepSize(index: number, by: number): void {
  const count = project.value.drawer[index].count + by;
  const label = by > 0 ? words.oneMore(index + 1) : words.oneLess(index + 1);
  if (count >= 0) editOrTell(() => withSize(index, { count }), label);
}

export const removeSize = (index: number): boolean =>
  editOrTell(() => withDrawer(project.value.drawer.filter((_, i) => i !== index)), words.remove(index + 1));

export const addToDrawer = (added: readonly DrawerShim[]): boolean =>
  editOrTell(() => withDrawer(sorted(addShims(project.value.drawer, added))), words.addLabel);

const faultLines = (faults: readonly InputFault[]): string[] =>
  faults.slice(0, 6).map((fault) => `${fault.path}: ${faultInWords(fault).message}`);

/** A written list counts onto what is there; with a fault in it, nothing is added. */
export function addList(written: string): boolean {
  const { rows, faults } = parseShimList(written);
  if (faults.length > 0) {
    tell(words.notRead, { tone: 'problem', details: faultLines(faults) });
    return false;
  }
  const added = rows.map(({ outerDiameter_mm, thickness_mm, innerDiameter_mm, count }) => ({
    outerDiameter_mm,
    thickness_mm,
    count,
    ...(innerDiameter_mm !== undefined && { innerDiameter_mm }),
  }));
  if (!addToDrawer(added)) return false;
  tell(words.added(shimsIn(added)), { action: undoAct() });
  return true;
}

/** The drawer becomes what a file lists; with a fault in it, it stays as it was. */
export async function openDrawerCsv(file: File): Promise<void> {
  const refuse = (details: readonly string[]): void =>
    tell(words.notOpened(file.name), { tone: 'problem', details: [...details] });
  const written = await file.text().catch(() => undefined);
  if (written === undefined) return refuse([words.unreadable]);
  const { drawer, faults } = readDrawerCsv(written);
  if (faults.length > 0) return refuse(faultLines(faults));
  if (editOrTell(() => withDrawer(drawer), words.openLabel))
    tell(words.opened(file.name, shimsIn(drawer)), { action: undoAct() });
}

export const saveDrawerCsv = (): void =>
  download(exportName(project.value.name, words.fileName, 'csv'), drawerCsv(project.value.drawer), 'text/csv');
