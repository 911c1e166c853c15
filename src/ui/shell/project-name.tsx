/** The name of the open project, to read and to change. */
import type { JSX } from 'preact';
import { editProject } from '../app/apply.ts';
import { project } from '../app/store.ts';
import { text } from '../text/en.ts';

function rename(name: string): void {
  editProject(() => ({ ...project.value, name }), { label: text.bar.projectName, mergeKey: 'project-name' });
}

export function ProjectName(): JSX.Element {
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
