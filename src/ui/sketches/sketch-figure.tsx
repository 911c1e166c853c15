/** A sketch by its name: a drawing whose dimensions carry letters, one of them lit. */
import type { JSX } from 'preact';
import { useId } from 'preact/hooks';
import { text } from '../text/en.ts';
import type { MeasureId } from '../text/measures.ts';
import { SKETCHES, type SketchName } from './catalogue.ts';
import { DimensionMark } from './dimension-mark.tsx';
import { lettersOf, SKETCH_WIDTH } from './sketch.ts';

interface FigureProps {
  readonly name: SketchName;
  readonly lit?: MeasureId;
  readonly onPick?: (dimension: MeasureId) => void;
}

export function SketchFigure({ name, lit, onPick }: FigureProps): JSX.Element {
  const hatch = `hatch${useId()}`;
  const sketch = SKETCHES[name];
  const letters = lettersOf(sketch);
  return (
    <svg
      class="sketch"
      data-sketch={name}
      viewBox={`0 0 ${SKETCH_WIDTH} ${sketch.height}`}
      role="img"
      aria-label={text.sketches[name]}
    >
      <defs>
        <pattern id={hatch} width="4" height="4" patternUnits="userSpaceOnUse" patternTransform="rotate(45)">
          <rect class="metal-ground" width="4" height="4" />
          <path class="hatch" d="M0 0V4" />
        </pattern>
      </defs>
      {sketch.draw(`url(#${hatch})`)}
      {sketch.dimensions.map((dimension) => (
        <DimensionMark
          key={dimension.of}
          dimension={dimension}
          letter={letters[dimension.of] ?? ''}
          isLit={dimension.of === lit}
          onPick={() => onPick?.(dimension.of)}
        />
      ))}
    </svg>
  );
}
