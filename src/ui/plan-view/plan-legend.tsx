/** What the shades mean, where crest, trough and mean of the rim stand among them, and what the circles are. */

import type { JSX } from 'preact';
import { inShown, showBare, showNumber, showPercent, unitOfShown } from '../app/quantities.ts';
import { text } from '../text/en.ts';
import { levelsBetween } from './lift-levels.ts';
import { liftColour, shareOfTop } from './lift-shade.ts';
import { LEGEND_PX } from './plan-frame.ts';
import type { LayerProps } from './plan-layers.tsx';
import { rimLifts } from './rim-lifts.ts';
import type { LiftField, ShownPlan } from './shown-plan.ts';
import { spread } from './spread.ts';

const words = text.plan;
const LINE_PX = 14;
const TOP_PX = 22;
const BAR = { x: 8, y: 34, width: 14 };
const TALLEST_PX = 190;
/** Under the bar stand as many lines of words [px]. */
const WORDS_PX = 5 * LINE_PX;
const SHARES = [0, 0.25, 0.5, 0.75, 1] as const;
/** Names at the bar stand no closer than this [px]. */
const APART_PX = 13;

function RimValues({ field, shim, height }: { field: LiftField; shim: number; height: number }): JSX.Element {
  const lifts = rimLifts(field, shim);
  const kinds = field.extremes ? (['crest', 'mean', 'trough'] as const) : (['mean'] as const);
  const yOf = (lift: number): number => BAR.y + height * (1 - shareOfTop(lift, field.top_m));
  const rows = spread(
    kinds.map((kind) => yOf(lifts[kind])),
    APART_PX,
  );
  const end = BAR.x + BAR.width;
  return (
    <>
      {kinds.map((kind, i) => {
        const [y, row] = [yOf(lifts[kind]), rows[i]];
        return (
          <g key={kind} data-rim={kind}>
            <path class="leader" d={`M${BAR.x} ${y}H${end + 4}L${end + 9} ${row}`} />
            <text x={end + 12} y={row + 4}>
              {words.rimOf[field.extremes ? kind : 'round'](showBare('lift', lifts[kind]))}
            </text>
          </g>
        );
      })}
    </>
  );
}

/** Round numbers inside the bar's height, on its left edge. */
function Ticks({ field, height }: { field: LiftField; height: number }): JSX.Element {
  const { levels } = levelsBetween(0, inShown('lift', field.top_m));
  return (
    <path
      class="ticks"
      d={levels
        .map((level) => BAR.y + height * (1 - level / inShown('lift', field.top_m)))
        .map((y) => `M${BAR.x} ${y.toFixed(1)}h4`)
        .join('')}
    />
  );
}

/** How many ports, how far they open the ring, how many waves there are: each a line. */
function factsOf({ body: { ports }, field }: ShownPlan): string[] {
  const { count, coveredFraction } = ports;
  const isOpen = coveredFraction === undefined || coveredFraction === 1;
  return [
    words.ports(count),
    isOpen ? words.groove : words.covered(showPercent(coveredFraction)),
    ...(field ? [field.waves > 0 ? words.waves(field.waves) : words.round] : []),
  ];
}

export function PlanLegend({ frame, plan }: LayerProps): JSX.Element {
  const { field, shim } = plan;
  const height = Math.max(60, Math.min(TALLEST_PX, frame.height - BAR.y - WORDS_PX));
  const facts = factsOf(plan);
  const factsY = field ? BAR.y + height + 2 * LINE_PX : TOP_PX;
  return (
    <g class="plan-legend" transform={`translate(${frame.width - LEGEND_PX} 0)`}>
      {field && (
        <>
          <linearGradient id="lift-bar" x1="0" y1="1" x2="0" y2="0">
            {SHARES.map((share) => (
              <stop key={share} offset={share} style={{ stopColor: liftColour(share) }} />
            ))}
          </linearGradient>
          <text class="name" x={BAR.x} y={TOP_PX}>
            {words.legend(unitOfShown('lift'))}
          </text>
          <rect class="bar-box" x={BAR.x} y={BAR.y} width={BAR.width} height={height} fill="url(#lift-bar)" />
          <Ticks field={field} height={height} />
          <text x={BAR.x} y={BAR.y + height + LINE_PX - 2}>
            {showNumber(0, 0)}
          </text>
          <RimValues field={field} shim={shim} height={height} />
        </>
      )}
      {facts.map((fact, i) => (
        <text key={fact} x={BAR.x} y={factsY + i * LINE_PX}>
          {fact}
        </text>
      ))}
    </g>
  );
}
