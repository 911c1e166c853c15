/** Where surfaces touch: a dot for a circle, a heavy line for a stretch; and the places of the gaps that pointer and keys find. */

import type { JSX } from 'preact';
import { stackHeight } from '../../model/lay-shims.ts';
import type { Plan } from './plan.ts';
import { isMarked } from './section-choices.ts';
import { partId } from './section-parts.ts';

const DOT_PX = 2.1;
/** Half the width of what the pointer finds of a gap [px]. */
const REACH_PX = 6;

function Contacts({ plan: { sheet, section } }: { plan: Plan }): JSX.Element {
  return (
    <>
      {(section.touching?.contacts ?? []).map(({ below, above, from, to }) => {
        const [x1, y1, x2, y2] = [sheet.x(from.r), sheet.y(from.z), sheet.x(to.r), sheet.y(to.z)];
        const key = `${below} ${above} ${from.r}`;
        const at = { 'data-contact': `${below} ${above}` };
        return x2 - x1 < DOT_PX ? (
          <circle key={key} class="contact" {...at} cx={(x1 + x2) / 2} cy={y1} r={DOT_PX} />
        ) : (
          <path key={key} class="contact-line" {...at} d={`M${x1} ${y1}L${x2} ${y2}`} />
        );
      })}
    </>
  );
}

/** The edge of the clamp on both sides of the stack. */
function ClampMarks({ plan: { sheet, section } }: { plan: Plan }): JSX.Element {
  const { valving } = section.stack;
  const x = sheet.x(valving.clampDiameter_mm / 2);
  return (
    <>
      {[0, stackHeight(valving)].map((z) => (
        <circle key={z} class="contact" data-contact="clamp" cx={x} cy={sheet.y(z)} r={DOT_PX} />
      ))}
    </>
  );
}

function Gaps({ plan: { sheet, section } }: { plan: Plan }): JSX.Element {
  return (
    <>
      {(section.touching?.gaps ?? []).map((gap) => {
        const id = partId.gap(gap);
        const [top, bottom] = [sheet.y(gap.top_mm), sheet.y(gap.bottom_mm)];
        const spare = Math.max(0, (4 - (bottom - top)) / 2);
        return (
          <rect
            key={id}
            class={`part gap ${isMarked(id) ? 'active' : ''}`}
            data-part={id}
            x={sheet.x(gap.r) - REACH_PX}
            y={top - spare}
            width={2 * REACH_PX}
            height={bottom - top + 2 * spare}
          />
        );
      })}
    </>
  );
}

export function Marks({ plan }: { plan: Plan }): JSX.Element {
  return (
    <g class="marks">
      <Gaps plan={plan} />
      <Contacts plan={plan} />
      {plan.section.touching && <ClampMarks plan={plan} />}
    </g>
  );
}
