/** The wanted points, the curve that the search began from, and that of the stack pointed at. */

import type { JSX } from 'preact';
import { useEffect } from 'preact/hooks';
import type { BuildForces, FoundStacks } from '../../../workers/protocol.ts';
import { buildColour } from '../app/palette.ts';
import { isDark } from '../app/preferences.ts';
import { inShown, unitOfShown } from '../app/quantities.ts';
import { errorInWords } from '../app/reasons.ts';
import { topSpeed } from '../app/store.ts';
import { useSize } from '../app/use-size.ts';
import { rangeOf } from '../charts/chart-data.ts';
import { Plot } from '../charts/plot.tsx';
import type { PlotLine, PlotView } from '../charts/plot-layout.ts';
import { LineSample } from '../panels/icons.tsx';
import { text } from '../text/en.ts';
import { searchWords as words } from '../text/search.ts';
import { answerFor, previewed, solvePreview } from './preview.ts';
import { study } from './run.ts';
import { buildOfStudy, type Study } from './study.ts';

/** Colours of the baseline and of the first build beside it, as on the bench. */
const PRESENT = 0;
const FOUND = 1;
const PRESENT_DASH = '6px,4px';

/** Of the style sheet, which follows the theme. */
function inkNow(): string {
  isDark();
  return getComputedStyle(document.documentElement).color;
}

const withoutGas = (answer: BuildForces | string | undefined) =>
  typeof answer === 'object' && answer.status === 'solved' ? answer.forces : undefined;

function lineOf(
  answer: BuildForces | string | undefined,
  name: string,
  look: Pick<PlotLine, 'colour' | 'dash' | 'width'>,
): PlotLine[] {
  const forces = withoutGas(answer);
  if (!forces) return [];
  return [
    {
      x: forces.shaftSpeed_m_s.map((speed) => inShown('speed', speed)),
      y: forces.force_N.map((force, i) => {
        const gas = forces.gasForce_N[i];
        return force === null || gas === null ? null : inShown('force', force - gas);
      }),
      name,
      faded: false,
      ...look,
    },
  ];
}

const presentStacks = (of: Study): Pick<FoundStacks, 'shims'> => ({
  shims: Object.fromEntries(of.request.places.map((place) => [place, buildOfStudy(of).valves[place]?.shims ?? []])),
});

const presentName = (of: Study): string => (study.value ? words.chartPresent : words.chartNow)(buildOfStudy(of).name);

function viewOf(of: Study, ink: string): PlotView {
  const shown = previewed.value;
  const found = shown && answerFor(of, shown.found);
  const lines = [
    ...lineOf(answerFor(of, presentStacks(of)), presentName(of), {
      colour: buildColour(PRESENT, isDark()),
      dash: PRESENT_DASH,
      width: 1.75,
    }),
    ...lineOf(found, words.chartFound(shown?.rank ?? 0), {
      colour: buildColour(FOUND, isDark()),
      dash: 'solid',
      width: 2.5,
    }),
  ];
  const { aim } = of.request;
  const dots = {
    kind: 'point' as const,
    x: aim.map(({ shaftSpeed_m_s }) => inShown('speed', shaftSpeed_m_s)),
    y: aim.map(({ force_N }) => inShown('force', force_N)),
    name: words.chartAim,
    colour: ink,
  };
  const both = [1, -1].filter((way) => aim.some(({ shaftSpeed_m_s }) => shaftSpeed_m_s * way > 0));
  const top = inShown('speed', Math.max(topSpeed.value, ...aim.map(({ shaftSpeed_m_s }) => Math.abs(shaftSpeed_m_s))));
  const xRange: [number, number] = [both.includes(-1) ? -top : 0, both.includes(1) ? top : 0];
  const inView = lines.flatMap(({ x, y }) => y.filter((_, i) => x[i] >= xRange[0] && x[i] <= xRange[1]));
  return {
    areas: [],
    lines,
    dots: [dots],
    xRange,
    yRange: rangeOf([...inView, ...dots.y]),
    xTitle: text.chart.speedAxis(unitOfShown('speed')),
    yTitle: text.chart.forceWithoutGasAxis(unitOfShown('force')),
  };
}

function Key({ of }: { of: Study }): JSX.Element {
  const shown = previewed.value;
  const answer = shown && answerFor(of, shown.found);
  const why =
    typeof answer === 'string' ? answer : answer?.status === 'failed' ? errorInWords(answer.error) : undefined;
  return (
    <ul class="chart-key">
      <li>
        <span class="aim-sample" aria-hidden="true" /> {words.chartAim}: {of.aimName}
      </li>
      <li>
        <LineSample colour={buildColour(PRESENT, isDark())} dash={PRESENT_DASH} />
        {presentName(of)}
      </li>
      {shown && (
        <li data-previewed={shown.rank} data-solved={withoutGas(answer) ? 'yes' : 'no'}>
          <LineSample colour={buildColour(FOUND, isDark())} dash="solid" />
          {why !== undefined
            ? words.chartFailed(shown.rank, why)
            : answer
              ? words.chartFound(shown.rank)
              : words.chartSolving(shown.rank)}
        </li>
      )}
    </ul>
  );
}

export function SearchChart({ of }: { of: Study }): JSX.Element {
  const { ref, size } = useSize<HTMLDivElement>();
  const shown = previewed.value;
  useEffect(() => void solvePreview(of, presentStacks(of), 'present'), [of.id, topSpeed.value]);
  useEffect(() => {
    if (shown) void solvePreview(of, shown.found, 'found');
  }, [shown && JSON.stringify(shown.found.shims), of.id, topSpeed.value]);
  return (
    <section class="sheet search-chart" aria-label={words.chart}>
      <header>
        <h2>{words.chart}</h2>
        {shown && <span class="hint">{words.chartNote}</span>}
      </header>
      <div class="plot" ref={ref} data-chart="search">
        <Plot view={viewOf(of, inkNow())} width={size.width} height={size.height} />
      </div>
      <Key of={of} />
    </section>
  );
}
