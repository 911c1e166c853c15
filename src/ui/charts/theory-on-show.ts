/** Which plate theories gave what the chart shows, by the tab that is open. */
import { motion } from '../app/cycle-motion.ts';
import { cycleOf } from '../app/cycle-solve.ts';
import { shownEffects } from '../app/effects-solve.ts';
import { outcomes } from '../app/solve.ts';
import { visibleBuilds } from '../app/store.ts';
import { sweepAnswer } from '../app/sweep-solve.ts';
import { theoriesInWords, theoriesOf, theoriesOfBuilds } from '../app/theories.ts';
import { clickSweep } from '../sweeps/click-sweep.ts';
import { positionSweep } from '../sweeps/position-sweep.ts';
import type { Sweep } from '../sweeps/sweep.ts';
import { temperatureSweep } from '../sweeps/temperature-sweep.ts';
import { text } from '../text/en.ts';
import { tab } from './tabs.ts';

const ofCurves = (): string =>
  theoriesOfBuilds(
    visibleBuilds.value.flatMap(({ id, name }) => {
      const curve = outcomes.value.get(id)?.curve;
      return curve ? [{ name, theories: theoriesOf(curve) }] : [];
    }),
  );

export const theoryOfCycles = (): string =>
  theoriesOfBuilds(
    visibleBuilds.value.flatMap((build) => {
      const { reading } = cycleOf(build);
      return reading ? [{ name: build.name, theories: reading.theories }] : [];
    }),
  );

/** Each theory once, since a stack may be used further at one end of a sweep than at the other. */
function ofSweep({ points }: Sweep): string {
  const told = points.value.flatMap((point) => {
    const forces = sweepAnswer(point)?.forces;
    return forces ? [theoriesInWords(forces.theories)] : [];
  });
  return text.theories.either([...new Set(told)]);
}

function ofEffects(): string {
  const { effects } = shownEffects.value;
  return effects ? theoriesInWords(effects.theories) : '';
}

/** In words; empty while nothing is solved. */
export function theoryOnShow(): string {
  switch (tab.value) {
    case 'cycle':
      return motion.value === 'peaks' ? ofCurves() : theoryOfCycles();
    case 'effects':
      return ofEffects();
    case 'temperature':
      return ofSweep(temperatureSweep);
    case 'position':
      return ofSweep(positionSweep);
    case 'clicks':
      return ofSweep(clickSweep);
    default:
      return ofCurves();
  }
}
