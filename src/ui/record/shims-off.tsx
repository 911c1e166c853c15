/** A stack as it comes off, threaded on a wire shim by shim, and taken over into the baseline build when all are off. */
import { useSignal } from '@preact/signals';
import type { JSX } from 'preact';
import type { ValvePlace } from '../../model/project.ts';
import { FIRST_OFF, type ShimsOff } from '../../model/record.ts';
import { InputError } from '../../units/fault.ts';
import { faultInWords } from '../app/apply.ts';
import { editOrTell } from '../app/edit-or-tell.ts';
import { changeValving, replaceRows } from '../app/edits.ts';
import { tell } from '../app/notices.ts';
import { keyPut } from '../app/optional-parts.ts';
import { readField, unitOf, writeField } from '../app/quantities.ts';
import { baseline, project } from '../app/store.ts';
import { SelectField } from '../panels/select-field.tsx';
import { recordWords } from '../text/record.ts';
import { recordOf, withRecord } from './record-state.ts';

const words = recordWords.wire;

/** The rebound stack lies under the nut; the others come off behind a piston, or from the side of their nut. */
const startOf = (place: ValvePlace): ShimsOff => ({
  firstOff: place === 'pistonCompression' ? 'at-piston' : 'far-from-piston',
  shims: [],
});

export const offAt = (place: ValvePlace): ShimsOff => recordOf(project.value).shimsOff?.[place] ?? startOf(place);

const withOff = (place: ValvePlace, off: ShimsOff | undefined) => {
  const all = keyPut(recordOf(project.value).shimsOff ?? {}, place, off);
  return withRecord('shimsOff', Object.keys(all).length > 0 ? all : undefined);
};

/** Piston side first, as a build has them. */
export const pistonSideFirst = ({ firstOff, shims }: ShimsOff): ShimsOff['shims'] =>
  firstOff === 'at-piston' ? shims : [...shims].reverse();

export const shimInWords = ({ outerDiameter_mm, thickness_mm, count = 1 }: ShimsOff['shims'][number]): string =>
  `${words.shim(count, writeField('length', outerDiameter_mm), writeField('length', thickness_mm))} ${unitOf('length')}`;

const BOXES = ['diameter', 'thickness', 'count'] as const;
type Box = (typeof BOXES)[number];
const EMPTY: Readonly<Record<Box, string>> = { diameter: '', thickness: '', count: '1' };

/** What was typed of the shim in hand, threaded on; or says what cannot be read. */
function thread(place: ValvePlace, typed: Readonly<Record<Box, string>>): boolean {
  const off = offAt(place);
  try {
    const shim = {
      outerDiameter_mm: readField('length', typed.diameter),
      thickness_mm: readField('length', typed.thickness),
      count: readField('count', typed.count),
    };
    return editOrTell(() => withOff(place, { ...off, shims: [...off.shims, shim] }), words.threaded(shimInWords(shim)));
  } catch (error) {
    if (!(error instanceof InputError)) throw error;
    tell(faultInWords(error.fault).message, { tone: 'problem' });
    return false;
  }
}

function ShimInHand({ place }: { place: ValvePlace }): JSX.Element {
  const typed = useSignal(EMPTY);
  const submit = (event: Event): void => {
    event.preventDefault();
    if (!thread(place, typed.value)) return;
    typed.value = EMPTY;
    (event.currentTarget as HTMLFormElement).querySelector('input')?.focus();
  };
  return (
    <form class="shim-in-hand" onSubmit={submit}>
      {BOXES.map((box) => (
        <label key={box}>
          <span>{words[box]}</span>
          <span class="box">
            <input
              aria-label={words[box]}
              inputMode="decimal"
              autocomplete="off"
              required
              value={typed.value[box]}
              onInput={(event) => {
                typed.value = { ...typed.value, [box]: event.currentTarget.value };
              }}
            />
            <span class="unit">{box === 'count' ? '' : unitOf('length')}</span>
          </span>
        </label>
      ))}
      <button type="submit" class="button main">
        {words.thread}
      </button>
    </form>
  );
}

function takeOver(place: ValvePlace): void {
  const shims = pistonSideFirst(offAt(place)).map((shim) => ({ ...shim }));
  const edit = () => changeValving(project.value, baseline.value.id, place, (valving) => replaceRows(valving, shims));
  if (editOrTell(edit, words.takeOverLabel)) tell(words.takenOver);
}

export function ShimsOffWire({ place }: { place: ValvePlace }): JSX.Element {
  const off = offAt(place);
  const count = off.shims.reduce((sum, shim) => sum + (shim.count ?? 1), 0);
  return (
    <section class="found wire" aria-label={words.title}>
      <h3>{words.title}</h3>
      <p class="hint">{words.why}</p>
      <SelectField
        label={words.firstOff}
        options={FIRST_OFF}
        chosen={off.firstOff}
        name={(side) => words.sides[side]}
        onChoose={(firstOff) => editOrTell(() => withOff(place, { ...off, firstOff }), words.firstOff)}
      />
      <ShimInHand place={place} />
      {off.shims.length > 0 && (
        <>
          <ol class="on-wire" aria-label={words.order}>
            {off.shims.map((shim, i) => (
              <li key={i}>{shimInWords(shim)}</li>
            ))}
          </ol>
          <p class="wire-acts">
            <span class="hint">{words.total(count)}</span>
            <button
              type="button"
              class="button"
              onClick={() =>
                editOrTell(() => withOff(place, { ...off, shims: off.shims.slice(0, -1) }), words.takeBack)
              }
            >
              {words.takeBack}
            </button>
            <button type="button" class="button main" onClick={() => takeOver(place)}>
              {words.takeOver}
            </button>
          </p>
        </>
      )}
    </section>
  );
}
