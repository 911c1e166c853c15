/** A file may be dropped anywhere on the page. */
import { useSignal } from '@preact/signals';
import type { JSX } from 'preact';
import { useEffect } from 'preact/hooks';
import { openFile } from '../app/files.ts';
import { selectedBuild } from '../app/store.ts';
import { openMeasuredFile } from '../measured/open-file.ts';
import { text } from '../text/en.ts';

const holdsFiles = (event: DragEvent): boolean => [...(event.dataTransfer?.types ?? [])].includes('Files');

/** What a test bench writes, told from a project by its name. */
const isTable = ({ name }: File): boolean => /\.(csv|txt|tsv|dat)$/i.test(name);

export function DropVeil(): JSX.Element | null {
  const over = useSignal(false);
  useEffect(() => {
    const onDrag = (event: DragEvent): void => {
      if (!holdsFiles(event)) return;
      event.preventDefault();
      over.value = event.type === 'dragover';
    };
    const onLeave = (event: DragEvent): void => {
      if (event.relatedTarget === null) over.value = false;
    };
    const onDrop = (event: DragEvent): void => {
      // What was let go over a form that takes files is its own.
      const isTaken = event.defaultPrevented;
      onDrag(event);
      const file = event.dataTransfer?.files[0];
      if (file && !isTaken) void (isTable(file) ? openMeasuredFile(selectedBuild.value.id, file) : openFile(file));
    };
    document.addEventListener('dragover', onDrag);
    document.addEventListener('dragleave', onLeave);
    document.addEventListener('drop', onDrop);
    return () => {
      document.removeEventListener('dragover', onDrag);
      document.removeEventListener('dragleave', onLeave);
      document.removeEventListener('drop', onDrop);
    };
  }, [over]);
  return over.value ? <div class="drop-veil">{text.notices.dropHere}</div> : null;
}
