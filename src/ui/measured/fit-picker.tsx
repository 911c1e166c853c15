/** The coefficients that a fit may change, to tick, each with its physical value, what it is known to and why. */
import type { JSX } from 'preact';
import type { FitChoice } from '../../../workers/protocol.ts';
import type { FitCoefficientName } from '../../model/fit.ts';
import type { Build } from '../../model/project.ts';
import { Tick } from '../panels/tick.tsx';
import { measuredWords } from '../text/measured.ts';
import { coefficientInWords } from './coefficient-words.ts';
import { chooseUsual, chosenNames, offerFor, toggleChoice } from './fit-choices.ts';

const words = measuredWords.fit;

interface RowProps {
  readonly choice: FitChoice;
  readonly isChosen: boolean;
  readonly onToggle: () => void;
}

function ChoiceRow({ choice, isChosen, onToggle }: RowProps): JSX.Element {
  const { name, physical, low, high, source } = choice;
  return (
    <tbody data-choice={name}>
      <tr>
        <th scope="row">
          <Tick label={words.coefficient[name]} checked={isChosen} onToggle={onToggle} />
        </th>
        <td class="number-col">{coefficientInWords(name, physical)}</td>
        <td class="number-col">{words.interval(coefficientInWords(name, low), coefficientInWords(name, high))}</td>
      </tr>
      <tr class="fit-source">
        <td colSpan={3} class="hint">
          {source}
        </td>
      </tr>
    </tbody>
  );
}

function Choices({ build, choices, chosen }: Chosen): JSX.Element {
  const { columns } = words;
  return (
    <table class="readings fit-choices" aria-label={words.choices}>
      <thead>
        <tr>
          <th scope="col">{columns.name}</th>
          {[columns.physical, columns.known].map((head) => (
            <th key={head} scope="col" class="number-col">
              <span>{head}</span>
            </th>
          ))}
        </tr>
      </thead>
      {choices.map((choice) => (
        <ChoiceRow
          key={choice.name}
          choice={choice}
          isChosen={chosen.includes(choice.name)}
          onToggle={() => toggleChoice(build, choices, choice.name)}
        />
      ))}
    </table>
  );
}

interface Chosen {
  readonly build: Build;
  readonly choices: readonly FitChoice[];
  readonly chosen: readonly FitCoefficientName[];
}

/** Open before the first fit, folded beside one. */
export function FitPicker({ build }: { build: Build }): JSX.Element | null {
  const offer = offerFor(build);
  if (!offer) return null;
  if (offer.why) return <p class="fault">{words.noChoices(offer.why)}</p>;
  const { choices } = offer;
  const chosen = chosenNames(build, choices);
  const isUsual = choices.every((each) => chosen.includes(each.name) === each.isUsual);
  return (
    <details class="fit-picker" open={!build.fit}>
      <summary>
        {words.choices} <span class="hint">{words.chosen(chosen.length, choices.length)}</span>
      </summary>
      <Choices build={build} choices={choices} chosen={chosen} />
      <p class="hint">{words.choosing}</p>
      {!isUsual && (
        <button type="button" class="button" onClick={() => chooseUsual(build, choices)}>
          {words.usual}
        </button>
      )}
    </details>
  );
}
