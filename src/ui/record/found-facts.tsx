/** Facts of the record that no form of the bench has: the machine, the oil that came out, the clicks as found. */
import type { JSX } from 'preact';
import { adjustersOf, withClicks } from '../../model/adjusters.ts';
import type { TeardownRecord } from '../../model/record.ts';
import { keyPut } from '../app/optional-parts.ts';
import { baseline, project, withBuild } from '../app/store.ts';
import { NumberField } from '../panels/number-field.tsx';
import { WordsField } from '../panels/words-field.tsx';
import { text } from '../text/en.ts';
import { recordWords, type TextFact } from '../text/record.ts';
import { recordOf, withRecord } from './record-state.ts';

const words = recordWords.facts;

function Fact({ of, label, rows }: { of: TextFact; label: string; rows?: number }): JSX.Element {
  return (
    <WordsField label={label} rows={rows} value={recordOf(project.value)[of]} edit={(value) => withRecord(of, value)} />
  );
}

export function MachineFacts(): JSX.Element {
  const record = recordOf(project.value);
  return (
    <div class="fields">
      <Fact of="machine" label={words.machine} />
      <WordsField label={words.date} type="date" value={record.date} edit={(value) => withRecord('date', value)} />
      <Fact of="recordedBy" label={words.recordedBy} />
      <NumberField
        label={words.runTime}
        kind="runTime"
        value={record.runTime_h}
        edit={(value) => withRecord('runTime_h', value)}
        clear={() => withRecord('runTime_h', undefined)}
      />
      <NumberField
        label={words.distance}
        kind="distance"
        value={record.distance_km}
        edit={(value) => withRecord('distance_km', value)}
        clear={() => withRecord('distance_km', undefined)}
      />
      <Fact of="condition" label={words.condition} rows={3} />
    </div>
  );
}

type OilOut = NonNullable<TeardownRecord['oilOut']>;

function withOil<Key extends keyof OilOut>(key: Key, value: OilOut[Key] | undefined) {
  const oilOut = keyPut(recordOf(project.value).oilOut ?? {}, key, value);
  return withRecord('oilOut', Object.keys(oilOut).length > 0 ? oilOut : undefined);
}

export function OilOutFacts(): JSX.Element {
  const { volume_mL, look, smell } = recordOf(project.value).oilOut ?? {};
  return (
    <section class="found" aria-label={words.oilTitle}>
      <h3>{words.oilTitle}</h3>
      <div class="fields">
        <NumberField
          label={words.oilVolume}
          kind="volume"
          value={volume_mL}
          edit={(value) => withOil('volume_mL', value)}
          clear={() => withOil('volume_mL', undefined)}
        />
        <WordsField
          label={words.oilLook}
          placeholder={words.oilLookHint}
          value={look}
          edit={(value) => withOil('look', value)}
        />
        <WordsField label={words.oilSmell} value={smell} edit={(value) => withOil('smell', value)} />
      </div>
    </section>
  );
}

/** What is typed is kept as found, and turns the adjuster of the baseline build. */
export function ClicksAsFound(): JSX.Element {
  const adjusters = adjustersOf(baseline.value);
  const found = recordOf(project.value).clicksAsFound ?? {};
  if (adjusters.length === 0) return <p class="hint">{recordWords.clicks.none}</p>;
  return (
    <section class="found" aria-label={recordWords.clicks.title}>
      <h3>{recordWords.clicks.title}</h3>
      <p class="hint">{recordWords.clicks.why}</p>
      <div class="fields">
        {adjusters.map(({ id, clickCount }) => (
          <NumberField
            key={id}
            label={recordWords.clicks.found(text.adjusterOf(project.value.damper.layout, id))}
            kind="count"
            placeholder={text.adjusters.of(clickCount)}
            value={found[id]}
            edit={(clicks) =>
              withRecord(
                'clicksAsFound',
                { ...found, [id]: clicks },
                withBuild(baseline.value.id, (build) => withClicks(build, id, clicks)),
              )
            }
            clear={() => {
              const left = keyPut(found, id, undefined);
              return withRecord('clicksAsFound', Object.keys(left).length > 0 ? left : undefined);
            }}
          />
        ))}
      </div>
    </section>
  );
}
