/** All dimensions of a sketch with how each is measured: to read at one go, or from paper. */
import { useSignal } from '@preact/signals';
import type { JSX } from 'preact';
import { text } from '../text/en.ts';
import { SKETCHES, type SketchName } from './catalogue.ts';
import { Badge, MeasureText } from './measure-note.tsx';
import { lettersOf } from './sketch.ts';

export function MeasureList({ sketch }: { sketch: SketchName }): JSX.Element {
  const isOpen = useSignal(false);
  const letters = lettersOf(SKETCHES[sketch]);
  return (
    <details
      class="measure-list"
      onToggle={(event) => {
        isOpen.value = event.currentTarget.open;
      }}
    >
      <summary>{text.measure.all}</summary>
      {isOpen.value && (
        <ul>
          {SKETCHES[sketch].dimensions.map(({ of }) => (
            <li key={of}>
              <Badge letter={letters[of] ?? ''} /> <MeasureText measure={of} />
            </li>
          ))}
        </ul>
      )}
    </details>
  );
}
