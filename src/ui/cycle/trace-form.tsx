/** A displacement trace, pasted or out of a file; a fault is told by line and column, and its line is marked in the text. */
import type { JSX, RefObject } from 'preact';
import { useEffect, useId, useRef } from 'preact/hooks';
import { trace } from '../app/cycle-motion.ts';
import { text } from '../text/en.ts';
import {
  closeForm,
  excerpt,
  fault,
  isLong,
  openTraceFile,
  pasteLong,
  reading,
  readTrace,
  write,
  written,
} from './trace-draft.ts';

const words = text.cycle.trace;

/** From where to where the line stands in the text. */
export function placeOfLine(content: string, line: number): readonly [number, number] {
  const before = content.split('\n', line - 1).join('\n');
  const start = line > 1 ? before.length + 1 : 0;
  const end = content.indexOf('\n', start);
  return [start, end < 0 ? content.length : end];
}

function useMarkedLine(box: RefObject<HTMLTextAreaElement | null>): void {
  const wrong = fault.value;
  useEffect(() => {
    if (wrong?.line === undefined || isLong.value) return;
    box.current?.focus();
    box.current?.setSelectionRange(...placeOfLine(written.value, wrong.line));
  }, [wrong, box]);
}

/** The button that empties the box goes with what was too long for it, and leaves the keyboard to the box. */
function useKeyboardBack(box: RefObject<HTMLTextAreaElement | null>): void {
  const wasLong = useRef(false);
  const long = isLong.value;
  useEffect(() => {
    if (wasLong.current && !long && document.activeElement === document.body) box.current?.focus();
    wasLong.current = long;
  }, [long, box]);
}

function FileButton(): JSX.Element {
  const input = useRef<HTMLInputElement>(null);
  return (
    <>
      <button type="button" class="button" onClick={() => input.current?.click()}>
        {words.file}
      </button>
      <input
        ref={input}
        type="file"
        hidden
        accept=".csv,.txt,.tsv,text/csv,text/plain"
        data-trace-file
        onChange={(event) => {
          const [file] = event.currentTarget.files ?? [];
          if (file) void openTraceFile(file);
          event.currentTarget.value = '';
        }}
      />
    </>
  );
}

/** What is too long for a box: how long, and the lines that matter. */
function LongText(): JSX.Element {
  const { lineCount, from, lines } = excerpt.value;
  return (
    <div class="long-trace">
      <p>{words.long(lineCount)}</p>
      <ol start={from}>
        {lines.map((line, i) => (
          <li key={from + i} class={fault.value?.line === from + i ? 'faulty' : undefined}>
            {line}
          </li>
        ))}
      </ol>
      <button type="button" class="button" onClick={() => write('')}>
        {words.clear}
      </button>
    </div>
  );
}

export function TraceForm(): JSX.Element {
  const id = useId();
  const box = useRef<HTMLTextAreaElement>(null);
  useMarkedLine(box);
  useKeyboardBack(box);
  return (
    <form
      class="paste-box trace-form"
      onDrop={(event) => {
        const [file] = event.dataTransfer?.files ?? [];
        if (!file) return;
        event.preventDefault();
        void openTraceFile(file);
      }}
      onSubmit={(event) => {
        event.preventDefault();
        void readTrace();
      }}
    >
      <label for={id}>{words.title}</label>
      <p class="hint" id={`${id}-hint`}>
        {words.hint}
      </p>
      {isLong.value && <LongText />}
      <textarea
        hidden={isLong.value}
        onPaste={(event) => {
          const { selectionStart, selectionEnd } = event.currentTarget;
          const pasted = event.clipboardData?.getData('text/plain') ?? '';
          if (pasteLong(pasted, [selectionStart, selectionEnd])) event.preventDefault();
        }}
        ref={box}
        id={id}
        class="words"
        rows={6}
        spellcheck={false}
        placeholder={words.example}
        aria-describedby={`${id}-hint ${id}-fault`}
        aria-invalid={fault.value !== undefined}
        value={isLong.value ? '' : written.value}
        onInput={(event) => write(event.currentTarget.value)}
      />
      <div id={`${id}-fault`} role="alert">
        {fault.value && <p class="fault">{fault.value.message}</p>}
      </div>
      <div class="stack-acts">
        <button type="submit" class="button primary" disabled={written.value.trim() === '' || reading.value}>
          {words.follow}
        </button>
        <FileButton />
        {trace.value && (
          <button type="button" class="button" onClick={closeForm}>
            {words.cancel}
          </button>
        )}
      </div>
    </form>
  );
}
