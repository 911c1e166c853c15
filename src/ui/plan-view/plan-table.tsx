/** The plan as a table: lift at the mean, the crest and the trough, circle by circle. */

import type { JSX } from 'preact';
import { showBare, showLength, unitOfShown } from '../app/quantities.ts';
import { text } from '../text/en.ts';
import { type CircleName, type ToldCircle, toldCircles } from './plan-circles.ts';
import { shownPlan } from './shown-plan.ts';

const words = text.plan;

const nameOf = (name: CircleName): string =>
  typeof name === 'string' ? words.circles[name] : words.rimOfShim(name.rimOf + 1);

function Row({ circle, waves }: { circle: ToldCircle; waves: boolean }): JSX.Element {
  const { names, diameter_mm, mean_m, crest_m, trough_m } = circle;
  return (
    <tr data-circle={diameter_mm.toFixed(2)}>
      <th scope="row">
        ⌀{showLength(diameter_mm)} <span>{names.map(nameOf).join(', ')}</span>
      </th>
      {(waves ? [crest_m, mean_m, trough_m] : [mean_m]).map((lift, i) => (
        <td key={i} class="number-col">
          {showBare('lift', lift)}
        </td>
      ))}
    </tr>
  );
}

export function PlanTable(): JSX.Element {
  const plan = shownPlan.value;
  const waves = plan.field?.extremes !== undefined;
  const unit = unitOfShown('lift');
  const heads = waves ? [text.wave.crest, text.wave.mean, text.wave.trough] : [text.plan.lift];
  return (
    <table class="plan-numbers">
      <caption>{words.table(plan.shim + 1)}</caption>
      <thead>
        <tr>
          <th scope="col">{words.circle}</th>
          {heads.map((head) => (
            <th key={head} scope="col" class="number-col">
              {words.inUnit(head, unit)}
            </th>
          ))}
        </tr>
      </thead>
      <tbody>
        {toldCircles(plan).map((circle) => (
          <Row key={circle.diameter_mm} circle={circle} waves={waves} />
        ))}
      </tbody>
    </table>
  );
}
