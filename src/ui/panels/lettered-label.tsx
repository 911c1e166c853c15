/** The name of a box, with the letter that it has in the sketch beside it. */
import type { JSX } from 'preact';
import { useContext } from 'preact/hooks';
import { LettersAtBoxes } from '../sketches/letters-at-boxes.ts';
import { Badge } from '../sketches/measure-note.tsx';
import type { MeasureId } from '../text/measures.ts';

interface LabelProps {
  readonly label: string;
  readonly dimension: MeasureId | undefined;
}

export function LetteredLabel({ label, dimension }: LabelProps): JSX.Element {
  const sketch = useContext(LettersAtBoxes);
  const letter = dimension && sketch?.letters[dimension];
  if (!letter) return <>{label}</>;
  return (
    <span class="lettered">
      <Badge letter={letter} isLit={sketch.lit === dimension} />
      <span>{label}</span>
    </span>
  );
}
