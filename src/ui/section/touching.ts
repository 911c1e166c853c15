/** Where the shims of a bent stack touch, and the gaps that stay open: read off their outlines, in millimetres. */

import { stackHeight } from '../../model/lay-shims.ts';
import type { ValveBody, Valving } from '../../model/project.ts';
import type { Point, ShimOutline } from './geometry.ts';

/** A shim by its place, or what does not move. */
export type Surface = number | 'seat' | 'plate';

/** From one radius to another, the same for a circle. */
export interface Contact {
  readonly below: Surface;
  readonly above: Surface;
  readonly from: Point;
  readonly to: Point;
}

/** Where two neighbours are furthest apart. */
export interface Gap {
  readonly below: Surface;
  readonly above: Surface;
  readonly r: number;
  readonly bottom_mm: number;
  readonly top_mm: number;
}

/** Surfaces closer than this touch: far below any roughness [mm]. */
const TOUCHING_MM = 1e-4;
/** Smaller gaps are not told: no gauge finds them [mm]. */
const LEAST_GAP_MM = 1e-3;
/** Radii of one node, after their way through two units [mm]. */
const SAME_RADIUS_MM = 1e-9;

interface Between {
  readonly r: number;
  readonly bottom: number;
  readonly top: number;
}

interface Neighbours {
  readonly below: Surface;
  readonly above: Surface;
  readonly along: Between[];
}

const surfaceAt = (line: readonly Point[], r: number): number | undefined =>
  line.find((point) => Math.abs(point.r - r) < SAME_RADIUS_MM)?.z;

/** Every two surfaces that face each other somewhere beyond the clamp, with the heights of both at the nodes they share. */
function neighbours(outlines: readonly ShimOutline[], valving: Valving, { seat }: ValveBody): Neighbours[] {
  const found = new Map<string, Neighbours>();
  const clamp = valving.clampDiameter_mm / 2;
  const note = (below: Surface, above: Surface, between: Between): void => {
    const pair = found.get(`${below} ${above}`) ?? { below, above, along: [] };
    found.set(`${below} ${above}`, pair);
    pair.along.push(between);
  };
  const plate = valving.backingPlate;
  const plateRim = (plate?.outerDiameter_mm ?? Number.POSITIVE_INFINITY) / 2;
  const radii = [...new Set(outlines.flatMap(({ bottom }) => bottom.map(({ r }) => r)))];
  for (const r of radii.filter((each) => each > clamp + SAME_RADIUS_MM).sort((a, b) => a - b)) {
    const covering = outlines.flatMap((outline) => {
      const [bottom, top] = [surfaceAt(outline.bottom, r), surfaceAt(outline.top, r)];
      return bottom === undefined || top === undefined ? [] : [{ shim: outline.shim, bottom, top }];
    });
    const [first, last] = [covering[0], covering[covering.length - 1]];
    if (r >= seat.innerDiameter_mm / 2 - SAME_RADIUS_MM && r <= seat.outerDiameter_mm / 2 + SAME_RADIUS_MM)
      note('seat', first.shim, { r, bottom: valving.seatHeight_mm, top: first.bottom });
    covering.slice(1).forEach((above, i) => {
      note(covering[i].shim, above.shim, { r, bottom: covering[i].top, top: above.bottom });
    });
    if (plate && r <= plateRim + SAME_RADIUS_MM)
      note(last.shim, 'plate', { r, bottom: last.top, top: stackHeight(valving) + plate.gap_mm });
  }
  return [...found.values()];
}

/** Runs of nodes at which the two touch. */
function contactsOf({ below, above, along }: Neighbours): Contact[] {
  const contacts: Contact[] = [];
  let run: Between[] = [];
  const end = (): void => {
    const [first, last] = [run[0], run[run.length - 1]];
    if (first)
      contacts.push({ below, above, from: { r: first.r, z: first.bottom }, to: { r: last.r, z: last.bottom } });
    run = [];
  };
  for (const each of along) {
    if (each.top - each.bottom <= TOUCHING_MM) run.push(each);
    else end();
  }
  end();
  return contacts;
}

function gapOf({ below, above, along }: Neighbours): Gap[] {
  const widest = along.reduce((most, each) => (each.top - each.bottom > most.top - most.bottom ? each : most));
  if (widest.top - widest.bottom < LEAST_GAP_MM) return [];
  return [{ below, above, r: widest.r, bottom_mm: widest.bottom, top_mm: widest.top }];
}

export interface Touching {
  readonly contacts: readonly Contact[];
  readonly gaps: readonly Gap[];
}

/** Shims of one diameter that lie on one another everywhere, as one plate. */
function areOne({ below, above, along }: Neighbours, outlines: readonly ShimOutline[]): boolean {
  if (typeof below !== 'number' || typeof above !== 'number') return false;
  const equal = Math.abs(outlines[below].outerRadius_mm - outlines[above].outerRadius_mm) < SAME_RADIUS_MM;
  return equal && along.every(({ bottom, top }) => top - bottom <= TOUCHING_MM);
}

/** Between shims that are as one plate there is no mark and no gap. */
export function touching(outlines: readonly ShimOutline[], valving: Valving, body: ValveBody): Touching {
  const pairs = neighbours(outlines, valving, body).filter((pair) => !areOne(pair, outlines));
  return { contacts: pairs.flatMap(contactsOf), gaps: pairs.flatMap(gapOf) };
}

/** Least clearance over the seat land, never below nothing; undefined where no shim covers the land [mm]. */
export function seatClearance(outlines: readonly ShimOutline[], valving: Valving, body: ValveBody): number | undefined {
  const over = neighbours(outlines, valving, body).filter(({ below }) => below === 'seat');
  const clear = over.flatMap(({ along }) => along.map(({ bottom, top }) => top - bottom));
  return clear.length === 0 ? undefined : Math.max(0, Math.min(...clear));
}
