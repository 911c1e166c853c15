/** One row of the shim table. */
import { useSignal } from '@preact/signals';
import type { JSX } from 'preact';
import { countOf } from '../../model/expand-shims.ts';
import type { ShimRow } from '../../model/project.ts';
import { changeRow, insertRow, removeRow, sameAgain } from '../app/edits.ts';
import { showBare, unitOfShown } from '../app/quantities.ts';
import type { Role } from '../app/roles.ts';
import { activeRow, selectedValving, withValving } from '../app/store.ts';
import { shownState } from '../app/views.ts';
import { text } from '../text/en.ts';
import type { MeasureId } from '../text/measures.ts';
import { IconButton } from './icons.tsx';
import { NumberField } from './number-field.tsx';
import { hasMore, ShimMore } from './shim-more.tsx';
import { editStack, focusCell, moveWithFocus } from './stack-edits.ts';

interface RowProps {
  readonly row: ShimRow;
  readonly index: number;
  readonly role: Role;
  /** Where a dragged row would come to lie. */
  readonly drop: 'before' | 'after' | undefined;
  readonly onGrip: (event: PointerEvent) => void;
}

const ARROWS: Record<string, number> = { ArrowUp: -1, ArrowDown: 1 };

/** Arrows go from row to row, or count where that is what the column holds; with Alt they take the row along. */
function rowKeys(index: number, column: Column) {
  return (event: KeyboardEvent): void => {
    const down = event.key === 'Enter' ? (event.shiftKey ? -1 : 1) : ARROWS[event.key];
    if (down === undefined) return;
    event.preventDefault();
    if (event.key === 'Enter') focusCell(index + down, column);
    else if (event.altKey) moveWithFocus(index, index + down, column);
    else if (column === 'count') stepCount(index, -down);
    else focusCell(index + down, column);
  };
}

/** One more or one less of a row; never none. */
function stepCount(index: number, by: number): void {
  const count = countOf(selectedValving.value.shims[index]) + by;
  if (count < 1) return;
  const label = by > 0 ? text.stack.oneMore(index + 1) : text.stack.oneLess(index + 1);
  editStack((valving) => changeRow(valving, index, { count }), label);
}

type Column = 'outerDiameter_mm' | 'thickness_mm' | 'count';
const COLUMNS: Record<Column, { label: string; kind: 'length' | 'count'; dimension?: MeasureId }> = {
  outerDiameter_mm: { label: text.stack.diameter, kind: 'length', dimension: 'shimDiameter' },
  thickness_mm: { label: text.stack.thickness, kind: 'length', dimension: 'shimThickness' },
  count: { label: text.stack.count, kind: 'count' },
};

function Cell({ row, index, column }: { row: ShimRow; index: number; column: Column }): JSX.Element {
  const { label, kind, dimension } = COLUMNS[column];
  return (
    <NumberField
      bare
      label={text.stack.field(label, index + 1)}
      kind={kind}
      dimension={dimension}
      value={column === 'count' ? countOf(row) : row[column]}
      edit={(value) => withValving((valving) => changeRow(valving, index, { [column]: value }))}
      cell={`${index}:${column}`}
      onKeyDown={rowKeys(index, column)}
    />
  );
}

function CountCell({ row, index }: { row: ShimRow; index: number }): JSX.Element {
  const n = index + 1;
  return (
    <span class="stepper">
      <IconButton
        icon="minus"
        label={text.stack.oneLess(n)}
        disabled={countOf(row) <= 1}
        onClick={() => stepCount(index, -1)}
      />
      <Cell row={row} index={index} column="count" />
      <IconButton icon="plus" label={text.stack.oneMore(n)} onClick={() => stepCount(index, 1)} />
    </span>
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

/** With the last row its button goes: the keyboard then stays at the row before. */
function removeAndStay(index: number): void {
  const isLast = index === selectedValving.value.shims.length - 1;
  if (editStack((v) => removeRow(v, index), text.stack.remove(index + 1)) && isLast)
    focusCell(index - 1, 'outerDiameter_mm');
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
      <IconButton icon="remove" label={text.stack.remove(n)} onClick={() => removeAndStay(index)} />
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
      <td class="number-col" data-label={`${text.stack.lift}, ${unitOfShown('lift')}`}>
        {lift === undefined ? text.readout.none : showBare('lift', lift)}
      </td>
      <td class="number-col" data-label={`${text.stack.stress}, ${unitOfShown('stress')}`}>
        {stress === undefined ? text.readout.none : showBare('stress', stress)}
      </td>
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

export function ShimTableRow({ row, index, role, drop, onGrip }: RowProps): JSX.Element {
  const isOpen = useSignal(false);
  const toggle = (): void => {
    isOpen.value = !isOpen.value;
  };
  const active = activeRow.value === index ? 'active' : '';
  return (
    <>
      <tr class={`${active} ${drop ? `drop-${drop}` : ''}`} {...marking(index)}>
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
        <td class="count-col">
          <CountCell row={row} index={index} />
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
