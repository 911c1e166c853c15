/** The dialog in which a file of a test bench becomes a measurement of a build. */
import type { JSX } from 'preact';
import { useEffect, useRef } from 'preact/hooks';
import { project } from '../app/store.ts';
import { measuredWords } from '../text/measured.ts';
import { PreviewTable } from './preview-table.tsx';
import { draft, keepReading, measured } from './reading.ts';
import { ReadingOptions } from './reading-options.tsx';
import { ReadingResult } from './reading-result.tsx';

const words = measuredWords.dialog;

function Dialog(): JSX.Element {
  const dialog = useRef<HTMLDialogElement>(null);
  useEffect(() => dialog.current?.showModal(), []);
  const now = draft.value;
  const build = project.value.builds.find(({ id }) => id === now?.buildId)?.name ?? '';
  return (
    <dialog
      ref={dialog}
      class="projects-view measured-view"
      aria-labelledby="measured-title"
      onClose={() => {
        draft.value = undefined;
      }}
    >
      <div class="view-head">
        <h2 id="measured-title">{words.title(now?.fileName ?? '')}</h2>
        <span class="group">
          <button type="button" class="button" onClick={() => dialog.current?.close()}>
            {words.cancel}
          </button>
          <button
            type="button"
            class="button primary"
            disabled={!measured.value?.ok}
            onClick={() => keepReading() && dialog.current?.close()}
          >
            {words.add(build)}
          </button>
        </span>
      </div>
      {now && (
        <div class="measured-body">
          <h3>{words.preview}</h3>
          <PreviewTable />
          <h3>{words.result}</h3>
          <ReadingResult />
          <ReadingOptions now={now} />
        </div>
      )}
    </dialog>
  );
}

export const ImportDialog = (): JSX.Element | null => (draft.value ? <Dialog /> : null);
