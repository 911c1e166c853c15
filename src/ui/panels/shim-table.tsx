/** The stack as rows to type in, piston side first, linked with the drawing. */
import { useSignal } from '@preact/signals';
import type { JSX } from 'preact';
import { useRef } from 'preact/hooks';
import { countOf } from '../../model/expand-shims.ts';
import { stackHeight } from '../../model/lay-shims.ts';
import { isPlaceholder } from '../app/blank-project.ts';
import { insertRow, sameAgain } from '../app/edits.ts';
import { looksLikeList } from '../app/lists.ts';
import { showLength, unitOf, unitOfShown } from '../app/quantities.ts';
import { rolesOf } from '../app/roles.ts';
import { place, project, selectedBuild, selectedValving } from '../app/store.ts';
import { text } from '../text/en.ts';
import { AssumedNote } from './assumed-note.tsx';
import { BaseBesideFields, NeedleFields } from './beside-fields.tsx';
import { Icon } from './icons.tsx';
import { MaterialFields } from './material-fields.tsx';
import { copyList, PasteBox, pasteRows } from './paste-box.tsx';
import { ShimTableRow } from './shim-row.tsx';
import { SpringFields } from './spring-fields.tsx';
import { editStack, moveWithFocus } from './stack-edits.ts';
import { StackFields } from './stack-fields.tsx';

function useRowDrag() {
  const body = useRef<HTMLTableSectionElement>(null);
  const drag = useSignal<{ readonly from: number; readonly to: number } | undefined>(undefined);
  const rowAt = (y: number): number => {
    const rows = [...(body.current?.querySelectorAll(':scope > tr:not(.shim-more)') ?? [])];
    const below = rows.findIndex((row) => y < row.getBoundingClientRect().bottom);
    return below === -1 ? rows.length - 1 : below;
  };
  const start = (from: number, event: PointerEvent): void => {
    const grip = event.currentTarget as HTMLElement;
    grip.setPointerCapture(event.pointerId);
    const move = (e: PointerEvent): void => {
      drag.value = { from, to: rowAt(e.clientY) };
    };
    const end = (e: PointerEvent): void => {
      grip.removeEventListener('pointermove', move);
      drag.value = undefined;
      if (e.type === 'pointerup') moveWithFocus(from, rowAt(e.clientY));
    };
    grip.addEventListener('pointermove', move);
    grip.addEventListener('pointerup', end, { once: true });
    grip.addEventListener('pointercancel', end, { once: true });
  };
  const dropAt = (row: number): 'before' | 'after' | undefined => {
    const { from, to } = drag.value ?? { from: row, to: row };
    return row !== to || from === to ? undefined : to < from ? 'before' : 'after';
  };
  return { body, dropAt, start };
}

/** The unit of a column stands once, in its head. */
function ColumnHead({ name, unit, class: kind }: { name: string; unit: string; class?: string }): JSX.Element {
  return (
    <th scope="col" class={kind}>
      {name} <span class="column-unit">{unit}</span>
    </th>
  );
}

function TableHead(): JSX.Element {
  return (
    <thead>
      <tr>
        <th scope="col">{text.stack.position}</th>
        <ColumnHead name={text.stack.diameter} unit={unitOf('length')} />
        <ColumnHead name={text.stack.thickness} unit={unitOf('length')} />
        <th scope="col" class="count-col">
          {text.stack.count}
        </th>
        <th scope="col" class="words-col">
          {text.stack.role}
        </th>
        <ColumnHead name={text.stack.lift} unit={unitOfShown('lift')} class="number-col" />
        <ColumnHead name={text.stack.stress} unit={unitOfShown('stress')} class="number-col" />
        <th scope="col">
          <span class="unseen">{text.stack.actions}</span>
        </th>
      </tr>
    </thead>
  );
}

function Actions({ onPaste }: { onPaste: () => void }): JSX.Element {
  const rows = selectedValving.value.shims;
  const shims = rows.reduce((sum, row) => sum + countOf(row), 0);
  const addRow = (): void => {
    editStack((v) => insertRow(v, v.shims.length, sameAgain(v.shims[v.shims.length - 1])), text.stack.add);
  };
  return (
    <div class="stack-acts">
      <button type="button" class="button" onClick={addRow}>
        <Icon name="plus" /> {text.stack.add}
      </button>
      <button type="button" class="button" onClick={onPaste}>
        {text.stack.paste}
      </button>
      <button type="button" class="button" onClick={() => void copyList()}>
        {text.stack.copy}
      </button>
      <span class="total">{text.stack.total(shims, showLength(stackHeight(selectedValving.value)))}</span>
    </div>
  );
}

export function ShimTable(): JSX.Element {
  const drag = useRowDrag();
  const pasting = useSignal(false);
  const valving = selectedValving.value;
  const roles = rolesOf(valving.shims);
  const title = `${text.placeOf(project.value.damper.layout, place.value).stack}, ${selectedBuild.value.name}`;
  const onPaste = (event: ClipboardEvent): void => {
    const pasted = event.clipboardData?.getData('text/plain') ?? '';
    if (event.target instanceof HTMLTextAreaElement || !looksLikeList(pasted)) return;
    event.preventDefault();
    pasteRows(pasted);
  };
  return (
    <section class="sheet stack" aria-label={title} onPaste={onPaste} id="stack" tabIndex={-1}>
      <header>
        <h2>{title}</h2>
        <span class="hint">{text.stack.keysHint}</span>
      </header>
      {place.value === 'baseCompression' && <AssumedNote part="baseCompression" />}
      {isPlaceholder(project.value, place.value, valving) && <p class="sheet-note assumed">{text.blank.placeholder}</p>}
      <table class="shims">
        <TableHead />
        <tbody ref={drag.body}>
          {valving.shims.map((row, index) => (
            <ShimTableRow
              key={index}
              row={row}
              index={index}
              role={roles[index]}
              drop={drag.dropAt(index)}
              onGrip={(event) => drag.start(index, event)}
            />
          ))}
        </tbody>
      </table>
      <Actions
        onPaste={() => {
          pasting.value = true;
        }}
      />
      {pasting.value && (
        <PasteBox
          onClose={() => {
            pasting.value = false;
          }}
        />
      )}
      <StackFields />
      <SpringFields />
      <MaterialFields />
      {place.value === 'baseCompression' ? <BaseBesideFields /> : <NeedleFields />}
    </section>
  );
}
