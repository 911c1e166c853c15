/** Messages in the corner, read aloud as they come. */
import type { JSX } from 'preact';
import { dismiss, type Notice, notices } from '../app/notices.ts';
import { text } from '../text/en.ts';
import { IconButton } from './icons.tsx';

function NoticeItem({ notice }: { notice: Notice }): JSX.Element {
  const act = (): void => {
    notice.action?.run();
    dismiss(notice.id);
  };
  return (
    <div class={`notice ${notice.tone}`} role={notice.tone === 'problem' ? 'alert' : 'status'}>
      <p>{notice.message}</p>
      <div class="acts">
        {notice.action && (
          <button type="button" class="button" onClick={act}>
            {notice.action.label}
          </button>
        )}
        <IconButton icon="remove" label={text.notices.dismiss} onClick={() => dismiss(notice.id)} />
      </div>
      {notice.details.length > 0 && (
        <ul>
          {notice.details.map((detail) => (
            <li key={detail}>{detail}</li>
          ))}
        </ul>
      )}
    </div>
  );
}

export function NoticeList(): JSX.Element {
  return (
    <section class="notices" aria-label={text.notices.region}>
      {notices.value.map((notice) => (
        <NoticeItem key={notice.id} notice={notice} />
      ))}
    </section>
  );
}
