/** The title block of the plan. */

import type { JSX } from 'preact';
import { show, showLength } from '../app/quantities.ts';
import { cursorSpeed } from '../app/store.ts';
import { text } from '../text/en.ts';
import { rimLifts } from './rim-lifts.ts';
import { type ShownPlan, shownPlan } from './shown-plan.ts';

function cellsOf({ stack, shims, shim, field }: ShownPlan): [string, string][] {
  const { none } = text.readout;
  const { cells } = text.section;
  const { outerDiameter_mm, thickness_mm } = shims[shim];
  const lifts = field && rimLifts(field, shim);
  const lift = (kind: 'crest' | 'trough' | 'mean'): string => (lifts ? show('lift', lifts[kind]) : none);
  const rims: [string, string][] = field?.extremes
    ? [
        [text.wave.ofMean(cells.lift), lift('mean')],
        [text.wave.at.crest(cells.lift), lift('crest')],
        [text.wave.at.trough(cells.lift), lift('trough')],
      ]
    : [[cells.lift, lift('mean')]];
  return [
    [cells.build, stack.build.name],
    [text.plan.shim, text.difference.size(showLength(outerDiameter_mm), showLength(thickness_mm))],
    [cells.theory, stack.theory ? text.theory[stack.theory] : none],
    [cells.cursor, show('speed', cursorSpeed.value)],
    [cells.pressure, field ? show('pressure', field.state.pressure_Pa) : none],
    ...rims,
  ];
}

/** Waves of a ring that is open all round are tied to no port. */
const isAnywhere = ({ field, body: { ports } }: ShownPlan): boolean =>
  field?.extremes !== undefined && (ports.coveredFraction ?? 1) === 1;

export function PlanBlock(): JSX.Element {
  const plan = shownPlan.value;
  return (
    <>
      <dl class="title-block">
        {cellsOf(plan).map(([name, value]) => (
          <div key={name}>
            <dt>{name}</dt>
            <dd>{value}</dd>
          </div>
        ))}
      </dl>
      {!plan.field && <p class="sheet-note">{text.section.atRest}</p>}
      {isAnywhere(plan) && <p class="sheet-note quiet">{text.plan.anywhere}</p>}
    </>
  );
}
