/** The section: the stack on show, drawn to a stated scale and bent by the solver's shape at the speed cursor. */
import type { JSX } from 'preact';
import { Icon } from '../panels/icons.tsx';
import { PlanFigure } from '../plan-view/plan-figure.tsx';
import { PlanTable } from '../plan-view/plan-table.tsx';
import { text } from '../text/en.ts';
import { SectionFigure } from './drawing.tsx';
import { LargeView } from './large-view.tsx';
import { PartsTable } from './parts-table.tsx';
import { drawingShown, isLarge } from './section-choices.ts';
import { DrawingChoice, PlaceChoice, SectionExport, SectionLook } from './section-controls.tsx';

/** It keeps its place while the large view is open, and takes the focus back when that closes. */
function EnlargeButton(): JSX.Element {
  return (
    <button
      type="button"
      class="icon"
      aria-haspopup="dialog"
      aria-label={text.sectionView.large}
      title={text.sectionView.large}
      onClick={() => {
        isLarge.value = true;
      }}
    >
      <Icon name="enlarge" />
    </button>
  );
}

function OnBench(): JSX.Element {
  const isPlan = drawingShown.value === 'plan';
  return (
    <>
      {isPlan ? <PlanFigure /> : <SectionFigure />}
      <div class="unseen">{isPlan ? <PlanTable /> : <PartsTable />}</div>
    </>
  );
}

/** While the large view is open the drawings are there: one picture bends, and one is exported. */
export function SectionView(): JSX.Element {
  return (
    <section class="sheet section" aria-label={text.section.title}>
      <header>
        <h2 class={isLarge.value ? '' : 'unseen'}>{text.section.title}</h2>
        {!isLarge.value && (
          <>
            <DrawingChoice />
            <PlaceChoice />
          </>
        )}
        <span class="group look">
          {!isLarge.value && (
            <>
              {drawingShown.value === 'section' && <SectionLook />}
              <SectionExport />
            </>
          )}
          <EnlargeButton />
        </span>
      </header>
      {isLarge.value ? <LargeView /> : <OnBench />}
    </section>
  );
}
