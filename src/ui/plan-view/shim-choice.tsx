/** Which shim the plan shades. */

import type { JSX } from 'preact';
import { writeField } from '../app/quantities.ts';
import { text } from '../text/en.ts';
import { shownPlan, showShim } from './shown-plan.ts';

export function ShimChoice(): JSX.Element {
  const { shims, shim } = shownPlan.value;
  return (
    <select
      class="select"
      aria-label={text.plan.choose}
      value={String(shim)}
      onChange={(event) => showShim(event.currentTarget.selectedIndex)}
    >
      {shims.map(({ outerDiameter_mm, thickness_mm }, n) => (
        <option key={n} value={String(n)}>
          {text.plan.option(n + 1, writeField('length', outerDiameter_mm), writeField('length', thickness_mm))}
        </option>
      ))}
    </select>
  );
}
