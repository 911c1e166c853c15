/** The section: the stack on show, drawn to a stated scale and bent by the solver's shape at the speed cursor. */
import type { JSX } from 'preact';
import { Icon } from '../panels/icons.tsx';
import { text } from '../text/en.ts';
import { Drawing } from './drawing.tsx';
import { LargeView } from './large-view.tsx';
import { PartsTable } from './parts-table.tsx';
import { isLarge } from './section-choices.ts';
import { PlaceChoice, SectionExport, SectionLook } from './section-controls.tsx';

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

/** While the large view is open the drawing is there: one picture bends, and one is exported. */
export function SectionView(): JSX.Element {
  return (
    <section class="sheet section" aria-label={text.section.title}>
      <header>
        <h2>{text.section.title}</h2>
        {!isLarge.value && <PlaceChoice />}
        <span class="group look">
          {!isLarge.value && (
            <>
              <SectionLook />
              <SectionExport />
            </>
          )}
          <EnlargeButton />
        </span>
      </header>
      {isLarge.value ? (
        <LargeView />
      ) : (
        <>
          <Drawing />
          <div class="unseen">
            <PartsTable />
          </div>
        </>
      )}
    </section>
  );
}
