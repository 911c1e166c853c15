/** Section and plan over the whole window, with the speed cursor under the larger and the numbers of both beside it. */

import type { JSX } from 'preact';
import { useEffect, useRef } from 'preact/hooks';
import { show } from '../app/quantities.ts';
import { cursorSpeed, place, project, setCursor, topSpeed } from '../app/store.ts';
import { drawnStack } from '../app/views.ts';
import { NoticeList } from '../panels/notice-list.tsx';
import { PlanBeside, PlanFigure } from '../plan-view/plan-figure.tsx';
import { PlanTable } from '../plan-view/plan-table.tsx';
import { text } from '../text/en.ts';
import { SectionFigure } from './drawing.tsx';
import { PartsTable } from './parts-table.tsx';
import { drawingShown, isLarge } from './section-choices.ts';
import { DrawingChoice, PlaceChoice, SectionControls, SectionExport } from './section-controls.tsx';
import { isPlaying, mayPlay, playStroke, stopStroke } from './stroke-play.ts';

const words = text.sectionView;
/** Steps of the slider over the whole axis. */
const STEPS = 200;

function SpeedCursor(): JSX.Element {
  const takeSpeed = (speed: number): void => {
    stopStroke(speed);
    setCursor(speed);
  };
  return (
    <div class="large-cursor">
      <label>
        <span>{words.cursor}</span>
        <input
          type="range"
          min={0}
          max={topSpeed.value}
          step={topSpeed.value / STEPS}
          value={cursorSpeed.value}
          aria-valuetext={show('speed', cursorSpeed.value)}
          onInput={(event) => takeSpeed(event.currentTarget.valueAsNumber)}
        />
        <output>{show('speed', cursorSpeed.value)}</output>
      </label>
      {mayPlay() && (
        <button
          type="button"
          class="button"
          title={words.playWhy}
          onClick={() => (isPlaying.value ? stopStroke() : playStroke())}
        >
          {isPlaying.value ? words.pause : words.play}
        </button>
      )}
    </div>
  );
}

export function LargeView(): JSX.Element {
  const dialog = useRef<HTMLDialogElement>(null);
  useEffect(() => {
    dialog.current?.showModal();
    return () => stopStroke();
  }, []);
  const isPlan = drawingShown.value === 'plan';
  const title = words.largeTitle(
    text.placeOf(project.value.damper.layout, place.value).name,
    drawnStack.value.build.name,
  );
  return (
    <dialog
      ref={dialog}
      class="large-section"
      aria-labelledby="large-section-title"
      onClose={() => {
        isLarge.value = false;
      }}
    >
      <header>
        <h2 id="large-section-title">{title}</h2>
        <DrawingChoice />
        <PlaceChoice />
        <span class="group">
          <SectionControls />
          <SectionExport />
          <button type="button" class="button" onClick={() => dialog.current?.close()}>
            {words.close}
          </button>
        </span>
      </header>
      <div class="large-drawing">
        {isPlan ? (
          <PlanFigure>
            <SpeedCursor />
          </PlanFigure>
        ) : (
          <SectionFigure>
            <SpeedCursor />
          </SectionFigure>
        )}
      </div>
      {/* biome-ignore lint/a11y/noNoninteractiveTabindex: it scrolls, and keys scroll only what has the focus */}
      <section class="large-numbers" aria-label={text.sectionParts.title} tabIndex={0}>
        {isPlan ? <SectionFigure /> : <PlanBeside />}
        <PlanTable />
        <PartsTable />
      </section>
      <NoticeList />
    </dialog>
  );
}
