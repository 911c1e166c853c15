/** Bars under the top bar: what concerns the open project as a whole and stays until something is done about it. */
import type { JSX } from 'preact';
import { saveCopy } from '../app/files.ts';
import { putUpdateOff, takeUpdate, update } from '../offline/updates.ts';
import { access, isTakingOver, takeOver } from '../storage/access.ts';
import { retrySaving } from '../storage/autosave.ts';
import { type Trouble, trouble } from '../storage/connection.ts';
import { keeping } from '../text/keeping.ts';
import { Act, Bar } from './bar.tsx';
import { ArrivedBar, OfferBar } from './link-bars.tsx';

const canRetry = (why: Trouble): boolean => why !== 'blocked' && why !== 'outdated';

function TroubleBar(): JSX.Element | null {
  const why = trouble.value;
  if (!why) return null;
  return (
    <Bar kind="trouble" tone="problem" message={keeping.trouble[why]}>
      <Act label={keeping.trouble.download} onClick={saveCopy} />
      {canRetry(why) ? (
        <Act label={keeping.trouble.retry} onClick={() => void retrySaving()} />
      ) : (
        <Act label={keeping.trouble.reload} onClick={() => location.reload()} />
      )}
    </Bar>
  );
}

function AccessBar(): JSX.Element | null {
  if (access.value !== 'reading') return null;
  const { reading, takingOver, takeOver: label, takeOverWhy } = keeping.access;
  return (
    <Bar kind="access" message={isTakingOver.value ? takingOver : reading}>
      <Act label={label} title={takeOverWhy} disabled={isTakingOver.value} onClick={() => void takeOver()} />
    </Bar>
  );
}

function UpdateBar(): JSX.Element | null {
  if (!update.value) return null;
  const { now, later } = keeping.update;
  return (
    <Bar kind="update" message={keeping.update[update.value]}>
      <Act label={now} onClick={() => void takeUpdate()} />
      <Act label={later} onClick={putUpdateOff} />
    </Bar>
  );
}

export function Bars(): JSX.Element {
  return (
    <section class="keeping-bars" aria-label={keeping.bars}>
      <TroubleBar />
      <AccessBar />
      <ArrivedBar />
      <OfferBar />
      <UpdateBar />
    </section>
  );
}
