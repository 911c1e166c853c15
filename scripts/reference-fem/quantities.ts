/** The results of a run under the names that the evaluator `stack-lift` gives them. */
import type { StackResult } from './read-results.ts';

export type QuantityKind = 'lift' | 'stress' | 'force';

export interface NamedQuantity {
  readonly name: string;
  readonly kind: QuantityKind;
  readonly value: number;
  readonly unit: 'mm' | 'MPa' | 'N';
}

const UNITS = { lift: 'mm', stress: 'MPa', force: 'N' } as const;

/** Seat and plate forces only where the stack has them. */
export function namedQuantities(
  results: readonly StackResult[],
  has: { seat: boolean; plate: boolean },
): NamedQuantity[] {
  return results.flatMap((result) => {
    const named = (kind: QuantityKind, what: string, value: number): NamedQuantity => ({
      name: `${result.pressure_MPa} MPa ${what}`,
      kind,
      value,
      unit: UNITS[kind],
    });
    return [
      ...result.shimEdgeLift_mm.flatMap((lift_mm, i) => {
        const stress = result.clampStress_MPa[i];
        const lifts =
          i === 0
            ? [named('lift', 'faceEdgeLift', lift_mm), named('lift', 'zoneEdgeLift', result.zoneEdgeLift_mm)]
            : [named('lift', `shim ${i + 1} edgeLift`, lift_mm)];
        return stress === undefined ? lifts : [...lifts, named('stress', `shim ${i + 1} clampStress`, stress)];
      }),
      named('stress', 'largestClampStress', Math.max(...result.clampStress_MPa.map((stress) => stress ?? 0))),
      named('force', 'clampForce', result.clampForce_N),
      ...(has.seat ? [named('force', 'seatForce', result.seatForce_N)] : []),
      ...(has.plate ? [named('force', 'plateForce', result.plateForce_N)] : []),
    ];
  });
}
