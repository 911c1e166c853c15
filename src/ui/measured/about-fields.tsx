/** What was known of the damper while it was measured. */
import type { JSX } from 'preact';
import { adjustersOf } from '../../model/adjusters.ts';
import { project, selectedBuild } from '../app/store.ts';
import { ViewField } from '../panels/view-field.tsx';
import { measuredWords } from '../text/measured.ts';
import { isCount, within } from './holds.ts';
import { changeDraft, type Draft } from './reading.ts';

const words = measuredWords.dialog;

interface AdjusterProps {
  readonly conditions: Draft['conditions'];
  readonly change: (part: Draft['conditions']) => void;
}

/** Of the build that was measured. */
function AdjusterFields({ conditions, change }: AdjusterProps): JSX.Element {
  return (
    <>
      {adjustersOf(selectedBuild.value).map(({ id, clickCount }) => (
        <ViewField
          key={id}
          label={words.clicks(measuredWords.adjuster[id])}
          kind="count"
          value={conditions.clicks?.[id]}
          placeholder={words.unknown}
          holds={isCount(0, clickCount)}
          wanted={words.clicksWanted(clickCount)}
          onValue={(clicks) => change({ clicks: { ...conditions.clicks, [id]: clicks } })}
          onEmpty={() => {
            const { [id]: _gone, ...clicks } = conditions.clicks ?? {};
            change({ clicks });
          }}
        />
      ))}
    </>
  );
}

export function About({ now }: { now: Draft }): JSX.Element {
  const { conditions } = now;
  const change = (part: Draft['conditions']): void => changeDraft({ conditions: { ...conditions, ...part } });
  const forget = (key: keyof Draft['conditions']): void => {
    const { [key]: _gone, ...rest } = conditions;
    changeDraft({ conditions: rest });
  };
  const { travel_mm } = project.value.damper;
  return (
    <fieldset>
      <legend>{words.about}</legend>
      <label class="name-field">
        <span>{words.name}</span>
        <input
          class="words"
          maxLength={200}
          value={now.name}
          onInput={(event) => changeDraft({ name: event.currentTarget.value })}
        />
      </label>
      <ViewField
        label={words.temperature}
        kind="temperature"
        value={conditions.oilTemperature_degC}
        placeholder={words.unknown}
        holds={within(-60, 250)}
        wanted={words.temperatureWanted}
        onValue={(oilTemperature_degC) => change({ oilTemperature_degC })}
        onEmpty={() => forget('oilTemperature_degC')}
      />
      <ViewField
        label={words.position}
        kind="length"
        value={conditions.position_mm}
        placeholder={words.unknown}
        holds={within(0, travel_mm)}
        wanted={words.positionWanted}
        onValue={(position_mm) => change({ position_mm })}
        onEmpty={() => forget('position_mm')}
      />
      <ViewField
        label={words.gasPressure}
        kind="gasPressure"
        value={conditions.gasGaugePressure_bar}
        placeholder={words.unknown}
        holds={within(0, 300)}
        wanted={words.pressureWanted}
        onValue={(gasGaugePressure_bar) => change({ gasGaugePressure_bar })}
        onEmpty={() => forget('gasGaugePressure_bar')}
      />
      <AdjusterFields conditions={conditions} change={change} />
    </fieldset>
  );
}
