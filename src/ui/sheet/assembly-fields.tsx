/** What a person writes onto the sheet, kept with the build. */
import type { JSX } from 'preact';
import { useId } from 'preact/hooks';
import { FIRST_STACKS } from '../../model/assembly.ts';
import type { Assembly, Project } from '../../model/project.ts';
import { editProject } from '../app/apply.ts';
import { keyPut } from '../app/optional-parts.ts';
import { project, selectBuild, selectedBuild, withBuild } from '../app/store.ts';
import { NumberField } from '../panels/number-field.tsx';
import { SelectField } from '../panels/select-field.tsx';
import { sheetPageWords as words } from '../text/sheet.ts';

const written = (): Assembly => selectedBuild.value.assembly ?? {};

function withAssembly<Key extends keyof Assembly>(key: Key, value: Assembly[Key] | undefined): Project {
  return withBuild(selectedBuild.value.id, (build) => ({
    ...build,
    assembly: keyPut(build.assembly ?? {}, key, value),
  }));
}

const BuildChoice = (): JSX.Element => (
  <SelectField
    label={words.build}
    options={project.value.builds.map(({ id }) => id)}
    chosen={selectedBuild.value.id}
    name={(id) => project.value.builds.find((build) => build.id === id)?.name || words.unnamed}
    onChoose={selectBuild}
  />
);

const NOT_SAID = 'not-said';

const FirstStackChoice = (): JSX.Element => (
  <SelectField
    label={words.firstStack}
    options={[NOT_SAID, ...FIRST_STACKS] as const}
    chosen={written().firstStack ?? NOT_SAID}
    name={(option) => words.firstStacks[option]}
    onChoose={(option) => {
      const first = option === NOT_SAID ? undefined : option;
      editProject(() => withAssembly('firstStack', first), { label: words.firstStack });
    }}
  />
);

type Torque = 'pistonTorque_N_m' | 'baseTorque_N_m';

const TorqueField = ({ torque }: { torque: Torque }): JSX.Element => (
  <NumberField
    label={words.torques[torque]}
    kind="torque"
    value={written()[torque]}
    placeholder={words.unknown}
    edit={(value) => withAssembly(torque, value)}
    clear={() => withAssembly(torque, undefined)}
  />
);

type Line = 'torqueSource' | 'threadLocker' | 'notes';
const LONGEST: Readonly<Record<Line, number>> = { torqueSource: 200, threadLocker: 200, notes: 2000 };

function takeLine(line: Line, value: string): void {
  const edit = (): Project => withAssembly(line, value === '' ? undefined : value);
  editProject(edit, { label: words.lines[line], mergeKey: `${line}-${selectedBuild.value.id}` });
}

function LineField({ line }: { line: Line }): JSX.Element {
  const id = useId();
  const props = {
    ...{ id, class: 'words', maxLength: LONGEST[line], placeholder: words.hints[line] },
    value: written()[line] ?? '',
  };
  return (
    <div class="line-field">
      <label for={id}>{words.lines[line]}</label>
      {line === 'notes' ? (
        <textarea {...props} rows={3} onInput={(event) => takeLine(line, event.currentTarget.value)} />
      ) : (
        <input {...props} onInput={(event) => takeLine(line, event.currentTarget.value)} />
      )}
    </div>
  );
}

/** Open beside the paper; folded above it where there is no room beside. */
export function AssemblyFields(): JSX.Element {
  const { valves } = selectedBuild.value;
  return (
    <aside class="sheet assembly-fields" aria-label={words.fields}>
      <BuildChoice />
      <details open={matchMedia('(min-width: 64.01rem)').matches}>
        <summary class="lettering">{words.fields}</summary>
        <div class="fields">
          <FirstStackChoice />
          <TorqueField torque="pistonTorque_N_m" />
          {valves.baseCompression && <TorqueField torque="baseTorque_N_m" />}
          <LineField line="torqueSource" />
          <LineField line="threadLocker" />
          <LineField line="notes" />
        </div>
        <p class="hint">{words.torqueWhy}</p>
      </details>
    </aside>
  );
}
