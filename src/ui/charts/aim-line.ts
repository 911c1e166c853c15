/** The aim on a force chart: a line of its own in ink, since only builds carry colour, with a dash that no build has. */
import { computed } from '@preact/signals';
import type { Aim } from '../../model/project.ts';
import { aimOnBench, chosenAim } from '../aim/aim-store.ts';
import { isDark } from '../app/preferences.ts';
import { inShown } from '../app/quantities.ts';
import { outcomes } from '../app/solve.ts';
import { baseline } from '../app/store.ts';
import { isSolved } from '../section/shape-at.ts';
import { aimWords } from '../text/aim.ts';
import type { PlotLine } from './plot-layout.ts';

const DASH = '3px,3px';
const WIDTH = 1.75;
const INK = { light: '#14242c', dark: '#e2ebec' } as const;

interface AimLine extends PlotLine {
  readonly buildId: string;
  readonly label: string;
  readonly part: 'compression' | 'rebound';
  readonly named: boolean;
  readonly marks: readonly [];
}

/** @param gasForce_N that of the damper where the chart shows it, since an aim leaves it out */
export function aimLines({ id, name, points }: Aim, gasForce_N: number): AimLine[] {
  const label = aimWords.aims.label(name);
  return ([1, -1] as const).flatMap((way) => {
    const own = points
      .filter(({ shaftSpeed_m_s }) => shaftSpeed_m_s * way > 0)
      .sort((a, b) => Math.abs(a.shaftSpeed_m_s) - Math.abs(b.shaftSpeed_m_s));
    if (own.length === 0) return [];
    return {
      buildId: `aim ${id}`,
      part: way === 1 ? 'compression' : 'rebound',
      label,
      name: label,
      named: way === 1 || points.every(({ shaftSpeed_m_s }) => shaftSpeed_m_s < 0),
      marks: [],
      x: own.map(({ shaftSpeed_m_s }) => inShown('speed', Math.abs(shaftSpeed_m_s))),
      y: own.map(({ force_N }) => inShown('force', force_N + gasForce_N)),
      colour: isDark() ? INK.dark : INK.light,
      dash: DASH,
      width: WIDTH,
      faded: false,
    };
  });
}

/** Of the damper at the position of the curves: the same at every speed and in every build. */
export const gasForceNow = computed<number | undefined>(() => {
  const solved = outcomes.value.get(baseline.value.id)?.curve?.points.find(isSolved);
  return solved?.gasForce_N;
});

/** For the bench; nothing while the force of the gas is wanted and not known. */
export function benchAimLines(withoutGas: boolean): AimLine[] {
  const aim = aimOnBench.value ? chosenAim.value : undefined;
  const gas = withoutGas ? 0 : gasForceNow.value;
  return aim && gas !== undefined ? aimLines(aim, gas) : [];
}
