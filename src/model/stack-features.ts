/**
 * How bores, dishes, notches, springs and the backing plate must relate to the rest of their stack. Broken numbers are
 * skipped here: the schema has already refused them.
 */
import type { InputFault } from '../units/fault.ts';
import { preloadAdjusterFaults } from './adjuster-relations.ts';
import { child, entries, numberAt, type Place } from './place.ts';
import { atMost, lessThan, moreThan, relationFault } from './relation.ts';

/** Steepest cone that the plate theory holds for: rise over run. */
const STEEPEST_CONE = 0.2;
/** Narrowest shim that can be told from its own clamp, as a share of the width of the widest in its stack. */
const NARROWEST_SHARE = 0.001;
/** Share of the rim that notches may take; beyond it the shim would bend differently. */
const NOTCHED_SHARE = 0.25;

const rimOf = (row: Place): number | undefined => numberAt(child(row, 'outerDiameter_mm'));
const isGiven = ({ value }: Place): boolean => value !== undefined;

/** Inner diameter of the part of a shim that can bend. */
const freeFrom = (row: Place, clamp_mm: number): number =>
  Math.max(numberAt(child(row, 'innerDiameter_mm')) ?? 0, clamp_mm);

/** @param stack a valving or a stack file @param zone, seat under it, which in a project belong to the damper */
export function featureFaults(stack: Place, zone: Place, seat: Place): InputFault[] {
  const clamp = numberAt(child(stack, 'clampDiameter_mm'));
  const shims = child(stack, 'shims');
  const rows = entries(shims);
  return [
    ...rows.flatMap((row) => boreFault(row)),
    ...(clamp === undefined ? [] : [...clampFaults(shims, rows, clamp), ...springFaults(stack, rows, clamp)]),
    ...rows.flatMap((row, index) => notchFaults(row, index)),
    ...coveredNotchFaults(rows, seat),
    ...preloadAdjusterFaults(child(stack, 'coilSpring')),
    ...(clamp === undefined ? [] : faceRingFaults(rows, clamp, zone, seat)),
  ];
}

const boreFault = (row: Place): InputFault[] =>
  relationFault(child(row, 'innerDiameter_mm'), {
    code: 'stack.shim.bore',
    wanted: 'less than the outer diameter of the shim',
    limit: rimOf(row),
    holds: lessThan,
  });

/** A free part next to nothing wide would have its bore and its rim in the same place. */
function narrowFault(row: Place, clamp: number, widest: number): InputFault[] {
  const inner = freeFrom(row, clamp);
  const least = inner + NARROWEST_SHARE * (widest - clamp);
  return relationFault(child(row, 'outerDiameter_mm'), {
    code: 'stack.shim.too-narrow',
    wanted: 'wide enough to bend, at least',
    limit: Number(least.toPrecision(6)),
    holds: (rim) => rim <= inner || rim >= least,
  });
}

function clampFaults(shims: Place, rows: readonly Place[], clamp: number): InputFault[] {
  const widest = rows.reduce((rim, row) => Math.max(rim, rimOf(row) ?? rim), clamp);
  const onlyRings = rows.length > 0 && rows.every((row) => freeFrom(row, clamp) > clamp);
  const wanted = `at least 1 shim whose bore fits the clamp diameter ${clamp} mm`;
  return [
    ...(onlyRings ? [{ code: 'stack.nothing-clamped', path: shims.path, got: 'only rings', wanted }] : []),
    ...rows.flatMap((row) => [...dishFault(row, clamp), ...narrowFault(row, clamp, widest)]),
  ];
}

function dishFault(row: Place, clamp: number): InputFault[] {
  const rim = rimOf(row);
  const steepest = rim === undefined ? 0 : (STEEPEST_CONE * (rim - freeFrom(row, clamp))) / 2;
  if (steepest <= 0) return [];
  return relationFault(child(row, 'dish_mm'), {
    code: 'stack.shim.dish',
    wanted: 'a cone no steeper than 1 in 5, a dish to either side of at most',
    limit: Number(steepest.toPrecision(6)),
    holds: (dish) => Math.abs(dish) <= steepest,
  });
}

