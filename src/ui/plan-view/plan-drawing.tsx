/** The plan: one shim seen from above, its lift shaded over radius and angle, laid on its sheet. */

import type { JSX } from 'preact';
import { lineOf } from '../app/lines.ts';
import { useSize } from '../app/use-size.ts';
import { text } from '../text/en.ts';
import { layPlan } from './plan-frame.ts';
import { Body, Clamp, Hidden, type LayerProps, Rims, ShadedShim } from './plan-layers.tsx';
import { PlanLegend } from './plan-legend.tsx';
import { LevelLines } from './plan-lines.tsx';
import { CutLine, WaveMarks } from './plan-marks.tsx';
import { ShimChoice } from './shim-choice.tsx';
import { shownPlan } from './shown-plan.ts';

const words = text.plan;

function Picture(props: LayerProps): JSX.Element {
  const { frame, plan } = props;
  const { stack, shim, field } = plan;
  const shape = field && field.waves > 0 ? words.describeWaves(field.waves) : words.describeRound;
  return (
    <svg
      role="img"
      aria-label={`${words.describe(shim + 1, stack.build.name)} ${field ? shape : text.section.atRest}`}
      width={frame.width}
      height={frame.height}
      data-state={field ? 'bent' : 'at-rest'}
      style={{ '--build': lineOf(stack.build.id).colour }}
    >
      <Body {...props} />
      <ShadedShim {...props} />
      <Hidden {...props} />
      <LevelLines {...props} />
      <Rims {...props} />
      <CutLine {...props} />
      <Clamp {...props} />
      <WaveMarks {...props} />
      <text class="scale-words" x={10} y={frame.height - 12}>
        {text.sectionView.scale(String(frame.scale))}
      </text>
      <PlanLegend {...props} />
    </svg>
  );
}

export function PlanDrawing(): JSX.Element {
  const { ref, size } = useSize<HTMLDivElement>();
  const plan = shownPlan.value;
  const { field, boreRadius_mm } = plan;
  const crest = field?.extremes ? field.extremes.crest / field.waves : 0;
  return (
    <div class="drawing plan" ref={ref}>
      {size.width > 0 && <Picture frame={layPlan(size, boreRadius_mm, crest)} plan={plan} />}
      <ShimChoice />
    </div>
  );
}
