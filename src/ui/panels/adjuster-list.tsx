/** What a rider turns without opening the damper: every adjuster of the build on show, by clicks from closed. */
import type { JSX } from 'preact';
import { type Adjuster, adjustersOf, withClicks } from '../../model/adjusters.ts';
import { InputError } from '../../units/fault.ts';
import { type EditFault, editProject, faultInWords } from '../app/apply.ts';
import { editOrTell } from '../app/edit-or-tell.ts';
import { readField } from '../app/quantities.ts';
import { project, selectedBuild, withBuild } from '../app/store.ts';
import { text } from '../text/en.ts';
import { BoxField } from './box-field.tsx';
import { IconButton } from './icons.tsx';

const turned = (id: Adjuster['id'], clicks: number) =>
  withBuild(selectedBuild.value.id, (build) => withClicks(build, id, clicks));

interface AdjusterProps {
  readonly adjuster: Adjuster;
  readonly name: string;
  readonly turn: (clicks: number) => void;
}

/** Arrow keys turn it by a click. */
function ClicksBox({ adjuster, name, turn }: AdjusterProps): JSX.Element {
  const { id, clicks, clickCount } = adjuster;
  const attempt = (typed: string, session: string): EditFault | undefined => {
    try {
      const read = readField('count', typed);
      if (!(Number.isInteger(read) && read >= 0 && read <= clickCount))
        return { code: 'adjuster.clicks', message: text.fault(typed, text.adjusters.wanted(clickCount)) };
      return editProject(() => turned(id, read), { label: text.adjusters.turn(name), mergeKey: session });
    } catch (error) {
      if (error instanceof InputError) return faultInWords(error.fault);
      throw error;
    }
  };
  const onKeyDown = (event: KeyboardEvent): void => {
    const step = event.key === 'ArrowUp' ? 1 : event.key === 'ArrowDown' ? -1 : 0;
    if (step === 0) return;
    event.preventDefault();
    if (clicks + step >= 0 && clicks + step <= clickCount) turn(clicks + step);
  };
  return (
    <BoxField
      bare
      label={text.adjusters.clicks(name)}
      title={text.adjusters.keys}
      unit={text.adjusters.of(clickCount)}
      written={String(clicks)}
      attempt={attempt}
      onKeyDown={onKeyDown}
    />
  );
}

function AdjusterRow({ adjuster }: { adjuster: Adjuster }): JSX.Element {
  const { id, clicks, clickCount } = adjuster;
  const name = text.adjusterOf(project.value.damper.layout, id);
  const step = (to: number): void => {
    editOrTell(() => turned(id, to), text.adjusters.turn(name));
  };
  return (
    <li class="adjuster" data-adjuster={id}>
      <span class="adjuster-name">{name}</span>
      <IconButton
        icon="minus"
        label={text.adjusters.closer(name)}
        disabled={clicks <= 0}
        onClick={() => step(clicks - 1)}
      />
      <ClicksBox adjuster={adjuster} name={name} turn={step} />
      <IconButton
        icon="plus"
        label={text.adjusters.opener(name)}
        disabled={clicks >= clickCount}
        onClick={() => step(clicks + 1)}
      />
    </li>
  );
}

/** Nothing for a build without adjusters. */
export function AdjusterList(): JSX.Element | null {
  const adjusters = adjustersOf(selectedBuild.value);
  if (adjusters.length === 0) return null;
  return (
    <section class="sheet adjusters" aria-label={text.adjusters.title}>
      <header>
        <h2>{text.adjusters.title}</h2>
        <span class="hint">{text.adjusters.fromClosed}</span>
      </header>
      <ul>
        {adjusters.map((adjuster) => (
          <AdjusterRow key={`${selectedBuild.value.id}:${adjuster.id}`} adjuster={adjuster} />
        ))}
      </ul>
    </section>
  );
}
