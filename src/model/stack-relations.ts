/** How the sizes of one stack must relate. Broken numbers are skipped here: the schema has already refused them. */
import type { InputFault } from '../units/fault.ts';
import { materialFaults } from './material-relations.ts';
import { child, describe, entries, numberAt, type Place } from './place.ts';
import { atLeast, moreThan, relationFault } from './relation.ts';
import { featureFaults } from './stack-features.ts';
import { MAX_SHIMS } from './stack-schema.ts';

/** Where a relation finds its sizes; in a project they come from the build and from the damper. */
export interface StackPlaces {
  readonly clamp: Place;
  readonly shims: Place;
  readonly zone: Place;
  readonly seat: Place;
}

const inner = (ring: Place): Place => child(ring, 'innerDiameter_mm');
const outer = (ring: Place): Place => child(ring, 'outerDiameter_mm');

/** Zone and seat as they are machined: each a ring, the land outside the zone. */
export function ringFaults(zone: Place, seat: Place): InputFault[] {
  return [
    ...relationFault(outer(zone), {
      code: 'stack.zone.order',
      wanted: 'more than the inner diameter of the pressure zone',
      limit: numberAt(inner(zone)),
      holds: moreThan,
    }),
    ...relationFault(outer(seat), {
      code: 'stack.seat.order',
      wanted: 'more than the inner diameter of the seat',
      limit: numberAt(inner(seat)),
      holds: moreThan,
    }),
    ...relationFault(inner(seat), {
      code: 'stack.seat.inside-zone',
      wanted: 'at least the outer diameter of the pressure zone',
      limit: numberAt(outer(zone)),
      holds: atLeast,
    }),
  ];
}

/** Shims on their clamp, over their ports. */
export function shimFaults({ clamp, shims, zone, seat }: StackPlaces): InputFault[] {
  const rims = entries(shims).map((row) => child(row, 'outerDiameter_mm'));
  return [
    ...howManyFaults(shims),
    ...rims.flatMap((rim) =>
      relationFault(rim, {
        code: 'stack.shim.below-clamp',
        wanted: 'more than the clamp diameter',
        limit: numberAt(clamp),
        holds: moreThan,
      }),
    ),
    ...relationFault(outer(zone), {
      code: 'stack.zone.inside-clamp',
      wanted: 'more than the clamp diameter',
      limit: numberAt(clamp),
      holds: moreThan,
    }),
    ...relationFault(inner(seat), {
      code: 'stack.seat.inside-clamp',
      wanted: 'more than the clamp diameter',
      limit: numberAt(clamp),
      holds: moreThan,
    }),
    ...rims.slice(0, 1).flatMap((face) => coverFaults(face, zone, seat)),
  ];
}

/** The face shim must reach over the seat; without a seat, over the pressure zone. */
function coverFaults(face: Place, zone: Place, seat: Place): InputFault[] {
  const onSeat = numberAt(outer(seat)) !== undefined;
  return relationFault(face, {
    code: onSeat ? 'stack.face.inside-seat' : 'stack.face.inside-zone',
    wanted: `at least the outer diameter of the ${onSeat ? 'seat' : 'pressure zone'}`,
    limit: numberAt(outer(onSeat ? seat : zone)),
    holds: atLeast,
  });
}

function howManyFaults(shims: Place): InputFault[] {
  if (!Array.isArray(shims.value)) return [];
  const rows = entries(shims);
  if (rows.length === 0)
    return [{ code: 'stack.empty', path: shims.path, got: describe([]), wanted: 'at least 1 shim' }];
  const total = rows.reduce((sum, row) => sum + soundCount(child(row, 'count')), 0);
  if (total <= MAX_SHIMS) return [];
  const wanted = `at most ${MAX_SHIMS} shims in one stack`;
  return [{ code: 'stack.too-many', path: shims.path, got: `${total} shims`, wanted }];
}

/** A count that the schema has refused stands for one shim, so that it is told once. */
function soundCount({ value }: Place): number {
  const sound = Number.isInteger(value) && (value as number) >= 1 && (value as number) <= MAX_SHIMS;
  return sound ? (value as number) : 1;
}

/** Everything a stack file must keep. */
export function stackRelations(file: Place): InputFault[] {
  const places: StackPlaces = {
    clamp: child(file, 'clampDiameter_mm'),
    shims: child(file, 'shims'),
    zone: child(file, 'pressureZone'),
    seat: child(file, 'seat'),
  };
  return [
    ...shimFaults(places),
    ...featureFaults(file, places.zone, places.seat),
    ...materialFaults(file),
    ...ringFaults(places.zone, places.seat),
  ];
}
