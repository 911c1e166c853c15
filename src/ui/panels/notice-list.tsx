/** Messages along the lower edge, read aloud as they come. The page is longer by as much, so that nothing stays beneath them. */
import type { JSX } from 'preact';
import { useEffect, useLayoutEffect, useRef } from 'preact/hooks';
import { dismiss, type Notice, notices, putAway } from '../app/notices.ts';
import { useSize } from '../app/use-size.ts';
import { text } from '../text/en.ts';
import { IconButton } from './icons.tsx';

/** What a slow reader needs, once the message has been noticed [ms]. */
const TO_NOTICE_MS = 8_000;
const A_LETTER_MS = 80;
/** To decide about what it offers [ms]. */
const TO_DECIDE_MS = 12_000;

const readingTime = ({ message, details, action }: Notice): number =>
  TO_NOTICE_MS + A_LETTER_MS * [message, ...details].join('').length + (action ? TO_DECIDE_MS : 0);

/** Time counts while the page is in sight; a message that has the pointer or the keyboard begins its time anew. */
function useLifetime(notice: Notice) {
  const place = useRef<HTMLDivElement>(null);
  useEffect(() => {
    if (notice.stays) return undefined;
    let timer: ReturnType<typeof setTimeout> | undefined;
    const end = (): void => {
      if (place.current?.matches(':hover, :focus-within')) run();
      else putAway(notice.id);
    };
    const run = (): void => {
      clearTimeout(timer);
      if (document.visibilityState === 'visible') timer = setTimeout(end, readingTime(notice));
    };
    run();
    document.addEventListener('visibilitychange', run);
    return () => {
      clearTimeout(timer);
      document.removeEventListener('visibilitychange', run);
    };
  }, [notice]);
  return place;
}

function NoticeItem({ notice }: { notice: Notice }): JSX.Element {
  const place = useLifetime(notice);
  const act = (): void => {
    notice.action?.run();
    dismiss(notice.id);
  };
  return (
    <div class={`notice ${notice.tone}`} ref={place}>
      <div class="told">
        <p>{notice.message}</p>
        {notice.details.length > 0 && (
          <ul>
            {notice.details.map((detail) => (
              <li key={detail}>{detail}</li>
            ))}
          </ul>
        )}
      </div>
      <div class="acts">
        {notice.action && (notice.action.isOffered?.() ?? true) && (
          <button type="button" class="button" onClick={act}>
            {notice.action.label}
          </button>
        )}
        <IconButton icon="remove" label={text.notices.dismiss} onClick={() => dismiss(notice.id)} />
      </div>
    </div>
  );
}

/** In the lowest strip of the window, of that height [px]. */
function isBeneath(place: Element, height: number): boolean {
  const { top, bottom } = place.getBoundingClientRect();
  return bottom > window.innerHeight - height && top < window.innerHeight;
}

/** Makes the page longer, and brings what has the keyboard out from beneath; where that is out of sight, the page stays where it is. */
function useRoomFor(height: number): void {
  useLayoutEffect(() => {
    document.documentElement.style.setProperty('--notices', `${height}px`);
    const { activeElement } = document;
    if (!activeElement || activeElement === document.body || height === 0) return;
    if (isBeneath(activeElement, height)) activeElement.scrollIntoView({ block: 'nearest' });
  }, [height]);
}

const TONES = ['problem', 'info'] as const;

export function NoticeList(): JSX.Element {
  const { ref, size } = useSize<HTMLElement>();
  useRoomFor(size.height);
  return (
    <section class="notices" aria-label={text.notices.region} ref={ref}>
      {TONES.map((tone) => (
        // There before its messages: a reader hears what is added.
        <div key={tone} role={tone === 'problem' ? 'alert' : 'status'} aria-atomic="false">
          {notices.value
            .filter((notice) => notice.tone === tone)
            .map((notice) => (
              <NoticeItem key={notice.id} notice={notice} />
            ))}
        </div>
      ))}
    </section>
  );
}
