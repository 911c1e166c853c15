/** What test benches measured of the build on show, and how far the build lies off it. */
import type { JSX } from 'preact';
import { useRef } from 'preact/hooks';
import type { Scatter } from '../../measured/residuals.ts';
import type { Build } from '../../model/project.ts';
import { lineOf } from '../app/lines.ts';
import { units } from '../app/preferences.ts';
import { show, showPercent } from '../app/quantities.ts';
import { outcomes } from '../app/solve.ts';
import { project, selectedBuild } from '../app/store.ts';
import { ExportMenu } from '../export/export-menu.tsx';
import { saveCsv } from '../export/readings-export.ts';
import { IconButton, LineSample } from '../panels/icons.tsx';
import { measuredWords as words } from '../text/measured.ts';
import { FitSection } from './fit-section.tsx';
import { type MeasuredRow, otherConditions, residualTable, rowOf } from './measured-rows.ts';
import { openMeasuredFile } from './open-file.ts';
import { removeMeasurement } from './remove.ts';
import { measurementStory } from './step-words.ts';
import './measured.css';

function ReadButton({ build }: { build: Build }): JSX.Element {
  const input = useRef<HTMLInputElement>(null);
  return (
    <>
      <button
        type="button"
        class="button"
        aria-label={words.readFor(build.name)}
        onClick={() => input.current?.click()}
      >
        {words.read}
      </button>
      <input
        ref={input}
        type="file"
        hidden
        accept=".csv,.txt,.tsv,.dat,text/csv,text/plain"
        data-measured-file
        onChange={(event) => {
          const [file] = event.currentTarget.files ?? [];
          if (file) void openMeasuredFile(build.id, file);
          event.currentTarget.value = '';
        }}
      />
    </>
  );
}

const scatterCell = (scatter: Scatter | undefined): string =>
  scatter ? words.rms(show('force', scatter.rms_N), showPercent(scatter.rms_share)) : words.noPoints;

function Details({ row, build }: { row: MeasuredRow; build: Build }): JSX.Element {
  const { measurement, beyond } = row;
  const others = otherConditions(measurement.conditions, project.value, build);
  return (
    <tr class="measured-details">
      <td colSpan={5}>
        {others.length > 0 && <p class="caution-line">{words.otherConditions(others.join(', '))}</p>}
        {beyond > 0 && <p class="hint">{words.beyond(beyond)}</p>}
        <details>
          <summary aria-label={words.details(measurement.name)}>{words.detailsShort}</summary>
          <ul class="hint">
            {measurementStory(measurement).map((line) => (
              <li key={line}>{line}</li>
            ))}
          </ul>
        </details>
      </td>
    </tr>
  );
}

function Measurements({ build }: { build: Build }): JSX.Element {
  const curve = outcomes.value.get(build.id)?.curve;
  const rows = (build.measurements ?? []).map((each) =>
    curve ? rowOf(each, curve) : { measurement: each, beyond: 0 },
  );
  const { columns } = words;
  return (
    <>
      <table class="readings measured-table" aria-label={words.table}>
        <thead>
          <tr>
            <th scope="col">{columns.name}</th>
            <th scope="col" class="number-col">
              <span>{columns.points}</span>
            </th>
            <th scope="col" class="number-col">
              <span>{columns.compression}</span>
            </th>
            <th scope="col" class="number-col">
              <span>{columns.rebound}</span>
            </th>
            <td />
          </tr>
        </thead>
        {rows.map((row) => (
          <tbody key={row.measurement.id} data-measurement={row.measurement.id}>
            <tr>
              <th scope="row">{row.measurement.name}</th>
              <td class="number-col">{row.measurement.points.speed_m_s.length}</td>
              <td class="number-col" data-rms="compression">
                {curve ? scatterCell(row.compression) : words.noCurve}
              </td>
              <td class="number-col" data-rms="rebound">
                {curve ? scatterCell(row.rebound) : words.noCurve}
              </td>
              <td class="act">
                <IconButton
                  icon="remove"
                  label={words.remove(row.measurement.name)}
                  onClick={() => removeMeasurement(build.id, row.measurement)}
                />
              </td>
            </tr>
            <Details row={row} build={build} />
          </tbody>
        ))}
      </table>
      <p class="hint">{words.meaning}</p>
    </>
  );
}

function exportChoices(build: Build) {
  const curve = outcomes.value.get(build.id)?.curve;
  if (!curve) return [];
  const save = (): void => saveCsv(words.file, residualTable(build.measurements ?? [], curve, units.value));
  return [{ id: 'measured-csv', label: words.exportCsv, run: save }];
}

export function MeasuredPanel(): JSX.Element {
  const build = selectedBuild.value;
  const hasAny = (build.measurements ?? []).length > 0;
  return (
    <section class="sheet measured" aria-label={words.title(build.name)}>
      <header>
        <h2>
          <LineSample {...lineOf(build.id)} />
          {words.title(build.name)}
        </h2>
        <span class="group">
          <ReadButton build={build} />
          {hasAny && outcomes.value.get(build.id)?.curve && (
            <ExportMenu of={words.export} choices={() => exportChoices(build)} />
          )}
        </span>
      </header>
      <div class="measured-content">
        {hasAny ? <Measurements build={build} /> : <p class="hint">{words.none}</p>}
        {(hasAny || build.fit) && <FitSection build={build} />}
      </div>
    </section>
  );
}
