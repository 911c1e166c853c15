/** One row of the shim table. */
import { useSignal } from '@preact/signals';
import type { JSX } from 'preact';
import { countOf } from '../../model/expand-shims.ts';
import type { ShimRow } from '../../model/project.ts';
import { changeRow, insertRow, removeRow, sameAgain } from '../app/edits.ts';
import { show } from '../app/quantities.ts';
import type { Role } from '../app/roles.ts';
import { activeRow, selectedValving, withValving } from '../app/store.ts';
import { shownState } from '../app/views.ts';
import { text } from '../text/en.ts';
import { IconButton } from './icons.tsx';
import { NumberField } from './number-field.tsx';
import { hasMore, ShimMore } from './shim-more.tsx';
import { editStack, focusCell, moveWithFocus } from './stack-edits.ts';

interface RowProps {
  readonly row: ShimRow;
  readonly index: number;
  readonly role: Role;
  readonly isDropTarget: boolean;
  readonly onGrip: (event: PointerEvent) => void;
}

const STEPS: Record<string, number> = { ArrowUp: -1, ArrowDown: 1, Enter: 1 };

function rowKeys(index: number, column: string) {
  return (event: KeyboardEvent): void => {
    const step = STEPS[event.key];
    if (step === undefined) return;
    event.preventDefault();
    if (event.altKey && event.key !== 'Enter') moveWithFocus(index, index + step, column);
    else focusCell(index + step, column);
  };
}

type Column = 'outerDiameter_mm' | 'thickness_mm' | 'count';
const COLUMNS: Record<Column, { label: string; kind: 'length' | 'count' }> = {
  outerDiameter_mm: { label: text.stack.diameter, kind: 'length' },
  thickness_mm: { label: text.stack.thickness, kind: 'length' },
  count: { label: text.stack.count, kind: 'count' },
};

function Cell({ row, index, column }: { row: ShimRow; index: number; column: Column }): JSX.Element {
  const { label, kind } = COLUMNS[column];
  return (
    <NumberField
      bare
      label={text.stack.field(label, index + 1)}
      kind={kind}
      value={column === 'count' ? countOf(row) : row[column]}
      edit={(value) => withValving((valving) => changeRow(valving, index, { [column]: value }))}
      cell={`${index}:${column}`}
      onKeyDown={rowKeys(index, column)}
    />
  );
}

/** The largest of the single shims of this row. */
function ofRow(index: number, list: readonly number[] | undefined): number | undefined {
  if (!list) return undefined;
  const rows = selectedValving.value.shims;
  const first = rows.slice(0, index).reduce((sum, row) => sum + countOf(row), 0);
  const own = list.slice(first, first + countOf(rows[index]));
  return own.length === 0 ? undefined : Math.max(...own);
}

interface ActionProps {
  readonly row: ShimRow;
  readonly index: number;
  readonly isOpen: boolean;
  readonly onMore: () => void;
}

function RowActions({ row, index, isOpen, onMore }: ActionProps): JSX.Element {
  const rows = selectedValving.value.shims.length;
  const n = index + 1;
  return (
    <td class="row-acts">
      <IconButton
        icon="more"
        label={text.stack.moreOf(n)}
        class={hasMore(row, index) ? 'filled' : ''}
        expanded={isOpen}
        onClick={onMore}
      />
      <IconButton
        icon="up"
        label={text.stack.up(n)}
        disabled={index === 0}
        onClick={() => moveWithFocus(index, index - 1)}
      />
      <IconButton
        icon="down"
        label={text.stack.down(n)}
        disabled={n === rows}
        onClick={() => moveWithFocus(index, n)}
      />
      <IconButton
        icon="duplicate"
        label={text.stack.duplicate(n)}
        onClick={() => editStack((v) => insertRow(v, n, sameAgain(row)), text.stack.duplicate(n))}
      />
      <IconButton
        icon="remove"
        label={text.stack.remove(n)}
        onClick={() => editStack((v) => removeRow(v, index), text.stack.remove(n))}
      />
    </td>
  );
}

interface ReadingsProps {
  readonly index: number;
  readonly role: Role;
}

function Readings({ index, role }: ReadingsProps): JSX.Element {
  const state = shownState.value;
  const stress = ofRow(index, state?.shimStress_Pa);
  const lift = ofRow(index, state?.shimEdgeLift_m);
  return (
    <>
      <td class="words-col">{text.stack.roles[role]}</td>
      <td class="number-col">{lift === undefined ? text.readout.none : show('lift', lift)}</td>
      <td class="number-col">{stress === undefined ? text.readout.none : show('stress', stress)}</td>
    </>
  );
}

/** Marks the shim in the drawing while its row has the pointer or the focus. */
const marking = (index: number) => {
  const enter = (): void => {
    activeRow.value = index;
  };
  const leave = (): void => {
    if (activeRow.value === index) activeRow.value = undefined;
  };
  return { onPointerEnter: enter, onPointerLeave: leave, onFocusIn: enter, onFocusOut: leave };
};

export function ShimTableRow({ row, index, role, isDropTarget, onGrip }: RowProps): JSX.Element {
  const isOpen = useSignal(false);
  const toggle = (): void => {
    isOpen.value = !isOpen.value;
  };
  const active = activeRow.value === index ? 'active' : '';
  return (
    <>
      <tr class={`${active} ${isDropTarget ? 'drop' : ''}`} {...marking(index)}>
        <th scope="row" class="grip" title={text.stack.drag} onPointerDown={onGrip}>
          <span class="unseen">{text.stack.row(index + 1)}</span>
          <span aria-hidden="true">{index + 1}</span>
        </th>
        <td>
          <Cell row={row} index={index} column="outerDiameter_mm" />
        </td>
        <td>
          <Cell row={row} index={index} column="thickness_mm" />
        </td>
        <td>
          <Cell row={row} index={index} column="count" />
        </td>
        <Readings index={index} role={role} />
        <RowActions row={row} index={index} isOpen={isOpen.value} onMore={toggle} />
      </tr>
      {isOpen.value && (
        <tr class={`shim-more ${active}`} {...marking(index)}>
          <td colSpan={8}>
            <ShimMore row={row} index={index} />
          </td>
        </tr>
      )}
    </>
  );
}
