/** Fitted values that are kept with a build. */
import type { Build } from '../../model/project.ts';
import type { FitName, FitValues } from '../fit/fit-coefficients.ts';

/** None without a fit. The force that the load cell is off by is no force of the damper and stays out. */
export const fitValuesOf = ({ fit }: Build): FitValues =>
  Object.fromEntries(
    (fit?.coefficients ?? []).flatMap(({ name, value }): [FitName, number][] =>
      name === 'forceOffset_N' ? [] : [[name, value]],
    ),
  );
