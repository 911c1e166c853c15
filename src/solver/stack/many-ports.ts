/**
 * Whether the ports under a stack press so nearly as if they were all round that the round theory serves.
 *
 * Measured against one wave a port, up to the onset of waves of the round state, over the demos with their ports replaced
 * (docs/decisions/0006-auto-theory.md): from these shares of the circumference on, the damping force is within one per
 * cent or so. Nine ports and more are many whatever they open, five and less never are.
 */
import type { PortsUnderShims } from '../types.ts';

const LEAST_SHARE: Readonly<Record<number, number>> = { 6: 0.85, 7: 0.8, 8: 0.65 };
/** From so many on, any share will do. */
const MANY = 9;

/** @param ports absent where a groove runs all round */
export function portsAreMany(ports: PortsUnderShims | undefined): boolean {
  if (!ports) return true;
  const { count, coveredFraction } = ports;
  return coveredFraction >= 1 || count >= MANY || coveredFraction >= (LEAST_SHARE[count] ?? 1);
}
