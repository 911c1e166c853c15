/** The walk through the parts by keys, and the one place where the numbers of a part stand. */

import type { JSX } from 'preact';
import { text } from '../text/en.ts';
import { activePart, markPart } from './section-choices.ts';
import { type SectionPart, sectionParts } from './section-parts.ts';

/** Where a key leads from one part; undefined for keys that do not walk. From nowhere, forward is the first. */
export function nextPart(key: string, now: number, count: number): number | undefined {
  const back = now < 0 ? count - 1 : (now - 1 + count) % count;
  const moves: Readonly<Record<string, number>> = {
    ArrowRight: (now + 1) % count,
    ArrowDown: (now + 1) % count,
    ArrowLeft: back,
    ArrowUp: back,
    Home: 0,
    End: count - 1,
  };
  return moves[key];
}

const optionId = (id: string): string => `part-${id}`;

const aloud = ({ name, figures }: SectionPart): string =>
  `${name}: ${figures.map(([figure, value]) => `${figure} ${value}`).join(', ')}`;

/** Lies over the drawing and lets the pointer through; each option says what the readout shows. */
export function PartWalk(): JSX.Element {
  const parts = sectionParts.value;
  const now = parts.findIndex(({ id }) => id === activePart.value);
  const onKeyDown = (event: KeyboardEvent): void => {
    const next = nextPart(event.key, now, parts.length);
    if (next === undefined) return;
    event.preventDefault();
    markPart(parts[next]);
  };
  return (
    <div
      class="part-walk"
      role="listbox"
      tabIndex={0}
      aria-label={text.sectionParts.walk}
      aria-activedescendant={now < 0 ? undefined : optionId(parts[now].id)}
      onKeyDown={onKeyDown}
      onFocus={() => now < 0 && markPart(parts[0])}
      onBlur={() => markPart(undefined)}
    >
      {parts.map((part) => (
        <div
          key={part.id}
          id={optionId(part.id)}
          class="unseen"
          role="option"
          tabIndex={-1}
          aria-selected={part.id === activePart.value}
        >
          {aloud(part)}
        </div>
      ))}
    </div>
  );
}

/** The numbers of the part under pointer or keys. */
export function PartReadout(): JSX.Element | null {
  const part = sectionParts.value.find(({ id }) => id === activePart.value);
  if (!part) return null;
  return (
    <div class="part-readout" data-reads={part.id}>
      <b>{part.name}</b>
      <dl>
        {part.figures.map(([name, value]) => (
          <div key={name}>
            <dt>{name}</dt>
            <dd>{value}</dd>
          </div>
        ))}
      </dl>
    </div>
  );
}
