/** Viscosity as the oil's data sheet gives it: two points, or one (or its grade) and the viscosity index. */
import type { JSX } from 'preact';
import {
  ISO_GRADES,
  type IsoGrade,
  type Project,
  type Viscosity,
  type ViscosityPoint,
} from '../../../model/project.ts';
import { editOrTell } from '../../app/edit-or-tell.ts';
import { switchKind, VISCOSITY_KINDS } from '../../app/viscosity-kinds.ts';
import { text } from '../../text/en.ts';
import { NumberField } from '../number-field.tsx';
import { SelectField } from '../select-field.tsx';

interface Props {
  readonly viscosity: Viscosity;
  readonly change: (viscosity: Viscosity) => Project;
}

function PointFields({
  viscosity,
  change,
  at,
}: Props & { viscosity: Extract<Viscosity, { kind: 'two-point' }>; at: 0 | 1 }) {
  const point = viscosity.points[at];
  const edit = (part: Partial<ViscosityPoint>): Project => {
    const points: [ViscosityPoint, ViscosityPoint] = [...viscosity.points];
    points[at] = { ...point, ...part };
    return change({ ...viscosity, points });
  };
  return (
    <>
      <NumberField
        label={text.damper.pointTemperature(at + 1)}
        dimension={at === 0 ? 'temperature1' : 'temperature2'}
        kind="temperature"
        value={point.temperature_degC}
        edit={(temperature_degC) => edit({ temperature_degC })}
      />
      <NumberField
        label={text.damper.pointViscosity(at + 1)}
        dimension={at === 0 ? 'viscosity1' : 'viscosity2'}
        kind="viscosity"
        value={point.kinematicViscosity_cSt}
        edit={(kinematicViscosity_cSt) => edit({ kinematicViscosity_cSt })}
      />
    </>
  );
}

function OneNumberFields({ viscosity, change }: Props & { viscosity: Exclude<Viscosity, { kind: 'two-point' }> }) {
  return (
    <>
      {viscosity.kind === 'iso-grade' ? (
        <SelectField<IsoGrade>
          label={text.damper.isoGrade}
          dimension="viscosity40"
          options={ISO_GRADES}
          chosen={viscosity.isoGrade}
          name={String}
          onChoose={(isoGrade) => editOrTell(() => change({ ...viscosity, isoGrade }), text.damper.isoGrade)}
        />
      ) : (
        <NumberField
          label={text.damper.viscosity40}
          dimension="viscosity40"
          kind="viscosity"
          value={viscosity.kinematicViscosity40_cSt}
          edit={(kinematicViscosity40_cSt) => change({ ...viscosity, kinematicViscosity40_cSt })}
        />
      )}
      <NumberField
        label={text.damper.viscosityIndex}
        dimension="viscosityIndex"
        kind="plain"
        value={viscosity.viscosityIndex}
        edit={(viscosityIndex) => change({ ...viscosity, viscosityIndex })}
      />
    </>
  );
}

export function ViscosityFields({ viscosity, change }: Props): JSX.Element {
  return (
    <>
      <SelectField
        label={text.damper.viscosityBy}
        options={VISCOSITY_KINDS}
        chosen={viscosity.kind}
        name={(kind) => text.damper.viscosityKind[kind]}
        onChoose={(kind) => editOrTell(() => change(switchKind(viscosity, kind)), text.damper.viscosityBy)}
      />
      {viscosity.kind === 'two-point' ? (
        <>
          <PointFields viscosity={viscosity} change={change} at={0} />
          <PointFields viscosity={viscosity} change={change} at={1} />
        </>
      ) : (
        <OneNumberFields viscosity={viscosity} change={change} />
      )}
    </>
  );
}
