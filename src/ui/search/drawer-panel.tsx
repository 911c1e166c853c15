/** The shims owned: a table by size, with what the builds of the project use of each. */
import { useSignal } from '@preact/signals';
import type { JSX } from 'preact';
import { useRef } from 'preact/hooks';
import { countAt, countsBySize } from '../../model/picking-list.ts';
import type { DrawerShim } from '../../model/project.ts';
import { unitOf } from '../app/quantities.ts';
import { project } from '../app/store.ts';
import { IconButton } from '../panels/icons.tsx';
import { NumberField } from '../panels/number-field.tsx';
import { drawerWords as words } from '../text/drawer.ts';
import { AddSize, PasteSizes } from './drawer-add.tsx';
import { openDrawerCsv, removeSize, saveDrawerCsv, shimsIn, stepSize, withoutBore, withSize } from './drawer-edits.ts';

type Used = readonly { readonly name: string; readonly counts: ReadonlyMap<string, number> }[];

const usedNow = (): Used =>
  project.value.builds.map(({ name, valves }) => ({
    name,
    counts: countsBySize(Object.values(valves).flatMap(({ shims }) => shims)),
  }));

function Head(): JSX.Element {
  const column = (name: string, unit?: string): JSX.Element => (
    <th scope="col">
      {name} {unit && <span class="column-unit">{unit}</span>}
    </th>
  );
  return (
    <thead>
      <tr>
        {column(words.diameter, unitOf('length'))}
        {column(words.thickness, unitOf('length'))}
        {column(words.bore, unitOf('length'))}
        <th scope="col" class="count-col">
          {words.count}
        </th>
        <th scope="col" title={words.usedByWhy}>
          {words.usedBy}
        </th>
        <th scope="col">
          <span class="unseen">{words.actions}</span>
        </th>
      </tr>
    </thead>
  );
}

function Length({
  shim,
  index,
  of,
}: {
  shim: DrawerShim;
  index: number;
  of: 'outerDiameter_mm' | 'thickness_mm';
}): JSX.Element {
  const name = of === 'thickness_mm' ? words.thickness : words.diameter;
  return (
    <NumberField
      bare
      label={words.field(name, index + 1)}
      kind="length"
      value={shim[of]}
      edit={(value) => withSize(index, { [of]: value })}
    />
  );
}

function Size({ shim, index, used }: { shim: DrawerShim; index: number; used: Used }): JSX.Element {
  const n = index + 1;
  const own = used.flatMap(({ name, counts }) => {
    const count = countAt(counts, shim);
    return count > 0 ? [words.used(name, count)] : [];
  });
  return (
    <tr>
      <td>
        <Length shim={shim} index={index} of="outerDiameter_mm" />
      </td>
      <td>
        <Length shim={shim} index={index} of="thickness_mm" />
      </td>
      <td>
        <NumberField
          bare
          label={words.field(words.bore, n)}
          kind="length"
          value={shim.innerDiameter_mm}
          edit={(innerDiameter_mm) => withSize(index, { innerDiameter_mm })}
          clear={() => withoutBore(index)}
          placeholder={words.boreNone}
          title={words.boreWhy}
        />
      </td>
      <td class="count-col">
        <span class="stepper">
          <IconButton
            icon="minus"
            label={words.oneLess(n)}
            disabled={shim.count < 1}
            onClick={() => stepSize(index, -1)}
          />
          <NumberField
            bare
            label={words.field(words.count, n)}
            kind="count"
            value={shim.count}
            edit={(count) => withSize(index, { count })}
          />
          <IconButton icon="plus" label={words.oneMore(n)} onClick={() => stepSize(index, 1)} />
        </span>
      </td>
      <td class="used-by">{own.join(' · ')}</td>
      <td class="row-acts">
        <IconButton icon="remove" label={words.remove(n)} onClick={() => removeSize(index)} />
      </td>
    </tr>
  );
}

function Files({ onPaste }: { onPaste: () => void }): JSX.Element {
  const input = useRef<HTMLInputElement>(null);
  return (
    <div class="stack-acts">
      <button type="button" class="button" onClick={onPaste}>
        {words.paste}
      </button>
      <button type="button" class="button" onClick={() => input.current?.click()}>
        {words.open}
      </button>
      <input
        ref={input}
        type="file"
        hidden
        accept=".csv,text/csv,text/plain"
        data-drawer-file
        onChange={(event) => {
          const box = event.currentTarget;
          const file = box.files?.[0];
          box.value = '';
          if (file) void openDrawerCsv(file);
        }}
      />
      <button type="button" class="button" disabled={project.value.drawer.length === 0} onClick={saveDrawerCsv}>
        {words.save}
      </button>
      <span class="total" data-drawer-total={shimsIn(project.value.drawer)}>
        {words.total(project.value.drawer.length, shimsIn(project.value.drawer))}
      </span>
    </div>
  );
}

export function DrawerPanel(): JSX.Element {
  const pasting = useSignal(false);
  const { drawer } = project.value;
  const used = usedNow();
  return (
    <section class="sheet drawer" aria-label={words.title} id="drawer" tabIndex={-1}>
      <header>
        <h2>{words.title}</h2>
        <span class="hint">{words.intro}</span>
      </header>
      {drawer.length === 0 ? (
        <p class="hint drawer-empty">{words.empty}</p>
      ) : (
        <div class="drawer-sizes">
          <table class="drawer-table">
            <Head />
            <tbody>
              {drawer.map((shim, index) => (
                <Size key={index} shim={shim} index={index} used={used} />
              ))}
            </tbody>
          </table>
        </div>
      )}
      <AddSize />
      <Files
        onPaste={() => {
          pasting.value = true;
        }}
      />
      {pasting.value && (
        <PasteSizes
          onClose={() => {
            pasting.value = false;
          }}
        />
      )}
    </section>
  );
}
