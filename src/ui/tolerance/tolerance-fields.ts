/** The tolerances of the document by the names that the solver has for them. */
import type { ToleranceName } from '../../../workers/protocol.ts';
import type { Project, Tolerances } from '../../model/project.ts';
import { COMMON_TOLERANCES } from '../../model/tolerances.ts';
import { keyPut } from '../app/optional-parts.ts';
import type { FieldKind } from '../app/quantities.ts';
import { project } from '../app/store.ts';

export interface ToleranceField {
  readonly name: ToleranceName;
  readonly key: keyof Tolerances;
  readonly kind: FieldKind;
}

/** In the order of the parts: shims, what they lie on, what oil passes, oil, gas. */
export const TOLERANCE_FIELDS: readonly ToleranceField[] = [
  { name: 'thickness', key: 'thickness_mm', kind: 'length' },
  { name: 'diameter', key: 'shimDiameter_mm', kind: 'length' },
  { name: 'clamp', key: 'clampDiameter_mm', kind: 'length' },
  { name: 'seat', key: 'seatHeight_mm', kind: 'length' },
  { name: 'portEdge', key: 'portEdgeDiameter_mm', kind: 'length' },
  { name: 'ports', key: 'portDiameter_mm', kind: 'length' },
  { name: 'bleed', key: 'bleedDiameter_mm', kind: 'length' },
  { name: 'viscosity', key: 'viscosity_percent', kind: 'percent' },
  { name: 'temperature', key: 'oilTemperatureDifference_K', kind: 'temperatureDifference' },
  { name: 'gas', key: 'gasPressure_bar', kind: 'gasPressure' },
];

export const commonOf = ({ key }: ToleranceField): number => COMMON_TOLERANCES[key];
export const ownOf = ({ key }: ToleranceField): number | undefined => project.value.tolerances?.[key];
export const toleranceOf = (field: ToleranceField): number => ownOf(field) ?? commonOf(field);

/** Without an entry that is none of one's own, and without the record when that was the last. */
export function withTolerance({ key }: ToleranceField, value: number | undefined): Project {
  if (project.value.tolerances?.[key] === value) return project.value;
  const next = keyPut(project.value.tolerances ?? {}, key, value);
  return keyPut(project.value, 'tolerances', Object.keys(next).length > 0 ? next : undefined);
}

export const withoutTolerances = (): Project => keyPut(project.value, 'tolerances', undefined);
