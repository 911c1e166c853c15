/** The numbers at the speed cursor, build beside build, for both directions. */
import type { JSX } from 'preact';
import type { Direction } from '../app/places.ts';
import { show } from '../app/quantities.ts';
import { cursorSpeed, visibleBuilds } from '../app/store.ts';
import { ExportMenu } from '../export/export-menu.tsx';
import { readingsChoices } from '../export/readings-export.ts';
import { text } from '../text/en.ts';
import { BuildHeads } from './build-heads.tsx';
import { type Reading, readingOf } from './reading.ts';
import type { ReadoutGroup, ReadoutRow, SolvedReading } from './readout-group.ts';
import { readoutGroups } from './readout-rows.ts';

function Head({ readings, way }: { readings: readonly Reading[]; way: Direction }): JSX.Element {
  return (
    <thead>
      <tr>
        <th scope="col">{way === 1 ? text.way.compression : text.way.rebound}</th>
        <BuildHeads builds={readings.map(({ build }) => build)} />
      </tr>
    </thead>
  );
}

const isSolvedReading = (reading: Reading): reading is SolvedReading => reading.point !== undefined;

function Row({ row, readings }: { row: ReadoutRow; readings: readonly Reading[] }): JSX.Element {
  return (
    <tr data-row={row.id}>
      <th scope="row">{row.name}</th>
      {readings.map((reading) => {
        const { build, stale } = reading;
        const tone = isSolvedReading(reading) ? row.tone?.(reading) : undefined;
        const note = isSolvedReading(reading) ? row.note?.(reading) : undefined;
        return (
          <td key={build.id} class={`number-col ${stale ? 'stale' : ''} ${tone ?? ''}`} data-build={build.id}>
            {isSolvedReading(reading) ? row.cell(reading) : text.readout.notSolved}
            {note && <span class="cell-note">{note}</span>}
          </td>
        );
      })}
    </tr>
  );
}

function Group({ group, readings }: { group: ReadoutGroup; readings: readonly Reading[] }): JSX.Element | null {
  const solved = readings.filter(isSolvedReading);
  const rows = group.rows.filter(({ when }) => !when || solved.some(when));
  if (rows.length === 0) return null;
  return (
    <tbody data-group={group.id}>
      {group.title && (
        <tr class="group-title">
          <th scope="colgroup" colSpan={readings.length + 1}>
            {group.title}
          </th>
        </tr>
      )}
      {rows.map((row) => (
        <Row key={row.id} row={row} readings={readings} />
      ))}
    </tbody>
  );
}

function DirectionTable({ way }: { way: Direction }): JSX.Element {
  const readings = visibleBuilds.value.map((build) => readingOf(build, way));
  return (
    <table class="readings" data-way={way === 1 ? 'compression' : 'rebound'}>
      <Head readings={readings} way={way} />
      {readoutGroups(way).map((group) => (
        <Group key={group.id} group={group} readings={readings} />
      ))}
    </table>
  );
}

export function Readout(): JSX.Element {
  return (
    <section class="sheet readout" aria-label={text.readout.title(show('speed', cursorSpeed.value))}>
      <header>
        <h2>{text.readout.title(show('speed', cursorSpeed.value))}</h2>
        <ExportMenu of={text.export.sheets.readout} choices={readingsChoices} />
      </header>
      <div class={`reading-tables ${visibleBuilds.value.length > 2 ? 'stacked' : ''}`}>
        <DirectionTable way={1} />
        <DirectionTable way={-1} />
      </div>
    </section>
  );
}
