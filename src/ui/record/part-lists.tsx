/** Springs, torques and parts that wear, as they were found. */
import type { JSX } from 'preact';
import { RATE_SOURCES, type RecordStep, VERDICTS, WEAR_KINDS, type WearPart } from '../../model/record.ts';
import { editOrTell } from '../app/edit-or-tell.ts';
import { showField, unitOf, writeField } from '../app/quantities.ts';
import { SelectField } from '../panels/select-field.tsx';
import { WordsField } from '../panels/words-field.tsx';
import { recordWords } from '../text/record.ts';
import { FoundList, FoundSize, withEntry } from './found-list.tsx';

export function SpringList(): JSX.Element {
  const words = recordWords.springs;
  return (
    <FoundList
      list="springs"
      title={words.title}
      addLabel={words.add}
      nameLabel={words.name}
      fresh={(n) => ({ name: words.fresh(n) })}
    >
      {(spring) => (
        <>
          <FoundSize list="springs" entry={spring} of="rate_N_mm" label={words.rate} kind="springRate" />
          <SelectField
            label={recordWords.wear.entry(spring.name, words.rateFrom)}
            options={['unknown', ...RATE_SOURCES]}
            chosen={spring.rateFrom ?? 'unknown'}
            name={(source) => words.sources[source]}
            onChoose={(source) =>
              editOrTell(
                () => withEntry('springs', spring.id, 'rateFrom', source === 'unknown' ? undefined : source),
                words.rateFrom,
              )
            }
          />
          <FoundSize list="springs" entry={spring} of="freeLength_mm" label={words.freeLength} kind="length" />
          <FoundSize list="springs" entry={spring} of="wireDiameter_mm" label={words.wire} kind="length" />
        </>
      )}
    </FoundList>
  );
}

export function TorqueList({ step }: { step: RecordStep }): JSX.Element {
  const words = recordWords.torques;
  return (
    <FoundList
      list="torques"
      title={words.title}
      why={words.why}
      addLabel={words.add}
      nameLabel={words.name}
      fresh={(n) => ({ name: words.fresh[step] ?? words.freshElse(n) })}
    >
      {(torque) => <FoundSize list="torques" entry={torque} of="torque_N_m" label={words.torque} kind="torque" />}
    </FoundList>
  );
}

/** Inner × outer × width, by which a new part is found. */
export function sizesOf({ innerDiameter_mm, outerDiameter_mm, width_mm }: WearPart): string | undefined {
  const sizes = [innerDiameter_mm, outerDiameter_mm, width_mm];
  if (sizes.every((size) => size === undefined)) return undefined;
  const written = sizes.map((size) =>
    size === undefined ? recordWords.sheet.notMeasured : writeField('length', size),
  );
  return `${written.join(' × ')} ${unitOf('length')}`;
}

function WearFields({ part }: { part: WearPart }): JSX.Element {
  const words = recordWords.wear;
  const sizes = sizesOf(part);
  return (
    <>
      <SelectField
        label={words.entry(part.name, words.kind)}
        options={WEAR_KINDS}
        chosen={part.kind}
        name={(kind) => words.kinds[kind]}
        onChoose={(kind) => editOrTell(() => withEntry('wearParts', part.id, 'kind', kind), words.kind)}
      />
      <FoundSize list="wearParts" entry={part} of="innerDiameter_mm" label={words.inner} kind="length" />
      <FoundSize list="wearParts" entry={part} of="outerDiameter_mm" label={words.outer} kind="length" />
      <FoundSize list="wearParts" entry={part} of="width_mm" label={words.width} kind="length" />
      <SelectField
        label={words.entry(part.name, words.verdict)}
        options={['unknown', ...VERDICTS]}
        chosen={part.verdict ?? 'unknown'}
        name={(verdict) => words.verdicts[verdict]}
        onChoose={(verdict) =>
          editOrTell(
            () => withEntry('wearParts', part.id, 'verdict', verdict === 'unknown' ? undefined : verdict),
            words.verdict,
          )
        }
      />
      <WordsField
        label={words.entry(part.name, words.notes)}
        value={part.notes}
        edit={(notes) => withEntry('wearParts', part.id, 'notes', notes)}
      />
      {sizes && <p class="to-match">{words.toMatch(sizes)}</p>}
    </>
  );
}

export function WearList(): JSX.Element {
  const words = recordWords.wear;
  return (
    <FoundList
      list="wearParts"
      title={words.title}
      addLabel={words.add}
      nameLabel={words.name}
      fresh={(n) => ({ name: words.fresh(n), kind: 'seal' as const })}
    >
      {(part) => <WearFields part={part} />}
    </FoundList>
  );
}

export const lengthOf = (value: number | undefined): string =>
  value === undefined ? recordWords.sheet.notMeasured : showField('length', value);
