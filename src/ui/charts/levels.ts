/** The pressures that every chamber is measured against: that of the gas, and that below which air comes out. */
import { STANDARD_ATMOSPHERE_PA } from '../../units/si.ts';
import type { Direction } from '../app/places.ts';
import { inShown, show } from '../app/quantities.ts';
import type { ForceCurve, ForcePoint } from '../app/solved.ts';
import { isSolved, pointsOf } from '../section/shape-at.ts';
import { text } from '../text/en.ts';
import { airReleaseLevel } from './air-margin.ts';
import type { ShimQuantity } from './shim-series.ts';

export interface Level {
  readonly id: 'gas' | 'airRelease' | 'limit';
  /** In the shown unit, above atmosphere. */
  readonly value: number;
  readonly label: string;
}

function level(id: 'gas' | 'airRelease', absolute_Pa: number | undefined): Level[] {
  if (absolute_Pa === undefined) return [];
  const gauge_Pa = absolute_Pa - STANDARD_ATMOSPHERE_PA;
  return [{ id, value: inShown('pressure', gauge_Pa), label: text.chart.levels[id](show('pressure', gauge_Pa)) }];
}

const firstOf = (points: readonly ForcePoint[], read: (p: ForcePoint) => number | undefined): number | undefined =>
  points.map(read).find((value) => value !== undefined);

/** A shim that uses all of its limit has a reserve of 1; lift and stress themselves have none. */
export const limitOf = (quantity: ShimQuantity): Level[] =>
  quantity === 'life' || quantity === 'yield' ? [{ id: 'limit', value: 100, label: text.shims.limit }] : [];

/** Gas and oil are those of the project, so any solved point of any build tells them. */
export function levelsOf(curves: readonly ForceCurve[], direction: Direction): Level[] {
  const points = curves.flatMap((curve) => pointsOf(curve, direction).filter(isSolved));
  return [
    ...level(
      'gas',
      firstOf(points, (point) => point.gasPressure_Pa),
    ),
    ...level('airRelease', firstOf(points, airReleaseLevel)),
  ];
}
