/** The plan with its title block. */

import type { ComponentChildren, JSX } from 'preact';
import { text } from '../text/en.ts';
import { PlanBlock } from './plan-block.tsx';
import { PlanDrawing } from './plan-drawing.tsx';

export function PlanFigure({ children }: { children?: ComponentChildren }): JSX.Element {
  return (
    <div class="figure" data-figure="plan">
      <PlanDrawing />
      {children}
      <PlanBlock />
    </div>
  );
}

export function PlanBeside(): JSX.Element {
  return (
    <section class="plan-beside" aria-label={text.plan.title}>
      <PlanFigure />
    </section>
  );
}
