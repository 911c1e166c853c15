/** Heads of the columns of a table, a build each, with its line as the chart draws it. */
import type { JSX } from 'preact';
import { lineOf, marksOf } from '../app/lines.ts';
import { LineSample } from '../panels/icons.tsx';

interface BuildHeadsProps {
  readonly builds: readonly { id: string; name: string }[];
  /** Whether the chart has marks too. */
  readonly marked?: boolean;
}

export function BuildHeads({ builds, marked = false }: BuildHeadsProps): JSX.Element {
  return (
    <>
      {builds.map(({ id, name }) => (
        <th key={id} scope="col" class="number-col" title={name}>
          <LineSample {...lineOf(id)} {...(marked && marksOf(id))} />
          <span>{name}</span>
        </th>
      ))}
    </>
  );
}
