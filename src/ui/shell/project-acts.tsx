/** What can be done with a project as a whole: list, open, save, link, demo. */
import type { JSX, RefObject } from 'preact';
import { openDemo, openFile, saveCopy } from '../app/files.ts';
import { awayCount, callBack } from '../app/notices.ts';
import { offerLink } from '../projects/sharing.ts';
import { showAll, showNew } from '../projects/shown.ts';
import { text } from '../text/en.ts';
import { keeping } from '../text/keeping.ts';

interface ActProps {
  readonly label: string;
  readonly why: string;
  readonly opensDialog?: boolean;
  readonly run: () => void;
}

function Act({ label, why, opensDialog, run }: ActProps): JSX.Element {
  return (
    <button type="button" title={why} aria-haspopup={opensDialog ? 'dialog' : undefined} onClick={run}>
      {label}
    </button>
  );
}

/** Stands outside the menu, which is gone by the time that a file is picked. */
export function FilePicker({ picker }: { picker: RefObject<HTMLInputElement | null> }): JSX.Element {
  const picked = (input: HTMLInputElement): void => {
    const file = input.files?.[0];
    input.value = '';
    if (file) void openFile(file);
  };
  return (
    <input
      ref={picker}
      type="file"
      accept=".json,application/json"
      hidden
      onChange={(event) => picked(event.currentTarget)}
    />
  );
}

interface ActsProps {
  readonly picker: RefObject<HTMLInputElement | null>;
  /** Called before each act. */
  readonly fold: () => void;
}

export function ProjectActs({ picker, fold }: ActsProps): JSX.Element {
  const after = (act: () => void) => () => {
    fold();
    act();
  };
  const { projects, link } = keeping;
  return (
    <div class="menu-acts">
      <Act label={text.blank.menu} why={text.blank.menuWhy} opensDialog run={after(showNew)} />
      <Act label={projects.open} why={projects.openWhy} opensDialog run={after(showAll)} />
      <Act label={text.bar.openFile} why={text.bar.openWhy} run={after(() => picker.current?.click())} />
      <Act label={text.bar.saveFile} why={text.bar.saveWhy} run={after(saveCopy)} />
      <Act label={link.button} why={link.buttonWhy} run={after(offerLink)} />
      <Act label={text.bar.openDemo} why={text.bar.demoWhy} run={after(openDemo)} />
      {awayCount.value > 0 && (
        <Act label={text.notices.again(awayCount.value)} why={text.notices.againWhy} run={after(callBack)} />
      )}
    </div>
  );
}
