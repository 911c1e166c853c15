/** How one dimension is measured, to which precision, what often goes wrong, and what it does to the curve. */
import type { JSX } from 'preact';
import { showRounded } from '../app/quantities.ts';
import { text } from '../text/en.ts';
import type { MeasureId } from '../text/measures.ts';
import { PRECISIONS } from './precisions.ts';
import type { Letters } from './sketch.ts';

/** The letter is drawn and not written, so that it is no part of the name of a box. */
export const Badge = ({ letter, isLit }: { letter: string; isLit?: boolean }): JSX.Element => (
  <span class={`letter ${isLit ? 'lit' : ''}`} data-letter={letter} aria-hidden="true" />
);

export function MeasureText({ measure }: { measure: MeasureId }): JSX.Element {
  const { what, how, trap, curve } = text.measures[measure];
  const precision = PRECISIONS[measure];
  return (
    <>
      <b>{what}</b> {how} {precision && text.measure.within(showRounded(...precision))}
      {trap && <span class="trap">{trap}</span>}
      <span class="effect">
        {text.measure.curve} {curve}
      </span>
    </>
  );
}

interface NoteProps {
  readonly id: string;
  readonly letters: Letters;
  readonly measure: MeasureId | undefined;
}

export function MeasureNote({ id, letters, measure }: NoteProps): JSX.Element {
  if (measure === undefined)
    return (
      <p class="measure-note hint" id={id}>
        {text.measure.none}
      </p>
    );
  return (
    <p class="measure-note" id={id} data-measure={measure}>
      <Badge letter={letters[measure] ?? ''} isLit /> <MeasureText measure={measure} />
    </p>
  );
}
