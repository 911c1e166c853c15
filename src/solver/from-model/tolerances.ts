/** Tolerances of the document in the names and units of the solver. */
import type { Project, Tolerances as WrittenTolerances } from '../../model/project.ts';
import { COMMON_TOLERANCES } from '../../model/tolerances.ts';
import { metresFromMillimetres, pascalsFromBars } from '../../units/si.ts';
import type { ToleranceName, Tolerances } from '../tolerance/scatter-table.ts';

const WRITTEN: { readonly [K in keyof WrittenTolerances]-?: readonly [ToleranceName, (value: number) => number] } = {
  thickness_mm: ['thickness', metresFromMillimetres],
  shimDiameter_mm: ['diameter', metresFromMillimetres],
  clampDiameter_mm: ['clamp', metresFromMillimetres],
  seatHeight_mm: ['seat', metresFromMillimetres],
  portEdgeDiameter_mm: ['portEdge', metresFromMillimetres],
  portDiameter_mm: ['ports', metresFromMillimetres],
  bleedDiameter_mm: ['bleed', metresFromMillimetres],
  viscosity_percent: ['viscosity', (percent) => percent / 100],
  oilTemperatureDifference_K: ['temperature', (difference_K) => difference_K],
  gasPressure_bar: ['gas', pascalsFromBars],
};

const inSI = (written: Required<WrittenTolerances>): Tolerances =>
  Object.fromEntries(
    Object.entries(WRITTEN).map(([key, [name, toSI]]) => [name, toSI(written[key as keyof WrittenTolerances])]),
  ) as unknown as Tolerances;

export const DEFAULT_TOLERANCES = inSI(COMMON_TOLERANCES);

/** What the document leaves out is common practice. */
export const tolerancesOfProject = ({ tolerances }: Project): Tolerances =>
  inSI({ ...COMMON_TOLERANCES, ...tolerances });
