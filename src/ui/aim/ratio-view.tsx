/** Damping ratio against shaft speed, with a table at the speed cursor. */
import type { JSX } from 'preact';
import { lineOf } from '../app/lines.ts';
import { show, showBare, showNumber, unitOfShown } from '../app/quantities.ts';
import { cursorSpeed, setCursor, topSpeed } from '../app/store.ts';
import { useSize } from '../app/use-size.ts';
import { LineNames } from '../charts/name-layer.tsx';
import { Plot } from '../charts/plot.tsx';
import { Choice } from '../panels/choice.tsx';
import { LineSample } from '../panels/icons.tsx';
import { ViewField } from '../panels/view-field.tsx';
import { aimWords } from '../text/aim.ts';
import { text } from '../text/en.ts';
import { atCursor, ratioLines, ratioMeasure, ratios, ratioView } from './ratio-lines.ts';

const words = aimWords.ratio;
const MEASURES = ['secant', 'tangent'] as const;

function Board(): JSX.Element {
  const { ref, size } = useSize<HTMLDivElement>();
  return (
    <div class="plot" ref={ref} data-chart="damping-ratio">
      <Plot view={ratioView.value} width={size.width} height={size.height} />
      {size.width > 0 && (
        <svg class="sweep-layer" width={size.width} height={size.height} aria-hidden="true">
          <LineNames lines={ratioLines.value} view={ratioView.value} frame={size} />
        </svg>
      )}
    </div>
  );
}

function AtCursor(): JSX.Element {
  const number = (value: number | undefined): string =>
    value === undefined ? text.readout.none : showNumber(value, 2);
  return (
    <table class="readings" data-table="damping-ratio">
      <caption>
        {words.caption}, {show('speed', cursorSpeed.value)}
      </caption>
      <thead>
        <tr>
          <th scope="col">{aimWords.make.of}</th>
          {MEASURES.map((each) => (
            <th key={each} scope="col" class="number-col">
              {words.kinds[each]}
            </th>
          ))}
          <th scope="col" class="number-col">
            {words.wheelForce} {unitOfShown('force')}
          </th>
        </tr>
      </thead>
      <tbody>
        {atCursor.value.map(({ build, way, secant, tangent, wheelForce_N }) => (
          <tr key={`${build.id} ${way}`} data-build={build.id} data-way={way}>
            <th scope="row">
              <LineSample {...lineOf(build.id)} />{' '}
              {text.chart.ofWay(build.name, way === 1 ? text.chart.compression : text.chart.rebound)}
            </th>
            <td class="number-col">{number(secant)}</td>
            <td class="number-col">{number(tangent)}</td>
            <td class="number-col">
              {wheelForce_N === undefined ? text.readout.none : showBare('force', wheelForce_N)}
            </td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}

export function RatioView(): JSX.Element {
  return (
    <section class="sheet charts aim-ratio" aria-labelledby="ratio-title">
      <header>
        <h2 id="ratio-title">{words.title}</h2>
        <Choice
          label={words.kind}
          options={MEASURES}
          chosen={ratioMeasure.value}
          name={(each) => words.kinds[each]}
          onChoose={(each) => {
            ratioMeasure.value = each;
          }}
        />
      </header>
      {ratios.value.length === 0 ? (
        <p class="sheet-body hint">{words.empty}</p>
      ) : (
        <>
          <Board />
          <div class="sheet-body">
            <p class="hint">{words.kindWhy}</p>
            <p class="practice">{words.practice}</p>
            <ViewField
              label={words.cursor}
              kind="speed"
              value={cursorSpeed.value}
              holds={(speed) => speed >= 0 && speed <= topSpeed.value}
              wanted={words.wantedCursor}
              onValue={setCursor}
            />
            <AtCursor />
          </div>
        </>
      )}
    </section>
  );
}
