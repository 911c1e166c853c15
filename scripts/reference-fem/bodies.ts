/**
 * The rigid and elastic rings of the continuum model, all in mm. z points from the piston into the stack, 0 is the hub
 * plane = the piston side of the face shim.
 *
 * Nothing overlaps at the start: a shim that a ring props up, and a seat above the hub plane, begin where they just
 * touch; the first step of the analysis then moves the clamp edge, or the seat, to where it belongs (`shift_mm`).
 */
import { expandShims } from '../../src/model/expand-shims.ts';
import type { ShimRow, StackFile } from '../../src/model/project.ts';

export type Role = 'shim' | 'ring' | 'seat' | 'plate';

export interface Body {
  readonly name: string;
  readonly role: Role;
  readonly innerRadius_mm: number;
  readonly outerRadius_mm: number;
  /** z of the piston side at the start. */
  readonly bottom_mm: number;
  readonly thickness_mm: number;
  /** Axial displacement prescribed in the first step, of the clamp edge of a shim and of all of a seat or plate. */
  readonly shift_mm: number;
}

/** A row whose bore may be larger than the clamp: a free ring. */
export type FemShimRow = ShimRow & { readonly innerDiameter_mm?: number };

const SHIM_KEYS = ['outerDiameter_mm', 'thickness_mm', 'count', 'innerDiameter_mm'];
const STACK_KEYS = [
  'format',
  'version',
  'name',
  'material',
  'clampDiameter_mm',
  'shims',
  'pressureZone',
  'seat',
  'backingPlate',
];
const MATERIAL_KEYS = ['youngsModulus_GPa', 'poissonsRatio'];
const RING_KEYS = ['innerDiameter_mm', 'outerDiameter_mm'];
/** Of the seat and the plate; they are rigid, their thickness is only drawn. */
const RIGID_THICKNESS_MM = 0.3;
/** Overlap that a propped ring begins with, so that it is held from the first iteration; it relaxes at once. */
const HOLD_MM = 1e-8;

export const isElastic = ({ role }: Body): boolean => role === 'shim' || role === 'ring';
export const topOf = ({ bottom_mm, thickness_mm }: Body): number => bottom_mm + thickness_mm;

/**
 * Seat, shims from the piston outward, plate.
 * @throws Error for anything the model does not carry: a key it does not know, a ring that nothing holds
 */
export function bodiesOf(stack: StackFile): Body[] {
  refuseUnknownKeys(stack);
  const shims = stackedShims(stack);
  refuseLooseRings(shims);
  return [...seatOf(stack), ...shims, ...plateOf(stack, shims)];
}

/** A key that is passed over in silence would make a reference of another stack. */
function refuseUnknownKeys(stack: StackFile): void {
  refuseOthers('the stack', stack, STACK_KEYS);
  refuseOthers('material', stack.material ?? {}, MATERIAL_KEYS);
  refuseOthers('pressureZone', stack.pressureZone, RING_KEYS);
  refuseOthers('seat', stack.seat ?? {}, [...RING_KEYS, 'height_mm']);
  refuseOthers('backingPlate', stack.backingPlate ?? {}, ['gap_mm']);
  stack.shims.forEach((row, i) => {
    refuseOthers(`shims[${i}]`, row, SHIM_KEYS);
  });
}

function refuseOthers(place: string, record: object, known: readonly string[]): void {
  const unknown = Object.keys(record).find((key) => !known.includes(key));
  if (unknown !== undefined) throw new Error(`${place}: the continuum model does not carry "${unknown}"`);
}

function stackedShims({ clampDiameter_mm, shims }: StackFile): Body[] {
  const bodies: Body[] = [];
  let hub_mm = 0;
  for (const row of expandShims(shims) as FemShimRow[]) {
    const free = row.innerDiameter_mm !== undefined && row.innerDiameter_mm > clampDiameter_mm;
    const innerRadius_mm = (free ? (row.innerDiameter_mm as number) : clampDiameter_mm) / 2;
    const size = { innerRadius_mm, outerRadius_mm: row.outerDiameter_mm / 2, thickness_mm: row.thickness_mm };
    const held_mm = floorUnder(size, bodies);
    const name = `SHIM${bodies.length + 1}`;
    if (free) {
      bodies.push({ ...size, name, role: 'ring', bottom_mm: held_mm - HOLD_MM, shift_mm: 0 });
      continue;
    }
    const propped = held_mm > hub_mm + 1e-9;
    const bottom_mm = propped ? held_mm - HOLD_MM : hub_mm;
    bodies.push({ ...size, name, role: 'shim', bottom_mm, shift_mm: propped ? hub_mm - bottom_mm : 0 });
    hub_mm += row.thickness_mm;
  }
  return bodies;
}

type Span = Pick<Body, 'innerRadius_mm' | 'outerRadius_mm'>;

export const overlap = (a: Span, b: Span): boolean =>
  Math.min(a.outerRadius_mm, b.outerRadius_mm) - Math.max(a.innerRadius_mm, b.innerRadius_mm) > 1e-9;

/** Height of the highest body below a span; the hub plane when there is none. */
const floorUnder = (span: Span, below: readonly Body[]): number =>
  below.filter((body) => overlap(body, span)).reduce((z, body) => Math.max(z, topOf(body)), 0);

/** A ring that no shim presses would float: its equations are singular until something touches it. */
function refuseLooseRings(shims: readonly Body[]): void {
  for (const [i, ring] of shims.entries()) {
    if (ring.role !== 'ring') continue;
    const pressing = shims.slice(i + 1).find((above) => overlap(above, ring));
    if (pressing && Math.abs(pressing.bottom_mm - topOf(ring)) < 1e-6) continue;
    throw new Error(
      `${ring.name}: nothing presses on this ring in the unloaded stack; only held rings can be modelled`,
    );
  }
}

function seatOf({ seat }: StackFile): Body[] {
  if (!seat) return [];
  const top_mm = Math.min(seat.height_mm, 0);
  return [
    {
      name: 'SEAT',
      role: 'seat',
      innerRadius_mm: seat.innerDiameter_mm / 2,
      outerRadius_mm: seat.outerDiameter_mm / 2,
      bottom_mm: top_mm - RIGID_THICKNESS_MM,
      thickness_mm: RIGID_THICKNESS_MM,
      shift_mm: seat.height_mm - top_mm,
    },
  ];
}

function plateOf({ backingPlate, clampDiameter_mm }: StackFile, shims: readonly Body[]): Body[] {
  if (!backingPlate) return [];
  const clamped = shims.filter(({ role }) => role === 'shim');
  const place_mm = clamped.reduce((z, { thickness_mm }) => z + thickness_mm, backingPlate.gap_mm);
  const bottom_mm = Math.max(place_mm, ...shims.map(topOf));
  return [
    {
      name: 'PLATE',
      role: 'plate',
      innerRadius_mm: clampDiameter_mm / 2,
      outerRadius_mm: Math.max(...shims.map(({ outerRadius_mm }) => outerRadius_mm)),
      bottom_mm,
      thickness_mm: RIGID_THICKNESS_MM,
      shift_mm: place_mm - bottom_mm,
    },
  ];
}
