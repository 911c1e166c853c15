/** Every unit of one's own in one list, how numbers are written, and the way back to one family. */
import { signal } from '@preact/signals';
import type { JSX } from 'preact';
import { useEffect, useRef } from 'preact/hooks';
import { unitChoices, unitIn } from '../../units/own-units.ts';
import { NUMBER_CHOICES, numberChoice, ownUnits, pickUnit, resetUnits, units } from '../app/preferences.ts';
import { showNumber } from '../app/quantities.ts';
import { Act } from '../projects/bar.tsx';
import { LISTED_KINDS, type ListedKind, unitsWords as words } from '../text/units.ts';
import { Choice } from './choice.tsx';
import { IconButton } from './icons.tsx';
import { SelectField } from './select-field.tsx';

const isShown = signal(false);

function KindChoice({ kind }: { kind: ListedKind }): JSX.Element {
  return (
    <div class={ownUnits.value[kind] ? 'own' : undefined} data-kind={kind}>
      <SelectField
        label={words.kinds[kind]}
        options={unitChoices(kind)}
        chosen={unitIn(units.value, kind)}
        name={(symbol) => symbol}
        onChoose={(symbol) => pickUnit(kind, symbol)}
      />
    </div>
  );
}

function NumberSigns(): JSX.Element {
  return (
    <section aria-label={words.numbers} class="number-signs">
      <h3>{words.numbers}</h3>
      <Choice
        label={words.numbers}
        options={NUMBER_CHOICES}
        chosen={numberChoice.value}
        name={(each) => words.numberChoices[each]}
        onChoose={(each) => {
          numberChoice.value = each;
        }}
      />
      <p class="hint">
        {words.numbersExample(showNumber(1234.5, 1))} {words.numbersWhy}
      </p>
    </section>
  );
}

function UnitsDialog(): JSX.Element {
  const dialog = useRef<HTMLDialogElement>(null);
  useEffect(() => dialog.current?.showModal(), []);
  const close = (): void => {
    isShown.value = false;
  };
  return (
    <dialog ref={dialog} class="projects-view units-view" aria-labelledby="units-title" onClose={close}>
      <div class="view-head">
        <h2 id="units-title">{words.title}</h2>
        <Act label={words.close} onClick={() => dialog.current?.close()} />
      </div>
      <NumberSigns />
      <p class="hint">{words.hint}</p>
      <div class="unit-list">
        {LISTED_KINDS.map((kind) => (
          <KindChoice key={kind} kind={kind} />
        ))}
      </div>
      <p>
        <Act label={words.reset} disabled={Object.keys(ownUnits.value).length === 0} onClick={resetUnits} />
      </p>
    </dialog>
  );
}

/** The button of the top bar; a dot says that something is in a unit of its own. @param before folds what the button stands in */
export function UnitsButton({ before }: { before?: () => void }): JSX.Element {
  const own = Object.keys(ownUnits.value).length;
  return (
    <IconButton
      icon="rule"
      label={words.open(own)}
      class={`units-button ${own > 0 ? 'own' : ''}`}
      onClick={() => {
        before?.();
        isShown.value = true;
      }}
    />
  );
}

export const UnitsView = (): JSX.Element | null => (isShown.value ? <UnitsDialog /> : null);
