/** The form of the chassis beside its sketch. */
import type { JSX } from 'preact';
import type { AirSpring, Chassis, MainSpring, MotionRatio } from '../../model/project.ts';
import { editOrTell } from '../app/edit-or-tell.ts';
import type { FieldKind } from '../app/quantities.ts';
import { project } from '../app/store.ts';
import { NumberField } from '../panels/number-field.tsx';
import { type PartBox, PartSection } from '../panels/part-section.tsx';
import { SelectField } from '../panels/select-field.tsx';
import { Measured } from '../sketches/measured.tsx';
import { aimWords } from '../text/aim.ts';
import type { MeasureId } from '../text/measures.ts';
import {
  AIR_SPRING,
  type RatioKind,
  type SpringKind,
  withChassis,
  withRatioKind,
  withSpringKind,
} from './chassis-edits.ts';
import { PointTable } from './point-table.tsx';

const words = aimWords.chassis;

type NumberKey = { [K in keyof Chassis]-?: Chassis[K] extends number | undefined ? K : never }[keyof Chassis];

interface PlainProps {
  readonly of: NumberKey;
  readonly label: string;
  readonly kind: FieldKind;
  readonly title?: string;
  readonly dimension?: MeasureId;
  readonly placeholder?: string;
}

const Plain = ({ of, ...box }: PlainProps): JSX.Element => (
  <NumberField
    {...box}
    value={project.value.chassis[of]}
    edit={(value) => withChassis(of, value)}
    clear={() => withChassis(of, undefined)}
  />
);

const RATIO_KINDS: readonly RatioKind[] = ['none', 'constant', 'table'];
const SPRING_KINDS: readonly SpringKind[] = ['none', 'coil', 'progressive'];

function RatioTable({ ratio }: { ratio: Extract<MotionRatio, { kind: 'table' }> }): JSX.Element {
  const step = (project.value.chassis.wheelTravel_mm ?? 100) / 4;
  return (
    <PointTable
      caption={words.ratioKind}
      rows={ratio.points}
      least={2}
      columns={[
        { key: 'wheelTravel_mm', label: words.wheelTravelColumn, kind: 'length' },
        { key: 'shaftPerWheel', label: words.shaftPerWheelColumn, kind: 'plain' },
      ]}
      put={(points) => withChassis('motionRatio', { ...ratio, points })}
      next={(rows) => {
        const last = rows[rows.length - 1];
        return { ...last, wheelTravel_mm: last.wheelTravel_mm + step };
      }}
    />
  );
}

function RatioFields(): JSX.Element {
  const { motionRatio } = project.value.chassis;
  const highest =
    motionRatio?.kind === 'table'
      ? Math.max(...motionRatio.points.map(({ shaftPerWheel }) => shaftPerWheel))
      : (motionRatio?.shaftPerWheel ?? 0);
  return (
    <>
      <SelectField
        label={words.ratioKind}
        dimension="motionRatio"
        options={RATIO_KINDS}
        chosen={motionRatio?.kind ?? 'none'}
        name={(kind) => words.ratioKinds[kind]}
        onChoose={(kind) => editOrTell(() => withRatioKind(kind), words.ratioKind)}
      />
      {motionRatio?.kind === 'constant' && (
        <NumberField
          label={words.ratio}
          title={words.ratioWhy}
          kind="plain"
          value={motionRatio.shaftPerWheel}
          edit={(shaftPerWheel) => withChassis('motionRatio', { kind: 'constant', shaftPerWheel })}
        />
      )}
      {motionRatio?.kind === 'table' && <RatioTable ratio={motionRatio} />}
      <p class="hint">{project.value.damper.layout === 'cartridge' ? words.ratioInLeg : words.ratioWhy}</p>
      {highest > 1.05 && <p class="caution-text">{words.inverted}</p>}
    </>
  );
}

function SpringTable({ spring }: { spring: Extract<MainSpring, { kind: 'progressive' }> }): JSX.Element {
  return (
    <PointTable
      caption={words.springKind}
      rows={spring.points}
      least={2}
      columns={[
        { key: 'compression_mm', label: words.compressionColumn, kind: 'length' },
        { key: 'force_N', label: words.forceColumn, kind: 'force' },
      ]}
      put={(points) => withChassis('spring', { ...spring, points })}
      next={(rows) => {
        const [before, last] = rows.slice(-2);
        return {
          compression_mm: 2 * last.compression_mm - before.compression_mm,
          force_N: 2 * last.force_N - before.force_N,
        };
      }}
    />
  );
}

function SpringFields(): JSX.Element {
  const { spring } = project.value.chassis;
  return (
    <>
      <SelectField
        label={words.springKind}
        options={SPRING_KINDS}
        chosen={spring?.kind ?? 'none'}
        name={(kind) => words.springKinds[kind]}
        onChoose={(kind) => editOrTell(() => withSpringKind(kind), words.springKind)}
      />
      {spring?.kind === 'coil' && (
        <NumberField
          label={words.rate}
          kind="springRate"
          dimension="mainRate"
          value={spring.rate_N_mm}
          edit={(rate_N_mm) => withChassis('spring', { ...spring, rate_N_mm })}
        />
      )}
      {spring?.kind === 'progressive' && <SpringTable spring={spring} />}
      {spring && (
        <NumberField
          label={words.preload}
          title={words.preloadWhy}
          kind="length"
          dimension="mainPreload"
          value={spring.preload_mm}
          edit={(preload_mm) => withChassis('spring', { ...spring, preload_mm })}
        />
      )}
    </>
  );
}

const AIR_BOXES: readonly PartBox<AirSpring>[] = [
  { key: 'pistonDiameter_mm', label: words.airDiameter, kind: 'length' },
  { key: 'gaugePressure_bar', label: words.airPressure, kind: 'gasPressure' },
  { key: 'airLength_mm', label: words.airLength, title: words.airLengthWhy, kind: 'length' },
  { key: 'polytropicExponent', label: words.airExponent, title: words.airExponentWhy, kind: 'plain' },
];

export function ChassisForm(): JSX.Element {
  const isFork = project.value.damper.layout === 'cartridge';
  return (
    <section class="sheet chassis-form" id="chassis" aria-labelledby="chassis-title" tabIndex={-1}>
      <header>
        <h2 id="chassis-title">{words.title}</h2>
      </header>
      <p class="hint">{words.intro}</p>
      <Measured sketch={isFork ? 'chassis-fork' : 'chassis'}>
        <Plain
          of="vehicleSprungMass_kg"
          label={words.vehicle}
          title={words.vehicleWhy}
          kind="mass"
          dimension="vehicleSprung"
        />
        <Plain of="riderSprungMass_kg" label={words.rider} title={words.riderWhy} kind="mass" dimension="riderSprung" />
        <Plain of="unsprungMass_kg" label={words.unsprung} title={words.unsprungWhy} kind="mass" dimension="unsprung" />
        <Plain of="wheelTravel_mm" label={words.travel} kind="length" dimension="wheelTravel" />
        <RatioFields />
        <SpringFields />
        <PartSection part={AIR_SPRING} title={words.air} why={words.airWhy} boxes={AIR_BOXES} />
        <Plain of="springCount" label={words.springs} kind="count" placeholder="1" />
        <Plain of="damperCount" label={words.dampers} title={words.dampersWhy} kind="count" placeholder="1" />
        <Plain
          of="legAngle_deg"
          label={words.angle}
          title={words.angleWhy}
          kind="angle"
          placeholder="0"
          {...(isFork && { dimension: 'legAngle' })}
        />
      </Measured>
      <p class="caution-text">{words.caution}</p>
    </section>
  );
}