function springFaults(stack: Place, rows: readonly Place[], clamp: number): InputFault[] {
  const coil = child(stack, 'coilSpring');
  const float = child(stack, 'float');
  const circle = child(coil, 'diameter_mm');
  const code = 'stack.coil-spring.beyond-shim';
  const [last] = rows.slice(-1);
  const both = { code: 'stack.float.with-coil-spring', path: float.path, got: 'both' };
  return [
    ...relationFault(child(stack, 'backingPlate', 'outerDiameter_mm'), {
      code: 'stack.backing-plate.inside-clamp',
      wanted: 'more than the clamp diameter',
      limit: clamp,
      holds: moreThan,
    }),
    ...(last === undefined
      ? []
      : [
          ...relationFault(circle, {
            code,
            wanted: 'within the last shim, at most',
            limit: rimOf(last),
            holds: atMost,
          }),
          ...relationFault(circle, {
            code,
            wanted: 'on the free part of the last shim, more than',
            limit: freeFrom(last, clamp),
            holds: moreThan,
          }),
        ]),
    ...(isGiven(coil) && isGiven(float) ? [{ ...both, wanted: 'a float or a coil spring, not both' }] : []),
  ];
}

function notchFaults(row: Place, index: number): InputFault[] {
  const notches = child(row, 'notches');
  if (!isGiven(notches)) return [];
  const isSingle = index === 0 && (numberAt(child(row, 'count')) ?? 1) <= 1;
  if (!isSingle) {
    const got = index === 0 ? 'a row of several shims' : `row ${index + 1}`;
    const wanted = 'notches only on the first shim, in a row of its own';
    return [{ code: 'stack.notches.not-face', path: notches.path, got, wanted }];
  }
  const [rim, count, width] = [rimOf(row), numberAt(child(notches, 'count')), numberAt(child(notches, 'width_mm'))];
  if (rim === undefined || count === undefined || width === undefined) return [];
  const most = NOTCHED_SHARE * Math.PI * rim;
  if (count * width <= most) return [];
  return [
    {
      code: 'stack.notches.too-wide',
      path: child(notches, 'width_mm').path,
      got: `${count} x ${width} mm`,
      wanted: `at most ${most.toPrecision(4)} mm in all, a quarter of the rim: beyond it the shim bends differently`,
    },
  ];
}

/** The next shim is the roof of a notch: without it the notch is no slot of the thickness of its shim. */
function coveredNotchFaults([face, next]: readonly Place[], seat: Place): InputFault[] {
  const land = numberAt(child(seat, 'outerDiameter_mm'));
  if (face === undefined || !isGiven(child(face, 'notches')) || land === undefined) return [];
  const rim = next && rimOf(next);
  if (rim !== undefined && rim >= land) return [];
  return [
    {
      code: 'stack.notches.uncovered',
      path: child(face, 'notches').path,
      got: rim === undefined ? 'no shim behind it' : `a next shim of ${rim} mm`,
      wanted: `a next shim that covers the seat, of at least ${land} mm`,
    },
  ];
}

/** A ring that lies on the seat must cover it, and shims on the clamp must reach over seat and zone behind it. */
function faceRingFaults(rows: readonly Place[], clamp: number, zone: Place, seat: Place): InputFault[] {
  const [face] = rows;
  if (face === undefined || freeFrom(face, clamp) <= clamp) return [];
  const clamped = rows.filter((row) => freeFrom(row, clamp) <= clamp).map((row) => rimOf(row) ?? 0);
  const reach = {
    wanted: 'at most the largest shim on the clamp,',
    limit: clamped.length > 0 ? Math.max(...clamped) : undefined,
    holds: atMost,
  };
  const land = child(seat, 'outerDiameter_mm');
  return [
    ...relationFault(child(face, 'innerDiameter_mm'), {
      code: 'stack.face.ring-off-seat',
      wanted: 'a ring on the seat, with a bore of at most',
      limit: numberAt(child(seat, 'innerDiameter_mm')),
      holds: atMost,
    }),
    ...(numberAt(land) === undefined
      ? relationFault(child(zone, 'outerDiameter_mm'), { code: 'stack.zone.beyond-shims', ...reach })
      : relationFault(land, { code: 'stack.seat.beyond-shims', ...reach })),
  ];
}
