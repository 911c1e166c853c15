/** What a shim may have beside its sizes: a bore, a dish, and notches in the face shim. */
import type { JSX } from 'preact';
import type { Notches, ShimRow } from '../../model/project.ts';
import { changeRow } from '../app/edits.ts';
import { materialOfRow } from '../app/material-parts.ts';
import { notchesOf, partsOf, withoutRowPart } from '../app/part-groups.ts';
import { place, selectedBuild, withValving } from '../app/store.ts';
import { Measured } from '../sketches/measured.tsx';
import { text } from '../text/en.ts';
import { MaterialPart } from './material-fields.tsx';
import { NumberField } from './number-field.tsx';
import { type PartEntry, PartFields } from './part-fields.tsx';

interface MoreProps {
  readonly row: ShimRow;
  readonly index: number;
}

const FEATURES = {
  innerDiameter_mm: {
    label: text.stack.bore,
    dimension: 'shimBore',
    title: text.stack.boreWhy,
    placeholder: text.stack.boreFits,
  },
  dish_mm: { label: text.stack.dish, dimension: 'dish', title: text.stack.dishWhy, placeholder: text.stack.dishFlat },
} as const;

/** Whether there is something in the row beside its sizes and count. */
export const hasMore = (row: ShimRow, index: number): boolean =>
  row.innerDiameter_mm !== undefined ||
  row.dish_mm !== undefined ||
  row.material !== undefined ||
  (mayBeNotched(row, index) && Object.keys(partsOf(notchesOf(index))).length > 0);

const mayBeNotched = (row: ShimRow, index: number): boolean => index === 0 || row.notches !== undefined;

function FeatureField({ row, index, feature }: MoreProps & { feature: keyof typeof FEATURES }): JSX.Element {
  const { label, ...box } = FEATURES[feature];
  return (
    <NumberField
      {...box}
      label={text.stack.field(label, index + 1)}
      kind="length"
      value={row[feature]}
      edit={(value) => withValving((valving) => changeRow(valving, index, { [feature]: value }))}
      clear={() => withValving((valving) => withoutRowPart(valving, index, feature))}
    />
  );
}

export function ShimMore({ row, index }: MoreProps): JSX.Element {
  const notchEntries: PartEntry<Notches>[] = [
    {
      part: 'count',
      dimension: 'notchCount',
      label: text.stack.field(text.stack.notches, index + 1),
      title: text.stack.notchesWhy,
      kind: 'count',
    },
    {
      part: 'width_mm',
      dimension: 'notchWidth',
      label: text.stack.field(text.stack.notchWidth, index + 1),
      kind: 'length',
    },
  ];
  return (
    <Measured sketch={mayBeNotched(row, index) ? 'shim-face' : 'shim'}>
      <FeatureField row={row} index={index} feature="innerDiameter_mm" />
      <FeatureField row={row} index={index} feature="dish_mm" />
      {mayBeNotched(row, index) && <PartFields group={notchesOf(index)} entries={notchEntries} />}
      <MaterialPart
        part={materialOfRow(selectedBuild.value.id, place.value, index)}
        title={text.material.ofRow(index + 1)}
        why={text.material.why}
      />
    </Measured>
  );
}
