/** The drawing as a table: every part with its numbers, beside the large view and for those who do not see the drawing. */

import type { JSX } from 'preact';
import { text } from '../text/en.ts';
import { isMarked, markPart } from './section-choices.ts';
import { sectionParts } from './section-parts.ts';

export function PartsTable(): JSX.Element {
  const words = text.sectionParts;
  return (
    <table class="parts">
      <caption>{words.table}</caption>
      <thead>
        <tr>
          <th scope="col">{words.part}</th>
          <th scope="col">{words.numbers}</th>
        </tr>
      </thead>
      <tbody>
        {sectionParts.value.map((part) => (
          <tr
            key={part.id}
            data-of={part.id}
            class={isMarked(part.id) ? 'active' : ''}
            onPointerEnter={() => markPart(part)}
            onPointerLeave={() => markPart(undefined)}
          >
            <th scope="row">{part.name}</th>
            <td>
              {part.figures.map(([name, value]) => (
                <span key={name}>
                  {name} <b>{value}</b>
                </span>
              ))}
            </td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}
