/** Heads of the columns of a table, a build each, with its line as the chart draws it. */
import type { JSX } from 'preact';
import { lineOf } from '../app/lines.ts';
import { LineSample } from '../panels/icons.tsx';

export function BuildHeads({ builds }: { builds: readonly { id: string; name: string }[] }): JSX.Element {
  return (
    <>
      {builds.map(({ id, name }) => (
        <th key={id} scope="col" class="number-col" title={name}>
          <LineSample {...lineOf(id)} />
          <span>{name}</span>
        </th>
      ))}
    </>
  );
}
