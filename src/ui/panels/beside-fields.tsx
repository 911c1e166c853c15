/** What lies beside a stack: the bleed with its needle, and at the base the poppet. */
import type { ComponentChildren, JSX } from 'preact';
import type { Bleed, Needle, Poppet, PreloadAdjuster } from '../../model/project.ts';
import { baseBleedOf, baseNeedleOf, needleOf, poppetAdjusterOf, poppetOf } from '../app/build-parts.ts';
import { showField } from '../app/quantities.ts';
import { selectedBuild } from '../app/store.ts';
import { text } from '../text/en.ts';
import { type PartBox, PartSection } from './part-section.tsx';

const words = text.besides;

const NEEDLE: readonly PartBox<Needle>[] = [
  { key: 'coneAngle_deg', label: words.coneAngle, dimension: 'coneAngle', title: words.coneAngleWhy, kind: 'angle' },
  { key: 'travelPerClick_mm', label: words.perClick, dimension: 'needlePerClick', kind: 'length' },
  { key: 'clickCount', label: words.clickCount, dimension: 'needleClicks', kind: 'count' },
];

const BLEED: readonly PartBox<Bleed>[] = [
  { key: 'count', label: words.holes, dimension: 'bleedCount', kind: 'count' },
  { key: 'diameter_mm', label: words.diameter, dimension: 'bleedDiameter', kind: 'length' },
  { key: 'length_mm', label: words.length, dimension: 'bleedLength', kind: 'length' },
];

const POPPET: readonly PartBox<Poppet>[] = [
  { key: 'seatDiameter_mm', label: words.seat, dimension: 'poppetSeat', kind: 'length' },
  { key: 'coneAngle_deg', label: words.coneAngle, dimension: 'poppetCone', title: words.coneAngleWhy, kind: 'angle' },
  { key: 'rate_N_mm', label: words.rate, dimension: 'poppetRate', kind: 'springRate' },
  { key: 'preload_N', label: words.preload, dimension: 'poppetPreload', kind: 'force' },
  { key: 'travel_mm', label: words.travel, dimension: 'poppetTravel', kind: 'length' },
];

export const PRELOAD_ADJUSTER: readonly PartBox<PreloadAdjuster>[] = [
  {
    key: 'travelPerClick_mm',
    label: words.perClick,
    dimension: 'springPerClick',
    title: words.adjusterWhy,
    kind: 'length',
  },
  { key: 'clickCount', label: words.clickCount, dimension: 'springClicks', kind: 'count' },
];

const needleWords = ({ clicks, clickCount }: Needle): string => words.summaryNeedle(clicks, clickCount);

function Besides({
  name,
  title,
  parts,
  children,
}: {
  readonly name: string;
  readonly title: string;
  readonly parts: readonly string[];
  readonly children: ComponentChildren;
}): JSX.Element {
  return (
    <details class="group-of-fields besides" data-group={name}>
      <summary>
        <span class="lettering">{title}</span> <span class="hint">{parts.join(', ') || text.stack.absent}</span>
      </summary>
      <div class="stack-fields">{children}</div>
    </details>
  );
}

/** Of the bleed through piston or rod, which serves both directions. */
export function NeedleFields(): JSX.Element {
  const { id, bleed } = selectedBuild.value;
  return (
    <Besides name="needle" title={words.needle} parts={bleed.needle ? [needleWords(bleed.needle)] : []}>
      <PartSection part={needleOf(id)} title={words.needle} why={words.needleWhy} boxes={NEEDLE} sketch="needle" />
    </Besides>
  );
}

export function BaseBesideFields(): JSX.Element {
  const { id, baseBleed, basePoppet } = selectedBuild.value;
  const parts = [
    ...(baseBleed ? [words.summaryBleed(baseBleed.count, showField('length', baseBleed.diameter_mm))] : []),
    ...(baseBleed?.needle ? [needleWords(baseBleed.needle)] : []),
    ...(basePoppet ? [words.summaryPoppet(showField('length', basePoppet.seatDiameter_mm))] : []),
  ];
  return (
    <Besides name="base-besides" title={words.baseBleed} parts={parts}>
      <PartSection
        part={baseBleedOf(id)}
        title={words.baseBleedPart}
        why={words.baseBleedWhy}
        boxes={BLEED}
        sketch="base-bleed"
      />
      {baseBleed && (
        <PartSection
          part={baseNeedleOf(id)}
          title={words.baseNeedle}
          why={words.needleWhy}
          boxes={NEEDLE}
          sketch="needle"
        />
      )}
      <PartSection part={poppetOf(id)} title={words.poppet} why={words.poppetWhy} boxes={POPPET} sketch="poppet" />
      {basePoppet && (
        <PartSection
          part={poppetAdjusterOf(id)}
          title={words.poppetAdjuster}
          why={words.adjusterWhy}
          boxes={PRELOAD_ADJUSTER}
          sketch="spring-adjuster"
        />
      )}
    </Besides>
  );
}
