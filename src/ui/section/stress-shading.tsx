/** Shims shaded by their stress: a gradient a shim along its radius, and the bar that says what the shades mean. */

import type { JSX } from 'preact';
import { showBare, unitOfShown } from '../app/quantities.ts';
import { text } from '../text/en.ts';
import type { DrawnSection } from './drawn-section.ts';
import { stressShown } from './section-choices.ts';
import type { Sheet } from './sheet.ts';
import { type StressScale, shadeColour, shadeStops, shareOf } from './stress-shade.ts';

/** Undefined leaves the fill to the style sheet. */
export const shadeOf = ({ stress }: DrawnSection, shim: number): string | undefined =>
  stress && stressShown.value ? `url(#stress-${shim})` : undefined;

/** Somewhere the shim bears more than its yield strength. */
export function takesSet({ stack: { state } }: DrawnSection, shim: number): boolean {
  const limit = state?.stresses?.yield_Pa[shim] ?? Number.POSITIVE_INFINITY;
  return state?.stresses?.equivalent_Pa[shim].some((stress) => stress > limit) ?? false;
}

/** Gradients of all shims, in pixels right of the axis. */
export function StressGradients({ sheet, section }: { sheet: Sheet; section: DrawnSection }): JSX.Element | null {
  const { stress, outlines, stack } = section;
  const along = stack.state?.stresses?.equivalent_Pa;
  if (!stress || !along || !stressShown.value) return null;
  return (
    <>
      {outlines.map((outline) => {
        const rim = sheet.x(outline.outerRadius_mm);
        return (
          <linearGradient
            key={outline.shim}
            id={`stress-${outline.shim}`}
            gradientUnits="userSpaceOnUse"
            x1={0}
            y1={0}
            x2={rim}
            y2={0}
          >
            {shadeStops(outline, along[outline.shim], stress).map(({ r, share }, i) => (
              <stop
                key={i}
                offset={(sheet.x(r) / rim).toFixed(4)}
                data-stress={share.toFixed(4)}
                style={{ stopColor: shadeColour(share) }}
              />
            ))}
          </linearGradient>
        );
      })}
    </>
  );
}

const BAR_PX = 7;
/** Middle of the bar, under the number and the words over it [px]. */
const TOP_PX = 40;
const SHARES = [0, 0.25, 0.5, 0.75, 1] as const;
/** Half the room of a number over the bar [px]. */
const NUMBER_PX = 12;

function Ticks({ stress, width }: { stress: StressScale; width: number }): JSX.Element {
  const { limit_Pa, top_Pa, most_Pa } = stress;
  const words = text.sectionView;
  const most = shareOf(most_Pa, stress) * width;
  const limit = limit_Pa === undefined ? undefined : shareOf(limit_Pa, stress) * width;
  const end = limit_Pa === undefined ? showBare('stress', top_Pa) : words.legendYield(showBare('stress', limit_Pa));
  return (
    <>
      {limit !== undefined && <path class="limit" d={`M${limit} -4V${BAR_PX + 4}`} />}
      <path class="most" d={`M${most} -1l-3.500 -6h7Z`} />
      <text class="most-value" x={Math.min(Math.max(most, NUMBER_PX), width - NUMBER_PX)} y={-10}>
        {showBare('stress', most_Pa)}
      </text>
      <text x={0} y={BAR_PX + 14}>
        0
      </text>
      <text x={limit ?? width} y={BAR_PX + 14} style={{ textAnchor: 'end' }}>
        {end}
      </text>
    </>
  );
}

interface LegendProps {
  readonly section: DrawnSection;
  /** Where the bar ends on the sheet, and how long it is [px]. */
  readonly right: number;
  readonly width: number;
}

export function StressLegend({ section: { stress, waved }, right, width }: LegendProps): JSX.Element | null {
  if (!stress || !stressShown.value) return null;
  const words = text.sectionView;
  const name = waved ? text.wave.legend : words.legend;
  return (
    <g class="legend" transform={`translate(${right - width} ${TOP_PX})`}>
      <linearGradient id="stress-bar">
        {SHARES.map((share) => (
          <stop key={share} offset={share} style={{ stopColor: shadeColour(share) }} />
        ))}
      </linearGradient>
      <text x={width} y={-24} style={{ textAnchor: 'end' }}>
        {name(unitOfShown('stress'))}
      </text>
      <rect class="bar-box" width={width} height={BAR_PX} fill="url(#stress-bar)" />
      <Ticks stress={stress} width={width} />
      {stress.limit_Pa === undefined && (
        <text x={0} y={BAR_PX + 27}>
          {words.legendUnknown}
        </text>
      )}
    </g>
  );
}
