/** All projects on this machine, in a dialog over the bench. */
import { signal } from '@preact/signals';
import type { ComponentChildren, JSX } from 'preact';
import { useEffect, useRef } from 'preact/hooks';
import { LAYOUTS } from '../../model/project.ts';
import { openId, project } from '../app/store.ts';
import { text } from '../text/en.ts';
import { keeping } from '../text/keeping.ts';
import { startBlank, startFrom } from './actions.ts';
import { Act } from './bar.tsx';
import { demoEntries } from './demos.ts';
import { SavedStates } from './saved-states.tsx';
import { AsideRow, DeletedRow, KeptRow } from './shelf-rows.tsx';
import { closeView, page, said, shelf, writeSize } from './shown.ts';

const words = keeping.projects;

/** Whether the browser has promised not to clear what is kept; not known where it cannot be asked. */
const isLasting = signal<boolean | undefined>(undefined);

async function readPromise(): Promise<void> {
  isLasting.value = await navigator.storage?.persisted?.();
}

async function askToKeep(): Promise<void> {
  isLasting.value = await navigator.storage?.persist?.();
  if (!isLasting.value) said.value = { message: words.refusedToKeep };
}

function Room(): JSX.Element {
  const { kept, deleted } = shelf.value;
  const bytes = [...kept, ...deleted].reduce((sum, entry) => sum + entry.bytes, 0);
  useEffect(() => void readPromise(), []);
  return (
    <p class="hint room">
      {words.room(writeSize(bytes), kept.length)} {isLasting.value ? words.lasting : words.mayClear}{' '}
      {isLasting.value === false && <Act label={words.askToKeep} onClick={() => void askToKeep()} />}
    </p>
  );
}

interface PartProps {
  readonly title: string;
  readonly isEmpty: boolean;
  readonly children: ComponentChildren;
}

const Part = ({ title, isEmpty, children }: PartProps): JSX.Element | null =>
  isEmpty ? null : (
    <section aria-label={title}>
      <h3>{title}</h3>
      {children}
    </section>
  );

function NewProject(): JSX.Element {
  const first = useRef<HTMLDivElement>(null);
  const shown = page.value;
  const isAsked = shown?.kind === 'all' && shown.atNew;
  useEffect(() => {
    if (isAsked) first.current?.querySelector('button')?.focus();
  }, [isAsked]);
  return (
    <Part title={text.blank.start} isEmpty={false}>
      <p class="hint">{text.blank.startWhy}</p>
      <div class="acts" ref={first}>
        {LAYOUTS.map((layout) => (
          <Act
            key={layout}
            label={text.damper.layoutName[layout]}
            title={text.damper.layoutWhy[layout]}
            onClick={() => startBlank(layout)}
          />
        ))}
      </div>
    </Part>
  );
}

function AllProjects(): JSX.Element {
  const { kept, deleted, aside } = shelf.value;
  const isOpenKept = kept.some(({ id }) => id === openId.value);
  return (
    <>
      {kept.length === 0 && <p>{words.none}</p>}
      <ul class="shelf">
        {!isOpenKept && kept.length > 0 && (
          <li class="shelf-row">
            <p>
              <strong>{project.value.name || keeping.unnamed}</strong> <span class="tag">{words.here}</span>
              <span class="hint">{words.notKept}</span>
            </p>
          </li>
        )}
        {kept.map((entry) => (
          <KeptRow key={entry.id} entry={entry} />
        ))}
      </ul>
      <NewProject />
      <Part title={words.startNew} isEmpty={false}>
        <div class="acts">
          {demoEntries.map((demo) => (
            <Act key={demo.id} label={demo.title} onClick={() => void startFrom(demo)} />
          ))}
        </div>
      </Part>
      <Part title={words.deleted} isEmpty={deleted.length === 0}>
        <ul class="shelf">
          {deleted.map((entry) => (
            <DeletedRow key={entry.id} entry={entry} />
          ))}
        </ul>
      </Part>
      <Part title={words.aside} isEmpty={aside.length === 0}>
        <ul class="shelf">
          {aside.map((each) => (
            <AsideRow key={each.number} aside={each} />
          ))}
        </ul>
      </Part>
      <Room />
    </>
  );
}

function SaidLine(): JSX.Element | null {
  const now = said.value;
  if (!now) return null;
  return (
    <div class={`keeping-bar ${now.tone ?? ''}`} role={now.tone === 'problem' ? 'alert' : 'status'}>
      <p>{now.message}</p>
      {now.undo && <Act label={words.undo} onClick={now.undo} />}
    </div>
  );
}

function ProjectsDialog(): JSX.Element {
  const dialog = useRef<HTMLDialogElement>(null);
  useEffect(() => dialog.current?.showModal(), []);
  const shown = page.value;
  return (
    <dialog ref={dialog} class="projects-view" aria-labelledby="projects-title" onClose={closeView}>
      <div class="view-head">
        <h2 id="projects-title">{words.title}</h2>
        <Act label={words.close} onClick={() => dialog.current?.close()} />
      </div>
      <SaidLine />
      {shown?.kind === 'states' ? <SavedStates id={shown.id} name={shown.name} /> : <AllProjects />}
    </dialog>
  );
}

/** The view, while it is open. */
export const ProjectsView = (): JSX.Element | null => (page.value ? <ProjectsDialog /> : null);
