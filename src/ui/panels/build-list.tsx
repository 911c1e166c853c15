/** The builds of the project: line, name, what differs from the baseline, and what can be done with each. */
import { signal } from '@preact/signals';
import type { JSX } from 'preact';
import type { Build } from '../../model/project.ts';
import { editProject } from '../app/apply.ts';
import { describeDifference } from '../app/difference.ts';
import { duplicateBuild, removeBuild } from '../app/edits.ts';
import { lineOf } from '../app/lines.ts';
import { tell } from '../app/notices.ts';
import { writeField } from '../app/quantities.ts';
import { baseline, hiddenBuilds, project, selectBuild, selectedBuild, toggleVisible, withBuild } from '../app/store.ts';
import { undoAct } from '../app/undo-act.ts';
import { openComparison } from '../compare/chosen.ts';
import { compare } from '../text/compare.ts';
import { text } from '../text/en.ts';
import { Icon, LineSample } from './icons.tsx';

const editing = signal<string | undefined>(undefined);
const unfolded = signal(false);

const length = (value_mm: number): string => writeField('length', value_mm);

const differenceOf = (build: Build): string =>
  describeDifference(baseline.value, build, project.value.damper.layout, length);

function duplicate(build: Build): void {
  const [next, id] = duplicateBuild(project.value, build.id, text.builds.copyOf);
  editProject(() => next, { label: text.builds.duplicateLabel(build.name) });
  selectBuild(id);
}

function remove(build: Build): void {
  editProject(() => removeBuild(project.value, build.id), { label: text.builds.deleteLabel(build.name) });
  tell(text.builds.deleted(build.name), { action: undoAct() });
}

function BuildDetails({ build }: { build: Build }): JSX.Element {
  const isBaseline = build.id === project.value.baselineBuild;
  const change = (part: Partial<Build>, label: string): void => {
    editProject(() => withBuild(build.id, (b) => ({ ...b, ...part })), { label, mergeKey: `${label}-${build.id}` });
  };
  return (
    <div class="build-details">
      <label>
        <span class="unseen">{text.builds.rename}</span>
        <input
          class="words name"
          value={build.name}
          onInput={(event) => change({ name: event.currentTarget.value }, text.builds.rename)}
        />
      </label>
      <label>
        <span class="unseen">{text.builds.notes}</span>
        <textarea
          class="words"
          rows={3}
          placeholder={text.builds.notesHint}
          value={build.notes}
          onInput={(event) => change({ notes: event.currentTarget.value }, text.builds.notes)}
        />
      </label>
      <div class="build-acts">
        <button type="button" class="button" onClick={() => duplicate(build)}>
          {text.builds.duplicate}
        </button>
        {!isBaseline && (
          <button
            type="button"
            class="button"
            onClick={() =>
              editProject(() => ({ ...project.value, baselineBuild: build.id }), { label: text.builds.setBaseline })
            }
          >
            {text.builds.setBaseline}
          </button>
        )}
        <button
          type="button"
          class="button"
          disabled={project.value.builds.length < 2}
          title={project.value.builds.length < 2 ? text.builds.lastBuild : undefined}
          onClick={() => remove(build)}
        >
          {text.builds.delete}
        </button>
      </div>
    </div>
  );
}

/** Notes to read, and behind a button all that can be changed about a build as a whole. */
function BuildMore({ build }: { build: Build }): JSX.Element {
  const isOpen = editing.value === build.id;
  return (
    <>
      {isOpen && <BuildDetails build={build} />}
      {!isOpen && build.notes && <p class="build-notes">{build.notes}</p>}
      <button
        type="button"
        class="button build-edit"
        aria-expanded={isOpen}
        onClick={() => {
          editing.value = isOpen ? undefined : build.id;
        }}
      >
        {isOpen ? text.builds.editDone : text.builds.edit}
      </button>
    </>
  );
}

function BuildItem({ build }: { build: Build }): JSX.Element {
  const isSelected = build.id === selectedBuild.value.id;
  const isBaseline = build.id === project.value.baselineBuild;
  const isHidden = hiddenBuilds.value.has(build.id);
  const difference = isBaseline ? '' : differenceOf(build) || text.builds.sameAsBaseline;
  return (
    <li class={`build ${isSelected ? 'selected' : ''}`} style={{ '--build': lineOf(build.id).colour }}>
      <div class="build-head">
        <button
          type="button"
          class="pick"
          aria-pressed={isSelected}
          title={difference}
          onClick={() => selectBuild(build.id)}
        >
          <LineSample {...lineOf(build.id)} />
          <span class="build-name">{build.name}</span>
          {isBaseline && <span class="tag">{text.builds.baseline}</span>}
          {difference && <span class="difference">{difference}</span>}
        </button>
        <button
          type="button"
          class="icon"
          role="switch"
          aria-checked={!isHidden}
          aria-label={text.builds.show(build.name)}
          title={text.builds.show(build.name)}
          onClick={() => toggleVisible(build.id)}
        >
          <Eye hidden={isHidden} />
        </button>
      </div>
      {isSelected && <BuildMore build={build} />}
    </li>
  );
}

const Eye = ({ hidden }: { hidden: boolean }): JSX.Element => <Icon name={hidden ? 'eyeOff' : 'eye'} />;

function CompareButton(): JSX.Element {
  const isAlone = project.value.builds.length < 2;
  return (
    <button
      type="button"
      class="button"
      aria-haspopup="dialog"
      title={isAlone ? compare.needsTwo : compare.openWhy}
      disabled={isAlone}
      onClick={openComparison}
    >
      {compare.open}
    </button>
  );
}

const LIST_ID = 'builds-list';

/** On a phone the builds take one line, so that the curves are in the first view; elsewhere this is not there. */
function Fold(): JSX.Element {
  const { id, name } = selectedBuild.value;
  return (
    <button
      type="button"
      class="builds-fold"
      aria-expanded={unfolded.value}
      aria-controls={LIST_ID}
      onClick={() => {
        unfolded.value = !unfolded.value;
      }}
    >
      <LineSample {...lineOf(id)} />
      <span class="fold-name">{name}</span>
      <span class="fold-count">{text.builds.count(project.value.builds.length)}</span>
      <Icon name="fold" />
    </button>
  );
}

export function BuildList(): JSX.Element {
  return (
    <section class={`sheet builds ${unfolded.value ? 'unfolded' : ''}`} aria-label={text.builds.title}>
      <header>
        <h2>{text.builds.title}</h2>
      </header>
      <Fold />
      <ul id={LIST_ID}>
        {project.value.builds.map((build) => (
          <BuildItem key={build.id} build={build} />
        ))}
      </ul>
      <div class="builds-foot">
        <CompareButton />
      </div>
    </section>
  );
}
