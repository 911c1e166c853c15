/**
 * Holes must find room in what they are drilled through: the piston beside its rod, the base valve in the bore. Broken numbers are
 * skipped here: the schema has already refused them.
 */
import type { InputFault } from '../units/fault.ts';
import { child, numberAt, type Place } from './place.ts';

const discArea = (diameter: number): number => (Math.PI / 4) * diameter * diameter;

/** Equal holes as they stand in the document: where their size is written, and their area in all [mm²]. */
interface Opening {
  readonly place: Place;
  readonly area: number;
}

/** What holes are drilled through. */
interface Face {
  readonly name: string;
  /** mm². */
  readonly area: number;
}

/** Ports of both directions are drilled through one piston, those of base valve and refill check through one base. */
export function portRoomFaults(damper: Place): InputFault[] {
  const body = (name: string): Place => child(damper, 'valves', name, 'ports');
  return [
    ...roomFaults([body('pistonCompression'), body('pistonRebound')], pistonFace(damper)),
    ...roomFaults([body('baseCompression'), child(damper, 'refillCheck', 'ports')], baseFace(damper)),
  ];
}

/** Of one build. A bleed may go through the rod, so it shares its face with no ports. */
export function bleedRoomFaults(build: Place, damper: Place): InputFault[] {
  const wide = (bleed: Place, face: Face | undefined): InputFault[] =>
    holesOf(bleed).flatMap(({ place, area }) => beyond('bleed.beyond-face', place, area, 'less than', face));
  return [...wide(child(build, 'bleed'), pistonFace(damper)), ...wide(child(build, 'baseBleed'), baseFace(damper))];
}

/** Told at the larger of what is too large together. */
function roomFaults(ports: readonly Place[], face: Face | undefined): InputFault[] {
  const found = ports.flatMap(holesOf);
  if (found.length === 0) return [];
  const largest = found.reduce((a, b) => (b.area > a.area ? b : a));
  const total = found.reduce((sum, { area }) => sum + area, 0);
  return beyond('damper.port.beyond-face', largest.place, total, 'all ports together less than', face);
}

/** None where count or size is no number, or where a size is given twice. */
function holesOf(holes: Place): Opening[] {
  const [count, diameter, area] = ['count', 'diameter_mm', 'area_mm2'].map((key) => child(holes, key));
  const [n, d, one] = [count, diameter, area].map(numberAt);
  if (n === undefined || (d === undefined) === (one === undefined)) return [];
  return d === undefined ? [{ place: area, area: n * (one ?? 0) }] : [{ place: diameter, area: n * discArea(d) }];
}

function beyond(code: string, { path }: Place, area: number, wanted: string, face: Face | undefined): InputFault[] {
  if (!face || area < face.area) return [];
  const [got, most] = [area, face.area].map((value) => String(Number(value.toFixed(2))));
  return [{ code, path, got, wanted: `${wanted} ${face.name}, ${most}`, unit: 'mm²' }];
}

function pistonFace(damper: Place): Face | undefined {
  const [bore, rod] = ['boreDiameter_mm', 'rodDiameter_mm'].map((key) => numberAt(child(damper, key)));
  if (bore === undefined || rod === undefined || !(rod < bore)) return undefined;
  return { name: 'the face of the piston beside the rod', area: discArea(bore) - discArea(rod) };
}

function baseFace(damper: Place): Face | undefined {
  const bore = numberAt(child(damper, 'boreDiameter_mm'));
  return bore === undefined || !(bore > 0)
    ? undefined
    : { name: 'the cross-section of the bore', area: discArea(bore) };
}
