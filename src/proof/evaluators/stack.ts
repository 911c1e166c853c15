/** Whole stacks: the stack file of a person, solved as the bench and the command line solve it. */
import { validateStackFile } from '../../model/validate.ts';
import { z } from '../../model/zod.ts';
import { stackFromFile } from '../../solver/from-model.ts';
import { solveLift } from '../../solver/stack/solve-lift.ts';
import type { ConvergedLift, Wave } from '../../solver/types.ts';
import { formatFault, InputError } from '../../units/fault.ts';
import { millimetresFromMetres as millimetres, pascalsFromMegapascals } from '../../units/si.ts';
import { evaluated, evaluateRows, evaluator, failed, type Quantities } from '../evaluator.ts';

const schema = z.strictObject({
  theory: z.enum(['small-deflection', 'large-deflection', 'port-periodic']),
  pressures_MPa: z.array(z.number()),
  stack: z.unknown(),
});

/**
 * Per pressure, named `<p> MPa …`: `faceEdgeLift`, `zoneEdgeLift`, `shim <n> edgeLift` [mm], `shim <n> clampStress`,
 * `largestClampStress` [MPa], `clampForce`, `plateForce`, `seatForce` [N]. Shims are counted from 1, piston side first.
 * Where the theory follows waves, also `minEdgeLift` and `maxEdgeLift` of the face shim [mm] and the number of `waves`;
 * the other lifts are means round the circle.
 */
export const stackLift = evaluator(schema, ({ theory, pressures_MPa, stack }) => {
  const checked = validateStackFile(stack);
  if (!checked.ok) {
    const [fault] = checked.faults;
    throw new InputError({ ...fault, path: `input.stack.${fault.path}`, wanted: formatFault(fault) });
  }
  const pressures_Pa = pressures_MPa.map(pascalsFromMegapascals);
  const { points } = solveLift(stackFromFile(checked.document), pressures_Pa, { theory });
  const rows = points.map((point, i) => ({ label: `${pressures_MPa[i]} MPa`, point }));
  return evaluateRows(rows, ({ point }) =>
    point.status === 'converged' ? evaluated(liftQuantities(point)) : failed(point.reason),
  );
});

function liftQuantities(point: ConvergedLift): Quantities {
  const quantities: Record<string, number> = {
    faceEdgeLift: millimetres(point.faceEdgeLift_m),
    zoneEdgeLift: millimetres(point.zoneEdgeLift_m),
    clampForce: point.clampForce_N,
    plateForce: point.plateForce_N,
    seatForce: point.seatForce_N,
    largestClampStress: Math.max(...point.shimClampStress_Pa) / 1e6,
  };
  point.shimEdgeLift_m.forEach((lift_m, i) => {
    quantities[`shim ${i + 1} edgeLift`] = millimetres(lift_m);
    quantities[`shim ${i + 1} clampStress`] = point.shimClampStress_Pa[i] / 1e6;
  });
  return { ...quantities, ...(point.wave && waveQuantities(point.wave)) };
}

const waveQuantities = ({ minEdgeLift_m, maxEdgeLift_m, waves }: Wave): Quantities => ({
  minEdgeLift: millimetres(minEdgeLift_m),
  maxEdgeLift: millimetres(maxEdgeLift_m),
  waves,
});
