/** The section over the whole window, with the speed cursor under it and its numbers beside it. */

import type { JSX } from 'preact';
import { useEffect, useRef } from 'preact/hooks';
import { show } from '../app/quantities.ts';
import { cursorSpeed, place, project, setCursor, topSpeed } from '../app/store.ts';
import { drawnStack } from '../app/views.ts';
import { NoticeList } from '../panels/notice-list.tsx';
import { text } from '../text/en.ts';
import { Drawing } from './drawing.tsx';
import { PartsTable } from './parts-table.tsx';
import { isLarge } from './section-choices.ts';
import { PlaceChoice, SectionControls } from './section-controls.tsx';
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
        <PlaceChoice />
        <span class="group">
          <SectionControls />
          <button type="button" class="button" onClick={() => dialog.current?.close()}>
            {words.close}
          </button>
        </span>
      </header>
      <div class="large-drawing">
        <Drawing>
          <SpeedCursor />
        </Drawing>
      </div>
      {/* biome-ignore lint/a11y/noNoninteractiveTabindex: it scrolls, and keys scroll only what has the focus */}
      <section class="large-numbers" aria-label={text.sectionParts.title} tabIndex={0}>
        <PartsTable />
      </section>
      <NoticeList />
    </dialog>
  );
}
