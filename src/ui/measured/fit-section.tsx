/** Coefficients fitted to what was measured, beside their physical values; what could not be told; and the way to a fit. */
import type { JSX } from 'preact';
import type { Fit, FittedValue } from '../../model/fit.ts';
import type { Build } from '../../model/project.ts';
import { fittedCurves, MEASURED_CHOICES } from '../app/preferences.ts';
import { show, showPercent } from '../app/quantities.ts';
import { readOnly } from '../app/store.ts';
import { Choice } from '../panels/choice.tsx';
import { measuredWords } from '../text/measured.ts';
import { coefficientInWords as inWords } from './coefficient-words.ts';
import { chosenNames, offerFor } from './fit-choices.ts';
import { FitPicker } from './fit-picker.tsx';
import { fitRun, removeFit, startFit } from './fit-run.ts';
import { fittedAnswers } from './fitted-solve.ts';

const words = measuredWords.fit;

function CoefficientRow({ name, physical, value, low, high, leftOpen }: FittedValue): JSX.Element {
  return (
    <tr data-coefficient={name}>
      <th scope="row">{words.coefficient[name]}</th>
      <td class="number-col">{inWords(name, physical)}</td>
      <td class="number-col strong">{inWords(name, value)}</td>
      <td class="number-col">{words.interval(inWords(name, low), inWords(name, high))}</td>
      <td class="number-col">{showPercent(Math.max(0, 1 - leftOpen))}</td>
    </tr>
  );
}

function Coefficients({ fit }: { fit: Fit }): JSX.Element {
  const { columns } = words;
  const heads = [columns.physical, columns.fitted, columns.interval, columns.narrowed];
  return (
    <table class="readings fit-table" aria-label={words.table}>
      <thead>
        <tr>
          <th scope="col">{columns.name}</th>
          {heads.map((head) => (
            <th key={head} scope="col" class="number-col">
              <span>{head}</span>
            </th>
          ))}
        </tr>
      </thead>
      <tbody>
        {fit.coefficients.map((each) => (
          <CoefficientRow key={each.name} {...each} />
        ))}
      </tbody>
    </table>
  );
}

/** In words, what the measurements leave open. */
function Untold({ untold }: Pick<Fit, 'untold'>): JSX.Element {
  if (untold.length === 0) return <p class="hint">{words.allTold}</p>;
  return (
    <ul class="untold">
      {untold.map((names) => (
        <li key={names.join()}>{words.untold(names.map((name) => words.coefficient[name]))}</li>
      ))}
    </ul>
  );
}

function Kept({ build, fit }: { build: Build; fit: Fit }): JSX.Element {
  const why = fittedAnswers.value.get(build.id)?.why;
  return (
    <>
      <Coefficients fit={fit} />
      <p class="hint">{words.basis(fit.pointCount, show('force', fit.scatter_N))}</p>
      <Untold untold={fit.untold} />
      {why && <p class="fault">{words.noCurve(why)}</p>}
      <p class="hint">{words.meaning}</p>
    </>
  );
}

function Running({ progress, stop }: { progress: number; stop: () => void }): JSX.Element {
  return (
    <span class="group fit-running">
      <progress value={progress} max={1} aria-label={words.running} />
      <button type="button" class="button" onClick={stop}>
        {words.stop}
      </button>
    </span>
  );
}

export function FitSection({ build }: { build: Build }): JSX.Element {
  const run = fitRun.value?.buildId === build.id ? fitRun.value : undefined;
  const offer = offerFor(build);
  const chosen = offer && !offer.why ? chosenNames(build, offer.choices) : undefined;
  return (
    <section class="fit" aria-label={words.title}>
      <div class="fit-head">
        <h3>{words.title}</h3>
        {run ? (
          <Running progress={run.progress} stop={() => run.stop.abort()} />
        ) : (
          <span class="group">
            <button
              type="button"
              class="button"
              disabled={readOnly.value || fitRun.value !== undefined || chosen?.length === 0}
              onClick={() => void startFit(build, chosen)}
            >
              {build.fit ? words.again : words.start}
            </button>
            {build.fit && (
              <button type="button" class="button" onClick={() => removeFit(build)}>
                {words.remove}
              </button>
            )}
          </span>
        )}
      </div>
      {build.fit ? <Kept build={build} fit={build.fit} /> : <p class="hint">{words.none}</p>}
      <FitPicker build={build} />
      {build.fit && (
        <Choice
          label={words.curve}
          options={MEASURED_CHOICES}
          chosen={fittedCurves.value}
          name={(each) => words.curveChoice[each]}
          onChoose={(each) => {
            fittedCurves.value = each;
          }}
        />
      )}
    </section>
  );
}
