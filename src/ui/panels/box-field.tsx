/** A box that takes free text: says at the box what does not fit, and keeps the last good value in use meanwhile. */
import { useSignal } from '@preact/signals';
import type { JSX } from 'preact';
import { useContext, useEffect, useId, useLayoutEffect, useRef } from 'preact/hooks';
import { unitChoices } from '../../units/own-units.ts';
import type { Kind } from '../../units/unit-table.ts';
import type { EditFault } from '../app/apply.ts';
import { decimalSign, units } from '../app/preferences.ts';
import { loadParser, parserIsReady } from '../app/quantities.ts';
import { revision } from '../app/store.ts';
import { LettersAtBoxes } from '../sketches/letters-at-boxes.ts';
import { text } from '../text/en.ts';
import type { MeasureId } from '../text/measures.ts';
import { LetteredLabel } from './lettered-label.tsx';
import { UnitMenu } from './unit-menu.tsx';

/** A fault waits until typing pauses: half a number is not a mistake yet. */
const PATIENCE_MS = 500;

export interface BoxFieldProps {
  readonly label: string;
  readonly unit: string;
  /** Of the quantity, where its unit can be picked. */
  readonly quantity?: Kind;
  /** The value in use, as text. */
  readonly written: string;
  /** Takes what was typed into use, or says why not. `session` is the same from focus to blur. */
  readonly attempt: (typed: string, session: string) => EditFault | undefined;
  readonly placeholder?: string;
  readonly title?: string;
  /** Grid position for moving through a table by keys. */
  readonly cell?: string;
  /** What it is in the sketch beside it. */
  readonly dimension?: MeasureId;
  /** The label is said elsewhere on the screen. */
  readonly bare?: boolean;
  readonly onKeyDown?: (event: KeyboardEvent) => void;
}

let focusCount = 0;

function useDraft({ label, written, attempt }: BoxFieldProps) {
  const draft = useSignal<string | undefined>(undefined);
  const fault = useSignal<EditFault | undefined>(undefined);
  const patient = useSignal(false);
  const timer = useRef<ReturnType<typeof setTimeout> | undefined>(undefined);
  const session = useRef({ key: '', before: written });
  const reset = (): void => {
    draft.value = undefined;
    fault.value = undefined;
  };
  useLayoutEffect(reset, [revision.value, units.value, decimalSign.value]);
  useEffect(() => () => clearTimeout(timer.current), []);

  const type = (typed: string): void => {
    draft.value = typed;
    if (!parserIsReady()) return void loadParser().then(() => draft.value === typed && type(typed));
    fault.value = attempt(typed, session.current.key);
    patient.value = true;
    clearTimeout(timer.current);
    timer.current = setTimeout(() => {
      patient.value = false;
    }, PATIENCE_MS);
  };
  const settle = (): void => {
    clearTimeout(timer.current);
    patient.value = false;
    if (!fault.value) draft.value = undefined;
  };
  const restore = (): void => {
    attempt(session.current.before, session.current.key);
    reset();
  };
  const begin = (): void => {
    focusCount++;
    session.current = { key: `${label}#${focusCount}`, before: written };
  };
  return { draft, fault, patient, type, settle, restore, begin };
}

type Draft = ReturnType<typeof useDraft>;

interface BoxProps {
  readonly id: string;
  readonly props: BoxFieldProps;
  readonly entry: Draft;
  readonly faulty: boolean;
  /** Id of what says how the number is measured, where it says so. */
  readonly note: string | undefined;
}

function Box({ id, props, entry, faulty, note }: BoxProps): JSX.Element {
  const menu = useRef<HTMLButtonElement>(null);
  const { unit, quantity } = props;
  const onKeyDown = (event: KeyboardEvent): void => {
    // In the table of shims this moves the row.
    if (event.altKey && event.key === 'ArrowDown' && !props.onKeyDown) {
      event.preventDefault();
      menu.current?.click();
      return;
    }
    if (event.key === 'Escape') entry.restore();
    if (event.key === 'Enter') entry.settle();
    props.onKeyDown?.(event);
  };
  return (
    <span class={`box ${faulty ? 'faulty' : ''}`} title={props.title}>
      <input
        id={id}
        data-cell={props.cell}
        inputMode="decimal"
        autocomplete="off"
        spellcheck={false}
        placeholder={props.placeholder}
        value={entry.draft.value ?? props.written}
        aria-invalid={faulty ? 'true' : undefined}
        aria-describedby={[faulty && `${id}-fault`, note].filter(Boolean).join(' ') || undefined}
        onInput={(event) => entry.type(event.currentTarget.value)}
        onFocus={(event) => {
          entry.begin();
          event.currentTarget.select();
        }}
        onBlur={entry.settle}
        onKeyDown={onKeyDown}
      />
      {quantity && unitChoices(quantity).length > 1 ? (
        <UnitMenu kind={quantity} label={props.label} button={menu} />
      ) : (
        unit && <span class="unit">{unit}</span>
      )}
    </span>
  );
}

export function BoxField(props: BoxFieldProps): JSX.Element {
  const id = useId();
  const entry = useDraft(props);
  const fault = entry.patient.value ? undefined : entry.fault.value;
  const { dimension } = props;
  const sketch = useContext(LettersAtBoxes);
  const isLit = dimension !== undefined && sketch?.lit === dimension;
  return (
    <div class={props.bare ? 'cell' : 'field'} data-dimension={dimension}>
      <label for={id} class={props.bare ? 'unseen' : undefined} title={props.title}>
        <LetteredLabel label={props.label} dimension={dimension} />
      </label>
      <Box id={id} props={props} entry={entry} faulty={fault !== undefined} note={isLit ? sketch?.note : undefined} />
      {fault && (
        <span class="fault" id={`${id}-fault`} role="alert" data-code={fault.code}>
          {fault.message}. {props.written && text.field.lastGood(`${props.written} ${props.unit}`.trim())}
        </span>
      )}
    </div>
  );
}
