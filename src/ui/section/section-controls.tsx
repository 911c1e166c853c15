/** How the section is drawn: folded away beside the bench, open in the large view. */
import type { JSX } from 'preact';
import { place, places, project, showPlace } from '../app/store.ts';
import { ExportMenu } from '../export/export-menu.tsx';
import { sectionChoices } from '../export/section-export.ts';
import { Choice } from '../panels/choice.tsx';
import { FoldOut } from '../panels/fold-out.tsx';
import { text } from '../text/en.ts';
import { DRAWINGS, drawingShown, HEIGHTS, type Heights, heights, stressShown } from './section-choices.ts';

const heightsName = (each: Heights): string => {
  if (each === 'fit') return text.sectionView.heights.fit;
  return each === '1' ? text.sectionView.heights.true : text.section.axialFactor(Number(each));
};

const heightsTitle = (each: Heights): string => {
  const { fit, true: drawnTrue, factor } = text.sectionView.heightsWhy;
  if (each === 'fit') return fit;
  return each === '1' ? drawnTrue : factor(Number(each));
};

function HeightsChoice(): JSX.Element {
  return (
    <Choice
      label={text.section.axial}
      options={HEIGHTS}
      chosen={heights.value}
      name={heightsName}
      title={heightsTitle}
      onChoose={(each) => {
        heights.value = each;
      }}
    />
  );
}

function StressToggle(): JSX.Element {
  return (
    <button
      type="button"
      class="button toggle"
      aria-pressed={stressShown.value}
      title={text.sectionView.stressWhy}
      onClick={() => {
        stressShown.value = !stressShown.value;
      }}
    >
      {text.sectionView.stress}
    </button>
  );
}

/** Which of the two drawings. */
export function DrawingChoice(): JSX.Element {
  return (
    <Choice
      label={text.plan.view}
      options={DRAWINGS}
      chosen={drawingShown.value}
      name={(each) => text.plan.drawing[each]}
      title={(each) => text.plan.drawingWhy[each]}
      onChoose={(each) => {
        drawingShown.value = each;
      }}
    />
  );
}

export const SectionExport = (): JSX.Element => <ExportMenu of={text.export.sheets.section} choices={sectionChoices} />;

/** All in the row: the large view has the room. */
export function SectionControls(): JSX.Element {
  return (
    <>
      <HeightsChoice />
      <StressToggle />
    </>
  );
}

/** The same behind one button. */
export function SectionLook(): JSX.Element {
  return (
    <FoldOut name="section-look" label={text.sectionView.look} icon="sliders" iconOnly>
      {() => (
        <>
          <div class="look-row">
            <span aria-hidden="true">{text.section.axial}</span>
            <HeightsChoice />
          </div>
          <div class="look-row">
            <span aria-hidden="true">{text.sectionView.shading}</span>
            <StressToggle />
          </div>
        </>
      )}
    </FoldOut>
  );
}

export function PlaceChoice(): JSX.Element {
  return (
    <Choice
      label={text.section.title}
      options={places.value}
      chosen={place.value}
      name={(each) => text.placeOf(project.value.damper.layout, each).tab}
      title={(each) => text.placeOf(project.value.damper.layout, each).name}
      onChoose={showPlace}
    />
  );
}
