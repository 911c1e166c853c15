/** Name of the project, file, undo, units, colours, and what the solver is doing. */
import type { JSX } from 'preact';
import { useRef } from 'preact/hooks';
import { editProject } from '../app/apply.ts';
import { openDemo, openFile, saveCopy } from '../app/files.ts';
import { type Family, family, isDark, nextTheme } from '../app/preferences.ts';
import { solverState } from '../app/solve.ts';
import { project, redoEdit, redoLabel, undoEdit, undoLabel } from '../app/store.ts';
import { LessonsButton } from '../lessons/lessons-panel.tsx';
import { LinkButton } from '../projects/link-bars.tsx';
import { Projects } from '../projects/projects-view.tsx';
import { ProofLink } from '../proof/proof-link.tsx';
import { savingState } from '../storage/autosave.ts';
import { text } from '../text/en.ts';
import { Choice } from './choice.tsx';
import { IconButton, Mark } from './icons.tsx';

const FAMILIES: readonly Family[] = ['metric', 'imperial'];

function ProjectName(): JSX.Element {
  const rename = (name: string): void => {
    editProject(() => ({ ...project.value, name }), { label: text.bar.projectName, mergeKey: 'project-name' });
  };
  return (
    <div class="project">
      <input
        aria-label={text.bar.projectName}
        value={project.value.name}
        onInput={(event) => rename(event.currentTarget.value)}
      />
      {project.value.invented && (
        <span class="tag invented" title={text.inventedWhy}>
          {text.invented}
        </span>
      )}
    </div>
  );
}

function FileButtons(): JSX.Element {
  const picker = useRef<HTMLInputElement>(null);
  const picked = (input: HTMLInputElement): void => {
    const file = input.files?.[0];
    input.value = '';
    if (file) void openFile(file);
  };
  return (
    <div class="group">
      <Projects />
      <button type="button" class="button" title={text.bar.openWhy} onClick={() => picker.current?.click()}>
        {text.bar.open}
      </button>
      <input
        ref={picker}
        type="file"
        accept=".json,application/json"
        hidden
        onChange={(event) => picked(event.currentTarget)}
      />
      <button type="button" class="button" title={text.bar.saveWhy} onClick={saveCopy}>
        {text.bar.save}
      </button>
      <LinkButton />
      <button type="button" class="button" title={text.bar.demoWhy} onClick={openDemo}>
        {text.bar.demo}
      </button>
    </div>
  );
}

function UnitChoice(): JSX.Element {
  return (
    <Choice
      label={text.bar.units}
      options={FAMILIES}
      chosen={family.value}
      name={(each) => text.bar.family[each]}
      title={(each) => text.bar.familyLong[each]}
      onChoose={(each) => {
        family.value = each;
      }}
    />
  );
}

function Status(): JSX.Element {
  const { phase, message } = solverState.value;
  const look = phase === 'failed' ? 'bad' : phase === 'solving' || phase === 'loading' ? 'busy' : '';
  return (
    <div class={`status ${look}`} role="status" data-phase={phase} title={text.saving[savingState.value]}>
      <span class="dot" aria-hidden="true" />
      <span>
        <span class="solver-message">{message}</span>
        <span class={`saving ${savingState.value}`}>{text.saving[savingState.value]}</span>
      </span>
    </div>
  );
}

export function TopBar(): JSX.Element {
  return (
    <header class="bar">
      <h1 class="mark">
        <Mark />
        <span>{text.appName}</span>
      </h1>
      <ProjectName />
      <Status />
      <div class="group">
        <IconButton
          icon="undo"
          label={text.bar.undo(undoLabel.value)}
          disabled={undoLabel.value === undefined}
          onClick={undoEdit}
        />
        <IconButton
          icon="redo"
          label={text.bar.redo(redoLabel.value)}
          disabled={redoLabel.value === undefined}
          onClick={redoEdit}
        />
      </div>
      <FileButtons />
      <LessonsButton />
      <ProofLink />
      <div class="group">
        <UnitChoice />
        <IconButton
          icon={isDark() ? 'dark' : 'light'}
          label={text.bar.themeNow(isDark() ? text.bar.theme.dark : text.bar.theme.light)}
          onClick={nextTheme}
        />
      </div>
    </header>
  );
}
