/**
 * Boxes beside the sketch of what goes into them. A box in use lights its dimension, a dimension that is pressed takes the
 * keyboard to its box, and one note says how that one is measured.
 */
import { useSignal } from '@preact/signals';
import type { ComponentChildren, JSX, RefObject } from 'preact';
import { useCallback, useEffect, useId, useMemo, useRef } from 'preact/hooks';
import type { MeasureId } from '../text/measures.ts';
import { SKETCHES, type SketchName } from './catalogue.ts';
import { LettersAtBoxes } from './letters-at-boxes.ts';
import { MeasureList } from './measure-list.tsx';
import { MeasureNote } from './measure-note.tsx';
import { lettersOf } from './sketch.ts';
import { SketchFigure } from './sketch-figure.tsx';

interface MeasuredProps {
  readonly sketch: SketchName;
  readonly children: ComponentChildren;
}

const BOX = 'input, select';

/** Boxes of the same sheet that stand in no form of their own, such as those of a table, belong to each sketch that has them. */
const sheetOf = (form: HTMLElement | null): HTMLElement | null | undefined => form?.closest<HTMLElement>('.sheet');

function focusBox(form: HTMLElement | null, dimension: MeasureId): void {
  const fields = [form, sheetOf(form)].map((where) => where?.querySelector(`[data-dimension="${dimension}"]`));
  fields.find(Boolean)?.querySelector<HTMLElement>(BOX)?.focus();
}

/** Follows the keyboard through the boxes of a form and those of its sheet. */
function useFocusIn(form: RefObject<HTMLElement | null>, light: (dimension: MeasureId) => void): void {
  useEffect(() => {
    const sheet = sheetOf(form.current);
    const onFocus = ({ target }: FocusEvent): void => {
      const dimension = dimensionAt(target);
      const own = (target as Element).closest('.measured');
      if (dimension && (own === null || own === form.current)) light(dimension);
    };
    sheet?.addEventListener('focusin', onFocus);
    return () => sheet?.removeEventListener('focusin', onFocus);
  }, [form, light]);
}

const dimensionAt = (target: EventTarget | null): MeasureId | undefined =>
  (target as Element | null)?.closest<HTMLElement>('[data-dimension]')?.dataset.dimension as MeasureId | undefined;

export function Measured({ sketch, children }: MeasuredProps): JSX.Element {
  const lit = useSignal<MeasureId | undefined>(undefined);
  const form = useRef<HTMLDivElement>(null);
  const note = useId();
  const letters = useMemo(() => lettersOf(SKETCHES[sketch]), [sketch]);
  const shown = lit.value !== undefined && letters[lit.value] !== undefined ? lit.value : undefined;
  const light = useCallback(
    (dimension: MeasureId): void => {
      lit.value = dimension;
    },
    [lit],
  );
  useFocusIn(form, light);
  return (
    <div class="measured" ref={form}>
      <div class="measured-grid">
        <SketchFigure
          name={sketch}
          lit={shown}
          onPick={(dimension) => {
            light(dimension);
            focusBox(form.current, dimension);
          }}
        />
        <MeasureNote id={note} letters={letters} measure={shown} />
        <MeasureList sketch={sketch} />
        <div class="measured-fields">
          <LettersAtBoxes.Provider value={{ letters, lit: shown, note }}>{children}</LettersAtBoxes.Provider>
        </div>
      </div>
    </div>
  );
}
