/** Rows of the projects view: kept projects, deleted ones, and texts that could not be read. */
import { useSignal } from '@preact/signals';
import type { JSX } from 'preact';
import { openId, project } from '../app/store.ts';
import { type Aside, DELETED_KEPT_MS, type ShelfEntry } from '../storage/shelf.ts';
import { keeping } from '../text/keeping.ts';
import {
  downloadAside,
  duplicateEntry,
  openEntry,
  removeEntry,
  removeEntryForGood,
  renameEntry,
  takeBack,
  throwAway,
} from './actions.ts';
import { Act } from './bar.tsx';
import { page, said, shelf, writeDay, writeSize } from './shown.ts';

const words = keeping.projects;
const DAY_MS = 24 * 60 * 60 * 1000;

const nameOf = (entry: ShelfEntry): string =>
  (entry.id === openId.value ? project.value.name : entry.name) || keeping.unnamed;

function Rename({ entry, onDone }: { entry: ShelfEntry; onDone: () => void }): JSX.Element {
  const name = useSignal(nameOf(entry));
  const submit = async (event: Event): Promise<void> => {
    event.preventDefault();
    if (await renameEntry(entry, name.value)) onDone();
  };
  return (
    <form class="rename" onSubmit={(event) => void submit(event)}>
      <label>
        <span class="unseen">{words.renameTo}</span>
        <input
          class="words"
          value={name.value}
          onInput={(event) => {
            name.value = event.currentTarget.value;
          }}
        />
      </label>
      <button type="submit" class="button">
        {words.renameDone}
      </button>
    </form>
  );
}

export function KeptRow({ entry }: { entry: ShelfEntry }): JSX.Element {
  const isRenaming = useSignal(false);
  const name = nameOf(entry);
  const isHere = entry.id === openId.value;
  const toggleRename = (): void => {
    isRenaming.value = !isRenaming.value;
  };
  const showStates = (): void => {
    page.value = { kind: 'states', id: entry.id, name };
    said.value = undefined;
  };
  return (
    <li class="shelf-row" data-project={entry.id}>
      <p>
        <strong>{name}</strong>
        {isHere && <span class="tag">{words.here}</span>}
        {!isHere && shelf.value.isHeld(entry.id) && <span class="tag">{words.elsewhere}</span>}
        <span class="hint">{words.facts(writeDay(entry.changedAt), writeSize(entry.bytes))}</span>
      </p>
      <div class="acts">
        <Act label={words.openShort} name={words.openIt(name)} onClick={() => void openEntry(entry)} />
        <Act label={words.historyShort} name={words.history(name)} onClick={showStates} />
        <Act label={words.duplicateShort} name={words.duplicate(name)} onClick={() => void duplicateEntry(entry)} />
        <Act label={words.renameShort} name={words.rename(name)} onClick={toggleRename} />
        <Act label={words.removeShort} name={words.remove(name)} onClick={() => void removeEntry(entry)} />
      </div>
      {isRenaming.value && <Rename entry={entry} onDone={toggleRename} />}
    </li>
  );
}

export function DeletedRow({ entry }: { entry: ShelfEntry }): JSX.Element {
  const isSure = useSignal(false);
  const name = nameOf(entry);
  const last = writeDay((entry.deletedAt ?? 0) + DELETED_KEPT_MS - DAY_MS);
  const ask = (asks: boolean) => (): void => {
    isSure.value = asks;
  };
  return (
    <li class="shelf-row" data-deleted={entry.id}>
      <p>
        <strong>{name}</strong> <span class="hint">{words.deletedFacts(last, writeSize(entry.bytes))}</span>
      </p>
      {isSure.value ? (
        <div class="acts" role="alert">
          <span>{words.forGoodSure(name)}</span>
          <Act label={words.forGoodYes} onClick={() => void removeEntryForGood(entry)} />
          <Act label={words.forGoodNo} onClick={ask(false)} />
        </div>
      ) : (
        <div class="acts">
          <Act label={words.takeBackShort} name={words.takeBack(name)} onClick={() => void takeBack(entry)} />
          <Act label={words.forGoodShort} name={words.forGood(name)} onClick={ask(true)} />
        </div>
      )}
    </li>
  );
}

export function AsideRow({ aside }: { aside: Aside }): JSX.Element {
  const facts = words.asideFacts(writeDay(aside.keptAt), writeSize(aside.projectText.length));
  return (
    <li class="shelf-row">
      <p>{facts}</p>
      <div class="acts">
        <Act
          label={words.asideDownload}
          name={`${words.asideDownload}, ${facts}`}
          onClick={() => downloadAside(aside)}
        />
        <Act label={words.asideRemove} name={`${words.asideRemove}, ${facts}`} onClick={() => void throwAway(aside)} />
      </div>
    </li>
  );
}
