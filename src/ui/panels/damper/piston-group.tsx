/** What else makes force beside the valves: the band of the piston, friction, a hydraulic stop. */
import type { JSX } from 'preact';
import type { FrictionLaw, HydraulicStop, PistonBand } from '../../../model/project.ts';
import { FRICTION_LAW, HYDRAULIC_STOP, PISTON_BAND } from '../../app/damper-parts.ts';
import { editOrTell } from '../../app/edit-or-tell.ts';
import { withPartChanged } from '../../app/optional-parts.ts';
import { showField } from '../../app/quantities.ts';
import { project } from '../../app/store.ts';
import { text } from '../../text/en.ts';
import { Entries, FieldGroup } from '../field-group.tsx';
import { type PartBox, PartSection } from '../part-section.tsx';
import { SelectField } from '../select-field.tsx';

const words = text.damper;

const BAND: readonly PartBox<PistonBand>[] = [
  { key: 'clearance_mm', label: words.clearance, dimension: 'clearance', title: words.clearanceWhy, kind: 'length' },
  { key: 'length_mm', label: words.bandLength, dimension: 'bandLength', kind: 'length' },
  {
    key: 'eccentricity',
    label: words.eccentricity,
    dimension: 'eccentricity',
    title: words.eccentricityWhy,
    kind: 'plain',
  },
];

const FRICTION: readonly PartBox<FrictionLaw>[] = [
  { key: 'breakaway_N', label: words.breakaway, dimension: 'breakaway', title: words.breakawayWhy, kind: 'force' },
  {
    key: 'stribeckSpeed_m_s',
    label: words.stribeckSpeed,
    dimension: 'stribeckSpeed',
    title: words.stribeckSpeedWhy,
    kind: 'speed',
  },
  {
    key: 'viscous_N_s_m',
    label: words.viscous,
    dimension: 'viscous',
    title: words.viscousWhy,
    kind: 'viscousFriction',
  },
];

const STOP: readonly PartBox<HydraulicStop>[] = [
  { key: 'length_mm', label: words.stopLength, dimension: 'stopLength', title: words.stopLengthWhy, kind: 'length' },
  { key: 'plungerDiameter_mm', label: words.plunger, dimension: 'plunger', kind: 'length' },
  {
    key: 'clearance_mm',
    label: words.stopClearance,
    dimension: 'stopClearance',
    title: words.clearanceWhy,
    kind: 'length',
  },
];

const ENDS: readonly HydraulicStop['end'][] = ['compression', 'rebound'];

function StopEnd(): JSX.Element | null {
  const stop = HYDRAULIC_STOP.of(project.value);
  if (!stop) return null;
  return (
    <SelectField
      label={words.stopEnd}
      options={ENDS}
      chosen={stop.end}
      name={(end) => words.stopEnds[end]}
      onChoose={(end) => editOrTell(() => withPartChanged(HYDRAULIC_STOP, { end }), words.stopEnd)}
    />
  );
}

function summary(): string {
  const { damper } = project.value;
  const parts = [
    words.summary.friction(showField('force', damper.sealFriction_N)),
    ...(damper.pistonBand ? [words.summary.band] : []),
    ...(damper.hydraulicStop ? [words.summary.stop] : []),
  ];
  return parts.join(', ');
}

export function PistonGroup(): JSX.Element {
  const { damper } = project.value;
  return (
    <FieldGroup name="piston" title={words.groups.piston} summary={summary()} sketch="piston-parts">
      <Entries
        entries={[
          {
            label: words.friction,
            dimension: 'friction',
            kind: 'force',
            value: damper.sealFriction_N,
            edit: (sealFriction_N) => ({ ...project.value, damper: { ...project.value.damper, sealFriction_N } }),
          },
        ]}
      />
      <PartSection part={FRICTION_LAW} title={words.frictionLaw} why={words.frictionLawWhy} boxes={FRICTION} />
      <PartSection part={PISTON_BAND} title={words.band} why={words.bandWhy} boxes={BAND} />
      <PartSection part={HYDRAULIC_STOP} title={words.stop} why={words.stopWhy} boxes={STOP}>
        <StopEnd />
      </PartSection>
    </FieldGroup>
  );
}
