/** A stack drawn small, each shim by its diameter with heights exaggerated, beside its list. */
import type { JSX } from 'preact';
import { countOf, expandShims } from '../../model/expand-shims.ts';
import type { ShimRow } from '../../model/project.ts';
import { showField, writeField } from '../app/quantities.ts';
import { text } from '../text/en.ts';
import { searchWords as words } from '../text/search.ts';

/** Height of the drawing of a shim over its thickness, against its width over its diameter. */
const EXAGGERATION = 12;
const GAP_MM = 0.5;

function Drawing({ rows }: { rows: readonly ShimRow[] }): JSX.Element {
  const shims = expandShims(rows);
  const widest = Math.max(1, ...shims.map(({ outerDiameter_mm }) => outerDiameter_mm));
  let y = GAP_MM;
  const bars = shims.map(({ outerDiameter_mm, thickness_mm }) => {
    const height = thickness_mm * EXAGGERATION;
    const bar = { x: (widest - outerDiameter_mm) / 2, y, width: outerDiameter_mm, height };
    y += height + GAP_MM;
    return bar;
  });
  return (
    <svg viewBox={`0 0 ${widest} ${y}`} aria-hidden="true">
      {bars.map((bar, i) => (
        <rect key={i} {...bar} />
      ))}
      <path d={`M${widest / 2} 0V${y}`} />
    </svg>
  );
}

export function StackFigure({ name, rows }: { name: string; rows: readonly ShimRow[] }): JSX.Element {
  return (
    <figure class="found-stack">
      <figcaption>{name}</figcaption>
      <Drawing rows={rows} />
      <ul>
        {rows.map((row, i) => (
          <li key={i}>
            {words.keepRow(
              countOf(row),
              text.difference.size(writeField('length', row.outerDiameter_mm), showField('length', row.thickness_mm)),
            )}
          </li>
        ))}
      </ul>
    </figure>
  );
}
