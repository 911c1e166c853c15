/** What stands over a stack or lets it rise: the size of the backing plate, a coil spring, a float. */
import type { JSX } from 'preact';
import type { BackingPlate, CoilSpring, Float } from '../../model/project.ts';
import { coilAdjusterOf } from '../app/build-parts.ts';
import { BACKING_PLATE, COIL_SPRING, FLOAT, partsWanted } from '../app/part-groups.ts';
import { showField } from '../app/quantities.ts';
import { place, selectedBuild, selectedValving } from '../app/store.ts';
import { Measured } from '../sketches/measured.tsx';
import { text } from '../text/en.ts';
import { PRELOAD_ADJUSTER } from './beside-fields.tsx';
import { type PartEntry, PartField, PartFields, PartsWanted } from './part-fields.tsx';
import { PartSection } from './part-section.tsx';

export const PLATE_GAP: PartEntry<BackingPlate> = {
  part: 'gap_mm',
  label: text.stack.plateGap,
  dimension: 'plateGap',
  title: text.stack.plateGapWhy,
  kind: 'length',
};
const PLATE_DIAMETER: PartEntry<BackingPlate> = {
  part: 'outerDiameter_mm',
  label: text.stack.plateDiameter,
  dimension: 'plateDiameter',
  title: text.stack.plateDiameterWhy,
  kind: 'length',
  placeholder: text.stack.plateCoversAll,
};
const COIL_ENTRIES: readonly PartEntry<CoilSpring>[] = [
  {
    part: 'diameter_mm',
    label: text.stack.coilDiameter,
    dimension: 'coilDiameter',
    title: text.stack.coilDiameterWhy,
    kind: 'length',
  },
  { part: 'rate_N_mm', label: text.stack.coilRate, dimension: 'coilRate', kind: 'springRate' },
  {
    part: 'preload_N',
    label: text.stack.coilPreload,
    dimension: 'coilPreload',
    title: text.stack.preloadWhy,
    kind: 'force',
  },
];
const FLOAT_ENTRIES: readonly PartEntry<Float>[] = [
  {
    part: 'travel_mm',
    label: text.stack.floatTravel,
    dimension: 'floatTravel',
    title: text.stack.floatTravelWhy,
    kind: 'length',
  },
  { part: 'rate_N_mm', label: text.stack.floatRate, dimension: 'floatRate', kind: 'springRate' },
  {
    part: 'preload_N',
    label: text.stack.floatPreload,
    dimension: 'floatPreload',
    title: text.stack.preloadWhy,
    kind: 'force',
  },
];

/** What the closed disclosure holds, so that nothing at work is out of sight. */
function summaryOf(): string {
  const { backingPlate, coilSpring, float } = selectedValving.value;
  const plate_mm = backingPlate?.outerDiameter_mm;
  const waits = [BACKING_PLATE, COIL_SPRING, FLOAT].some((group) => partsWanted(group as typeof FLOAT).length > 0);
  const parts = [
    ...(plate_mm === undefined ? [] : [text.stack.summary.plate(showField('length', plate_mm))]),
    ...(coilSpring ? [text.stack.summary.coil(showField('springRate', coilSpring.rate_N_mm))] : []),
    ...(float ? [text.stack.summary.float(showField('length', float.travel_mm))] : []),
    ...(waits ? [text.stack.summary.waits] : []),
  ];
  return parts.join(', ') || text.stack.absent;
}

export function SpringFields(): JSX.Element {
  return (
    <details class="group-of-fields springs">
      <summary>
        <span class="lettering">{text.stack.springs}</span> <span class="hint">{summaryOf()}</span>
      </summary>
      <Measured sketch="springs">
        <PartField group={BACKING_PLATE} entry={PLATE_DIAMETER} />
        <PartsWanted group={BACKING_PLATE} entries={[PLATE_GAP]} />
        <PartFields group={COIL_SPRING} entries={COIL_ENTRIES} />
        <PartFields group={FLOAT} entries={FLOAT_ENTRIES} />
      </Measured>
      {selectedValving.value.coilSpring && (
        <PartSection
          part={coilAdjusterOf(selectedBuild.value.id, place.value)}
          title={text.besides.coilAdjuster}
          why={text.besides.adjusterWhy}
          boxes={PRELOAD_ADJUSTER}
          sketch="spring-adjuster"
        />
      )}
    </details>
  );
}
