/** The record as a sheet to print: facts, sizes, stacks, springs, wear, notes and photos. */
import type { ComponentChildren, JSX } from 'preact';
import { useEffect, useLayoutEffect, useRef } from 'preact/hooks';
import { ADJUSTER_IDS } from '../../model/adjuster-ids.ts';
import { placesOf, valvingAt } from '../app/places.ts';
import { showField } from '../app/quantities.ts';
import { baseline, openId, project } from '../app/store.ts';
import { text } from '../text/en.ts';
import { recordWords } from '../text/record.ts';
import { entriesOf } from './found-list.tsx';
import { lengthOf, sizesOf } from './part-lists.tsx';
import { photos, readPhotos } from './photo-store.ts';
import { Picture } from './photo-strip.tsx';
import { recordOf, stateOf, steps, turns } from './record-state.ts';
import { offAt, shimInWords } from './shims-off.tsx';

const words = recordWords.sheet;
type Pair = readonly [label: string, value: string | undefined];

const Part = ({ title, children }: { title: string; children: ComponentChildren }): JSX.Element => (
  <section class="sheet-part" aria-label={title}>
    <h3>{title}</h3>
    {children}
  </section>
);

const Pairs = ({ of }: { of: readonly Pair[] }): JSX.Element => (
  <dl class="pairs">
    {of.map(([label, value]) => (
      <div key={label}>
        <dt>{label}</dt>
        <dd>{value ?? words.notMeasured}</dd>
      </div>
    ))}
  </dl>
);

function factPairs(): Pair[] {
  const { machine, date, recordedBy, runTime_h, distance_km, condition, oilOut, clicksAsFound } = recordOf(
    project.value,
  );
  const { facts, clicks } = recordWords;
  const found = ADJUSTER_IDS.flatMap((id): Pair[] => {
    const turned = clicksAsFound?.[id];
    if (turned === undefined) return [];
    return [[clicks.found(text.adjusterOf(project.value.damper.layout, id)), String(turned)]];
  });
  return [
    [facts.machine, machine],
    [facts.date, date],
    [facts.recordedBy, recordedBy],
    [facts.runTime, runTime_h === undefined ? undefined : showField('runTime', runTime_h)],
    [facts.distance, distance_km === undefined ? undefined : showField('distance', distance_km)],
    [facts.condition, condition],
    ...found,
    [facts.oilVolume, oilOut?.volume_mL === undefined ? undefined : showField('volume', oilOut.volume_mL)],
    [facts.oilLook, oilOut?.look],
    [facts.oilSmell, oilOut?.smell],
  ];
}

function damperPairs(): Pair[] {
  const { damper, gas, fluid } = project.value;
  const labels = text.damper;
  return [
    [labels.layout, labels.layoutName[damper.layout]],
    [labels.bore, showField('length', damper.boreDiameter_mm)],
    [labels.rod, showField('length', damper.rodDiameter_mm)],
    [labels.travel, showField('length', damper.travel_mm)],
    [labels.friction, showField('force', damper.sealFriction_N)],
    [labels.groups.oil, fluid.name],
    [labels.gasPressure, showField('gasPressure', gas.gaugePressure_bar)],
    ...(gas.airGap ? [[labels.oilLevel, showField('length', gas.airGap.level_mm)] as Pair] : []),
  ];
}

function Stacks(): JSX.Element {
  const { layout } = project.value.damper;
  return (
    <div class="sheet-stacks">
      {placesOf(layout).map((place) => {
        const off = offAt(place);
        return (
          <div key={place}>
            <h4>{text.placeOf(layout, place).stack}</h4>
            <ol>
              {valvingAt(baseline.value, place).shims.map((shim, i) => (
                <li key={i}>{shimInWords(shim)}</li>
              ))}
            </ol>
            {off.shims.length > 0 && (
              <p class="hint">
                {words.cameOff}, {recordWords.wire.sides[off.firstOff]}: {off.shims.map(shimInWords).join('; ')}
              </p>
            )}
          </div>
        );
      })}
    </div>
  );
}

const springPairs = (): Pair[] =>
  entriesOf('springs').map(({ name, rate_N_mm, rateFrom, freeLength_mm, wireDiameter_mm }) => {
    const labels = recordWords.springs;
    const rate = rate_N_mm === undefined ? words.notMeasured : showField('springRate', rate_N_mm);
    const sizes = `${labels.freeLength} ${lengthOf(freeLength_mm)}, ${labels.wire} ${lengthOf(wireDiameter_mm)}`;
    return [name, `${rate}${rateFrom ? ` (${labels.sources[rateFrom]})` : ''}, ${sizes}`];
  });

const torquePairs = (): Pair[] =>
  entriesOf('torques').map(({ name, torque_N_m }) => [
    name,
    torque_N_m === undefined ? undefined : showField('torque', torque_N_m),
  ]);

const wearPairs = (): Pair[] =>
  entriesOf('wearParts').map((part) => {
    const labels = recordWords.wear;
    const said = [labels.kinds[part.kind], sizesOf(part), part.verdict && labels.verdicts[part.verdict], part.notes];
    return [part.name, said.filter(Boolean).join(', ')];
  });

const notePairs = (): Pair[] =>
  steps.value.flatMap((step): Pair[] => {
    const notes = recordOf(project.value).steps?.[step]?.notes;
    const said = [recordWords.states[stateOf(step)], notes].filter(Boolean).join(': ');
    return [[recordWords.steps[step].name, said]];
  });

function Photos(): JSX.Element | null {
  if (photos.value.length === 0) return null;
  return (
    <Part title={words.photos}>
      <ul class="sheet-photos">
        {photos.value.map((photo) => (
          <li key={photo.id}>
            <Picture photo={photo} alt={photo.caption} />
            <span>
              {recordWords.steps[photo.step].name}
              {photo.caption && `: ${photo.caption}`}
            </span>
          </li>
        ))}
      </ul>
    </Part>
  );
}

export function RecordSheet(): JSX.Element {
  const heading = useRef<HTMLHeadingElement>(null);
  useEffect(() => void readPhotos(), [openId.value]);
  useLayoutEffect(() => {
    if (turns.peek() > 0) heading.current?.focus({ preventScroll: true });
    window.scrollTo(0, 0);
  }, []);
  return (
    <section class="sheet record-sheet" aria-labelledby="record-sheet">
      <header>
        <h2 id="record-sheet" ref={heading} tabIndex={-1}>
          {`${recordWords.title}: ${project.value.name}`}
        </h2>
        <button type="button" class="button main" onClick={() => window.print()}>
          {words.print}
        </button>
      </header>
      <p class="caution-text">{words.caution}</p>
      <Part title={words.facts}>
        <Pairs of={factPairs()} />
      </Part>
      <Part title={words.damper}>
        <Pairs of={damperPairs()} />
      </Part>
      <Part title={words.stacks}>
        <Stacks />
      </Part>
      <Part title={recordWords.springs.title}>
        <Pairs of={springPairs()} />
      </Part>
      <Part title={recordWords.wear.title}>
        <Pairs of={wearPairs()} />
      </Part>
      <Part title={recordWords.torques.title}>
        <Pairs of={torquePairs()} />
      </Part>
      <Part title={words.notes}>
        <Pairs of={notePairs()} />
      </Part>
      <Photos />
    </section>
  );
}
