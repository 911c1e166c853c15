/** What of the stacks and the faces of a damper is not known; ranges as in unknowns.ts. */
import type { Project, ValvePlace } from '../../model/project.ts';
import type { RecordStep } from '../../model/record.ts';
import { showField } from '../app/quantities.ts';
import { text } from '../text/en.ts';
import { recordWords } from '../text/record.ts';
import { STACK_OF } from './steps.ts';
import { bothWays, changed, type Draft, inPercent, type Parts } from './unknown-draft.ts';

const { items, spread } = recordWords.missing;

const PORT_SHARE = 0.15;
const COVERED = 0.7;
const SHIM_MM = 0.02;
const CLAMP_MM = 1;
const SEAT_MM = 0.05;
const REFILL_SHARE = 0.5;

const stepOfStack = (place: ValvePlace): RecordStep =>
  (Object.keys(STACK_OF) as RecordStep[]).find((step) => STACK_OF[step] === place) ?? 'compressionStack';

export function stackDrafts(project: Project, place: ValvePlace): Draft[] {
  const { name } = text.placeOf(project.damper.layout, place);
  const step = stepOfStack(place);
  const draft = (id: string, label: string, range_mm: number, edit: (sign: number, parts: Parts) => void): Draft => ({
    id: `${id}-${place}`,
    step,
    label,
    range: spread(showField('length', range_mm)),
    ends: bothWays(project, (sign) => (parts) => edit(sign, parts)),
  });
  return [
    draft('shims', items.shims(name), SHIM_MM, (sign, { build }) => {
      for (const row of build.valves[place]?.shims ?? []) row.thickness_mm += sign * SHIM_MM;
    }),
    draft('clamp', items.clamp(name), CLAMP_MM, (sign, { build }) => {
      const valving = build.valves[place];
      if (valving) valving.clampDiameter_mm += sign * CLAMP_MM;
    }),
    draft('seat', items.seatHeight(name), SEAT_MM, (sign, { build }) => {
      const valving = build.valves[place];
      if (valving) valving.seatHeight_mm += sign * SEAT_MM;
    }),
  ];
}

export function faceDrafts(project: Project, place: ValvePlace): Draft[] {
  const { name } = text.placeOf(project.damper.layout, place);
  const step: RecordStep = place === 'baseCompression' ? 'baseFace' : 'pistonFaces';
  const grown = bothWays(project, (sign) => (parts) => {
    const ports = parts.project.damper.valves[place]?.ports;
    if (ports?.area_mm2 !== undefined) ports.area_mm2 *= 1 + sign * PORT_SHARE;
    if (ports?.diameter_mm !== undefined) ports.diameter_mm *= Math.sqrt(1 + sign * PORT_SHARE);
  });
  const covered = project.damper.valves[place]?.ports.coveredFraction;
  const half = changed(project, (parts) => {
    const ports = parts.project.damper.valves[place]?.ports;
    if (ports) ports.coveredFraction = COVERED;
  });
  return [
    { id: `ports-${place}`, step, label: items.ports(name), range: inPercent(PORT_SHARE), ends: grown },
    ...(covered === undefined
      ? [
          {
            id: `covered-${place}`,
            step,
            label: items.covered(name),
            range: `1 … ${COVERED}`,
            isDefault: true,
            ends: [half],
          },
        ]
      : []),
  ];
}

export function refillDrafts(project: Project): Draft[] {
  if (!project.damper.refillCheck) return [];
  const ends = bothWays(project, (sign) => ({ project: { damper } }) => {
    if (!damper.refillCheck) return;
    damper.refillCheck.rate_N_mm *= 1 + sign * REFILL_SHARE;
    damper.refillCheck.preload_N *= 1 + sign * REFILL_SHARE;
  });
  return [{ id: 'refill', step: 'refillCheck', label: items.refill, range: inPercent(REFILL_SHARE), ends }];
}
