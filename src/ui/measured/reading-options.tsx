/** What the person says of a file: its layout, its signs, what to do to its numbers, and what was known while measuring. */
import type { JSX } from 'preact';
import { columnOf, isMotion, SIGNS } from '../../measured/mapping.ts';
import { DELIMITERS } from '../../measured/table.ts';
import { MAX_POINTS } from '../../model/measurement.ts';
import { SelectField } from '../panels/select-field.tsx';
import { ViewField } from '../panels/view-field.tsx';
import { measuredWords } from '../text/measured.ts';
import { About } from './about-fields.tsx';
import { isCount, within } from './holds.ts';
import { changeDraft, changeMapping, changeSettings, type Draft, GAS_CHOICES, window_s } from './reading.ts';

const words = measuredWords.dialog;

function Layout({ now }: { now: Draft }): JSX.Element {
  const { delimiter, decimalMark, headerLines } = now.settings;
  return (
    <fieldset>
      <legend>{words.layout}</legend>
      <SelectField
        label={words.delimiter}
        options={DELIMITERS}
        chosen={delimiter}
        name={(each) => words.delimiters[each]}
        onChoose={(each) => changeSettings({ delimiter: each, ...(each === ',' && { decimalMark: '.' }) })}
      />
      <SelectField
        label={words.decimalMark}
        options={['.', ','] as const}
        chosen={decimalMark}
        name={(each) => words.decimalMarks[each]}
        onChoose={(each) => changeSettings({ decimalMark: each })}
      />
      <ViewField
        label={words.headerLines}
        kind="count"
        value={headerLines}
        holds={isCount(0, 1000)}
        wanted={words.countWanted}
        onValue={(lines) => changeSettings({ headerLines: lines })}
      />
    </fieldset>
  );
}

function Signs({ now: { mapping } }: { now: Draft }): JSX.Element {
  return (
    <fieldset>
      <legend>{words.signs}</legend>
      {columnOf(mapping, 'speed') && (
        <SelectField
          label={words.speedSign}
          options={SIGNS}
          chosen={mapping.speedSign}
          name={(each) => words.sign[each]}
          onChoose={(speedSign) => changeMapping({ speedSign })}
        />
      )}
      {columnOf(mapping, 'force') && (
        <SelectField
          label={words.forceSign}
          options={SIGNS}
          chosen={mapping.forceSign}
          name={(each) => words.sign[each]}
          onChoose={(forceSign) => changeMapping({ forceSign })}
        />
      )}
      {columnOf(mapping, 'position') && (
        <SelectField
          label={words.positionSign}
          options={['compression', 'rebound'] as const}
          chosen={mapping.positionSign}
          name={(each) => words.sign[each]}
          onChoose={(positionSign) => changeMapping({ positionSign })}
        />
      )}
    </fieldset>
  );
}

function Treatment({ now }: { now: Draft }): JSX.Element {
  return (
    <fieldset>
      <legend>{words.treatment}</legend>
      <SelectField
        label={words.gas}
        options={GAS_CHOICES}
        chosen={now.gas}
        name={(each) => words.gasChoice[each]}
        onChoose={(gas) => changeDraft({ gas })}
      />
      {now.gas === 'typed' && (
        <ViewField
          label={words.gasAmount}
          kind="force"
          value={now.gas_N}
          holds={within(0, 100_000)}
          wanted={words.forceWanted}
          onValue={(gas_N) => changeDraft({ gas_N })}
        />
      )}
      <ViewField
        label={words.friction}
        kind="force"
        value={now.friction_N}
        holds={within(0, 100_000)}
        wanted={words.forceWanted}
        onValue={(friction_N) => changeDraft({ friction_N })}
      />
      {isMotion(now.mapping) && (
        <ViewField
          label={words.window}
          title={words.windowWhy}
          kind="duration"
          value={window_s.value}
          holds={(value) => value > 0 && value <= 10}
          wanted={words.windowWanted}
          onValue={(window) => changeDraft({ window_s: window })}
        />
      )}
      <SelectField
        label={words.keep}
        options={['all', 'peaks'] as const}
        chosen={now.keep}
        name={(each) => words.keepChoice[each]}
        onChoose={(keep) => changeDraft({ keep })}
      />
      <ViewField
        label={words.most}
        kind="count"
        value={now.mostPoints}
        holds={isCount(10, MAX_POINTS)}
        wanted={words.mostWanted}
        onValue={(mostPoints) => changeDraft({ mostPoints })}
      />
    </fieldset>
  );
}

export const ReadingOptions = ({ now }: { now: Draft }): JSX.Element => (
  <div class="reading-options">
    <Layout now={now} />
    <Signs now={now} />
    <Treatment now={now} />
    <About now={now} />
  </div>
);
