/** Viscosity as the oil's data sheet gives it: two points, or one (or its grade) and the viscosity index. */
import type { JSX } from 'preact';
import type { IsoGrade, Project, Viscosity, ViscosityPoint } from '../../model/project.ts';
import { text } from '../text/en.ts';
import { NumberField } from './number-field.tsx';

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
        kind="temperature"
        value={point.temperature_degC}
        edit={(temperature_degC) => edit({ temperature_degC })}
      />
      <NumberField
        label={text.damper.pointViscosity(at + 1)}
        kind="viscosity"
        value={point.kinematicViscosity_cSt}
        edit={(kinematicViscosity_cSt) => edit({ kinematicViscosity_cSt })}
      />
    </>
  );
}

export function ViscosityFields({ viscosity, change }: Props): JSX.Element {
  if (viscosity.kind === 'two-point')
    return (
      <>
        <PointFields viscosity={viscosity} change={change} at={0} />
        <PointFields viscosity={viscosity} change={change} at={1} />
      </>
    );
  return (
    <>
      {viscosity.kind === 'iso-grade' ? (
        <NumberField
          label={text.damper.isoGrade}
          kind="plain"
          value={viscosity.isoGrade}
          // A number that is no grade is refused where every edit is checked.
          edit={(isoGrade) => change({ ...viscosity, isoGrade: isoGrade as IsoGrade })}
        />
      ) : (
        <NumberField
          label={text.damper.viscosity40}
          kind="viscosity"
          value={viscosity.kinematicViscosity40_cSt}
          edit={(kinematicViscosity40_cSt) => change({ ...viscosity, kinematicViscosity40_cSt })}
        />
      )}
      <NumberField
        label={text.damper.viscosityIndex}
        kind="plain"
        value={viscosity.viscosityIndex}
        edit={(viscosityIndex) => change({ ...viscosity, viscosityIndex })}
      />
    </>
  );
}
