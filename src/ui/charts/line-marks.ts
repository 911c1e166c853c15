/** Where a line leaves what the model is proven for, or is held: a sign at the speed from which that is so. */
import { inShown } from '../app/quantities.ts';
import type { ForceCurve, StackPlace } from '../app/solved.ts';
import { text } from '../text/en.ts';
import { airReleaseFrom, heldFrom, type Series, type Shown, wavesFrom } from './chart-data.ts';
import { isShimPart } from './shim-series.ts';

export interface LineMark {
  readonly sign: string;
  /** Speed in the shown unit. */
  readonly x: number;
}

const mark = (sign: string, speed_m_s: number | undefined): LineMark[] =>
  speed_m_s === undefined ? [] : [{ sign, x: inShown('speed', speed_m_s) }];

const waves = (curve: ForceCurve, ...stacks: readonly StackPlace[]): LineMark[] => {
  const speeds = stacks.flatMap((stack) => wavesFrom(curve, stack) ?? []);
  return mark(text.chart.wavesMark, speeds.length === 0 ? undefined : Math.min(...speeds));
};

export function marksOf(part: Series['part'], curve: ForceCurve, { direction, stack }: Shown): LineMark[] {
  const { airMark } = text.chart;
  switch (part) {
    case 'compression':
      return [...waves(curve, 'compression', 'base'), ...mark(airMark, airReleaseFrom(curve, 1))];
    case 'rebound':
      return [...waves(curve, 'rebound'), ...mark(airMark, airReleaseFrom(curve, -1))];
    case 'compressionChamber':
      return mark(airMark, heldFrom(curve, direction, 'compression'));
    case 'reboundChamber':
      return mark(airMark, heldFrom(curve, direction, 'rebound'));
    case 'only':
      return waves(curve, stack);
    default:
      return isShimPart(part) ? waves(curve, stack) : [];
  }
}
