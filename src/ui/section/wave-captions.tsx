/** Over the two halves of a waved stack: which is which, and how far each lifts. */

import type { JSX } from 'preact';
import { show } from '../app/quantities.ts';
import { text } from '../text/en.ts';
import type { DrawnSection, WavedSection } from './drawn-section.ts';
import type { Side } from './plan.ts';
import { NARROW_PX, type Sheet } from './sheet.ts';

/** From the axis, under the scale and the legend, and between lines [px]. */
const BESIDE_PX = 12;
const TOP_PX = 86;
const LINE_PX = 14;

interface CaptionProps {
  readonly sheet: Sheet;
  readonly side: Side;
  readonly name: string;
  readonly cut: DrawnSection;
}

function Caption({ sheet, side, name, cut }: CaptionProps): JSX.Element | null {
  const { state } = cut.stack;
  if (!state) return null;
  const words = text.wave;
  const x = sheet.axisX + side * BESIDE_PX;
  const rim = show('lift', state.shimEdgeLift_m[0]);
  const lines = sheet.width < NARROW_PX ? [rim] : [words.rim(rim), words.opening(show('lift', state.seatOpening_m))];
  return (
    <text class="callout cut-name" data-cut={name} y={TOP_PX} style={{ textAnchor: side === 1 ? 'start' : 'end' }}>
      <tspan class="name" x={x}>
        {name}
      </tspan>
      {lines.map((line) => (
        <tspan key={line} x={x} dy={LINE_PX}>
          {line}
        </tspan>
      ))}
    </text>
  );
}

export function WaveCaptions({ sheet, waved }: { sheet: Sheet; waved: WavedSection }): JSX.Element {
  return (
    <>
      <Caption sheet={sheet} side={-1} name={text.wave.crestOf(waved.waves)} cut={waved.crest} />
      <Caption sheet={sheet} side={1} name={text.wave.trough} cut={waved.trough} />
    </>
  );
}
