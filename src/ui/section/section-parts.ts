/** The parts of the section in the order of the walk through it, each with its numbers: what readout, table and keys tell. */
import { computed } from '@preact/signals';
import { singleShims, stackHeight } from '../../model/lay-shims.ts';
import { metresFromMillimetres } from '../../units/si.ts';
import { show, showField, showLength, showPercent } from '../app/quantities.ts';
import { rolesOf } from '../app/roles.ts';
import { text } from '../text/en.ts';
import { type DrawnSection, drawnSection } from './drawn-section.ts';
import type { ShimOutline } from './geometry.ts';
import { inPlanes, planesOf } from './planes.ts';
import type { PartMark } from './section-choices.ts';
import type { Stream } from './streams.ts';
import { peakOf } from './stress-shade.ts';
import type { Gap, Surface } from './touching.ts';

export type Figure = readonly [name: string, value: string];

export interface SectionPart extends PartMark {
  readonly name: string;
  readonly figures: readonly Figure[];
}

const words = text.sectionParts;

export const partId = {
  shim: (shim: number): string => `shim-${shim}`,
  gap: ({ below, above }: Pick<Gap, 'below' | 'above'>): string => `gap-${below}-${above}`,
  stream: ({ name }: Pick<Stream, 'name'>): string => `oil-${name}`,
  port: 'port',
  seat: 'seat',
  clamp: 'clamp',
  plate: 'plate',
} as const;

const liftLength = (length_mm: number): string => show('lift', metresFromMillimetres(length_mm));

const surfaceName = (surface: Surface): string =>
  typeof surface === 'number' ? words.shimOf(surface + 1) : words.surface[surface];

/** Where a surface bears what lies above it. */
function contactFigures(section: DrawnSection, surface: Surface): Figure[] {
  return planesOf(section).flatMap(({ section: { touching }, named }): Figure[] => {
    const places = (touching?.contacts ?? [])
      .filter(({ below }) => below === surface)
      .map(({ above, from, to }) => {
        const [inner, outer] = [showLength(from.r * 2), showLength(to.r * 2)];
        return words.touchesAt(surfaceName(above), inner === outer ? words.point(inner) : words.stretch(inner, outer));
      });
    return places.length > 0 ? [[named(words.touches), places.join(', ')]] : [];
  });
}

function portPart({ body: { ports }, work }: DrawnSection): SectionPart {
  const size: Figure =
    ports.diameter_mm === undefined
      ? [words.area, showField('area', ports.area_mm2 ?? 0)]
      : [words.diameter, showLength(ports.diameter_mm)];
  const across: Figure[] = work ? [[words.across, show('pressure', work.shimPressure_Pa)]] : [];
  const figures: Figure[] = [[words.count, String(ports.count)], size, [words.length, showLength(ports.length_mm)]];
  return { id: partId.port, name: words.port, figures: [...figures, ...across] };
}

function seatPart(section: DrawnSection): SectionPart {
  const { seat } = section.body;
  const { valving, state } = section.stack;
  const land = words.between(showLength(seat.innerDiameter_mm), showLength(seat.outerDiameter_mm));
  const figures: Figure[] = [
    [words.land, land],
    [words.height, showLength(valving.seatHeight_mm)],
  ];
  const solved: Figure[] = state
    ? [
        ...inPlanes(section, words.opens, (each) => show('lift', each.seatOpening_m)),
        [words.force, show('force', state.seatForce_N)],
        ...contactFigures(section, 'seat'),
      ]
    : [];
  return { id: partId.seat, name: words.seat, figures: [...figures, ...solved] };
}

function stressFigures(section: DrawnSection, outline: ShimOutline): Figure[] {
  const { state } = section.stack;
  if (!state) return [];
  const { shim } = outline;
  const figures: Figure[] = [
    ...inPlanes(section, words.rimLift, ({ shimEdgeLift_m }) => show('lift', shimEdgeLift_m[shim])),
    [words.radialStress, show('stress', state.shimStress_Pa[shim])],
  ];
  if (!state.stresses) return figures;
  const peak = peakOf(outline, state.stresses.equivalent_Pa[shim]);
  const limit = state.stresses.yield_Pa[shim];
  const name = section.waved ? text.wave.at.crest(words.equivalentStress) : words.equivalentStress;
  figures.push([name, words.at(show('stress', peak.stress_Pa), showLength(peak.r * 2))]);
  if (limit === null) return figures;
  const share = showPercent(peak.stress_Pa / limit);
  return [...figures, [words.ofYield, peak.stress_Pa > limit ? words.overYield(share) : share]];
}

function shimParts(section: DrawnSection): SectionPart[] {
  const { shims } = section.stack.valving;
  const singles = singleShims(shims);
  const roles = rolesOf(shims);
  return section.outlines.map((outline) => {
    const { shim, row } = singles[outline.shim];
    const size = text.difference.size(showLength(shim.outerDiameter_mm), showLength(shim.thickness_mm));
    return {
      id: partId.shim(outline.shim),
      row,
      name: words.shim(outline.shim + 1, text.stack.roles[roles[row]]),
      figures: [[words.size, size], ...stressFigures(section, outline), ...contactFigures(section, outline.shim)],
    };
  });
}

/** A gap that is open in one plane alone is told there. */
function gapParts(section: DrawnSection): SectionPart[] {
  const parts = new Map<string, SectionPart>();
  for (const plane of planesOf(section)) {
    for (const gap of plane.section.touching?.gaps ?? []) {
      const id = partId.gap(gap);
      const name = words.gap(surfaceName(gap.below), surfaceName(gap.above));
      const widest = words.at(liftLength(gap.top_mm - gap.bottom_mm), showLength(gap.r * 2));
      const figures = [...(parts.get(id)?.figures ?? []), [plane.named(words.widest), widest] as const];
      parts.set(id, { id, name, figures });
    }
  }
  return [...parts.values()];
}

function heldParts({ stack: { valving, state } }: DrawnSection): SectionPart[] {
  const force = (newtons: number): Figure => [words.force, show('force', newtons)];
  const clamp: SectionPart = {
    id: partId.clamp,
    name: words.clamp,
    figures: [
      [words.diameter, showLength(valving.clampDiameter_mm)],
      [words.stackHeight, showLength(stackHeight(valving))],
      ...(state ? [force(state.clampForce_N)] : []),
    ],
  };
  if (!valving.backingPlate) return [clamp];
  const atRest: Figure = [words.gapAtRest, showLength(valving.backingPlate.gap_mm)];
  const figures = state ? [atRest, force(state.plateForce_N)] : [atRest];
  return [clamp, { id: partId.plate, name: words.plate, figures }];
}

function streamParts({ streams, stack: { state }, waved }: DrawnSection): SectionPart[] {
  return streams.map((stream) => {
    const { name, speed_m_s, flow_m3_s, share } = stream;
    const speed: Figure[] = speed_m_s === undefined ? [] : [[words.speed, show('jet', speed_m_s)]];
    const through: Figure[] =
      waved && state && name === 'shims' ? [[text.wave.ofMean(words.opens), show('lift', state.seatOpening_m)]] : [];
    const rest: Figure[] = [...through, [words.flow, show('flow', flow_m3_s)], [words.share, showPercent(share)]];
    return { id: partId.stream(stream), name: words.streams[name], figures: [...speed, ...rest] };
  });
}

export const partsOf = (section: DrawnSection): SectionPart[] => [
  portPart(section),
  seatPart(section),
  ...shimParts(section),
  ...gapParts(section),
  ...heldParts(section),
  ...streamParts(section),
];

export const sectionParts = computed(() => partsOf(drawnSection.value));
