/** What the chassis does: sag with its common ranges, rates, frequency. */
import type { JSX } from 'preact';
import type { ChassisReading, Sag, SwingReading } from '../../../workers/protocol.ts';
import { millimetresFromMetres } from '../../units/si.ts';
import { inReaderUnits, showField, showNumber, showPercent } from '../app/quantities.ts';
import { project } from '../app/store.ts';
import { Choice } from '../panels/choice.tsx';
import { ViewField } from '../panels/view-field.tsx';
import { aimWords } from '../text/aim.ts';
import { reading, readingFailure, swingAt, swingTravel_mm } from './chassis-solve.ts';

const words = aimWords.readings;

type Read = Extract<ChassisReading, { status: 'read' }>;

const length = (length_m: number): string => showField('length', Number(millimetresFromMetres(length_m).toFixed(1)));
const rate = (rate_N_m: number): string => showField('springRate', Number((rate_N_m / 1000).toFixed(2)));
const force = (force_N: number): string => showField('force', Math.round(force_N));

function sagInWords(sag: Sag, travel_m: number): string {
  if (sag.status === 'not-converged') return words.notFound(inReaderUnits(sag.reason));
  if (sag.status === 'topped-out') return words.toppedOut;
  if (sag.status === 'bottomed-out') return words.bottomedOut;
  const { wheelTravel_m } = sag.state;
  return `${length(wheelTravel_m)}, ${words.share(showPercent(wheelTravel_m / travel_m))}`;
}

const Row = ({ name, value, id }: { name: string; value: string; id?: string }): JSX.Element => (
  <div data-reading={id}>
    <dt>{name}</dt>
    <dd>{value}</dd>
  </div>
);

function SwingRows({ swing }: { swing: SwingReading }): JSX.Element {
  const { state, vibration, wheelInAir } = swing;
  const hertz = (frequency: number): string => `${showNumber(frequency, 2)} Hz`;
  return (
    <>
      {swingTravel_mm.value === undefined && <Row id="place" name={words.travel} value={length(state.wheelTravel_m)} />}
      <Row id="ratio" name={words.ratioThere} value={showNumber(state.link.ratio, 3)} />
      <Row id="spring-force" name={words.springForce} value={force(state.uprightForce_N)} />
      <Row id="wheel-rate" name={words.wheelRate} value={rate(state.wheelRate_N_m)} />
      <Row name={words.ofSprings} value={rate(state.rateOfSprings_N_m)} />
      <Row name={words.ofLinkage} value={rate(state.rateOfLinkage_N_m)} />
      {vibration.status === 'swings' && (
        <>
          <Row id="frequency" name={words.frequency} value={hertz(vibration.naturalFrequency_Hz)} />
          <Row
            id="critical"
            name={words.critical}
            value={showField('viscousFriction', Math.round(vibration.criticalDamping_N_s_m))}
          />
        </>
      )}
      {wheelInAir?.status === 'swings' && (
        <Row id="wheel-in-air" name={words.wheelInAir} value={hertz(wheelInAir.naturalFrequency_Hz)} />
      )}
    </>
  );
}

function Place(): JSX.Element {
  const travel = project.value.chassis.wheelTravel_mm ?? 0;
  const at = swingTravel_mm.value;
  const options = ['laden', 'travel'] as const;
  return (
    <div class="swing-place">
      <Choice
        label={words.place}
        options={options}
        chosen={at === undefined ? 'laden' : 'travel'}
        name={(each) => (each === 'laden' ? words.atLaden : words.atTravel)}
        onChoose={(each) => swingAt(each === 'laden' ? undefined : Math.round(travel / 3))}
      />
      {at !== undefined && (
        <ViewField
          label={words.travel}
          kind="length"
          value={at}
          holds={(value) => value >= 0 && value <= travel}
          wanted={words.wantedTravel}
          onValue={swingAt}
        />
      )}
    </div>
  );
}

function Known({ read }: { read: Read }): JSX.Element {
  const { staticSag, ladenSag, fullTravel, swing } = read;
  const needs_mm = millimetresFromMetres(fullTravel.link.shaftTravel_m);
  const { travel_mm } = project.value.damper;
  return (
    <>
      <dl class="chassis-readings">
        <Row id="static" name={words.staticSag} value={sagInWords(staticSag, fullTravel.wheelTravel_m)} />
        <Row id="laden" name={words.ladenSag} value={sagInWords(ladenSag, fullTravel.wheelTravel_m)} />
      </dl>
      <p class="practice">
        <strong>{words.practice}:</strong> {words.ladenPractice}. <span class="hint">{words.practiceNote}</span>
      </p>
      {needs_mm > travel_mm * 1.001 && (
        <p class="caution-text" role="status">
          {words.beyond(length(fullTravel.link.shaftTravel_m), showField('length', travel_mm))}
        </p>
      )}
      <h3>{words.swing}</h3>
      <Place />
      {'reason' in swing ? (
        <p class="caution-text">{words.notFound(swing.reason)}</p>
      ) : (
        <dl class="chassis-readings">
          <SwingRows swing={swing} />
        </dl>
      )}
      {'vibration' in swing && swing.vibration.status === 'no-swing' && <p class="caution-text">{words.noSwing}</p>}
    </>
  );
}

function Body(): JSX.Element {
  const now = reading.value;
  if (readingFailure.value !== undefined) return <p class="caution-text">{words.failed(readingFailure.value)}</p>;
  if (!now) return <p class="hint">{words.waiting}</p>;
  if (now.status === 'read') return <Known read={now} />;
  const names = now.missing.map((key) => words.needed[key]);
  const list = [names.slice(0, -1).join(', '), names[names.length - 1]].filter(Boolean).join(words.and);
  return <p class="hint">{words.missing(list)}</p>;
}

export const Readings = (): JSX.Element => (
  <section class="sheet aim-readings" aria-labelledby="readings-title">
    <header>
      <h2 id="readings-title">{words.title}</h2>
    </header>
    <div class="sheet-body">
      <Body />
    </div>
  </section>
);
