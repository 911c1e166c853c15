/** Damping ratios that are wanted at low and at high speed, and the aim made of them. */

import { signal } from '@preact/signals';
import type { JSX } from 'preact';
import { SolverError } from '../../../workers/client.ts';
import type { RatioGoal } from '../../model/project.ts';
import { millimetresFromMetres } from '../../units/si.ts';
import { tell } from '../app/notices.ts';
import { errorInWords } from '../app/reasons.ts';
import { sideSolver } from '../app/side-solver.ts';
import { project, topSpeed } from '../app/store.ts';
import { ViewField } from '../panels/view-field.tsx';
import { aimWords } from '../text/aim.ts';
import { addAim } from './aim-store.ts';
import { aimSpeeds } from './changed-force.ts';
import { reading } from './chassis-solve.ts';

const words = aimWords.make;
const WAYS = ['compression', 'rebound'] as const;

/** Within the ranges of common practice, rebound above compression. */
const goals = signal<Readonly<Record<(typeof WAYS)[number], RatioGoal>>>({
  compression: { lowSpeedRatio: 0.3, highSpeedRatio: 0.15, kneeSpeed_m_s: 0.2 },
  rebound: { lowSpeedRatio: 0.6, highSpeedRatio: 0.3, kneeSpeed_m_s: 0.2 },
});

function Goal({ way }: { way: (typeof WAYS)[number] }): JSX.Element {
  const goal = goals.value[way];
  const take = (part: Partial<RatioGoal>): void => {
    goals.value = { ...goals.value, [way]: { ...goal, ...part } };
  };
  const ratio = {
    kind: 'plain',
    holds: (value: number) => value >= 0 && value <= 20,
    wanted: words.wantedRatio,
  } as const;
  return (
    <fieldset class="part" data-way={way}>
      <legend>{aimWords.aims.ways[way]}</legend>
      <ViewField
        {...ratio}
        label={words.low}
        value={goal.lowSpeedRatio}
        onValue={(lowSpeedRatio) => take({ lowSpeedRatio })}
      />
      <ViewField
        {...ratio}
        label={words.high}
        value={goal.highSpeedRatio}
        onValue={(highSpeedRatio) => take({ highSpeedRatio })}
      />
      <ViewField
        label={words.knee}
        kind="speed"
        value={goal.kneeSpeed_m_s}
        holds={(value) => value > 0 && value <= 100}
        wanted={words.wantedSpeed}
        onValue={(kneeSpeed_m_s) => take({ kneeSpeed_m_s })}
      />
    </fieldset>
  );
}

export const RatioGoals = (): JSX.Element => (
  <div class="ratio-goals">
    {WAYS.map((way) => (
      <Goal key={way} way={way} />
    ))}
  </div>
);

/** At the position that the readings are of. */
function placeNow(): number | undefined {
  const now = reading.value;
  if (now?.status !== 'read' || !('state' in now.swing)) return undefined;
  return millimetresFromMetres(now.swing.state.wheelTravel_m);
}

export async function makeByRatio(): Promise<void> {
  const wheelTravel_mm = placeNow();
  if (wheelTravel_mm === undefined) {
    tell(words.incomplete, { tone: 'problem' });
    return;
  }
  const { compression, rebound } = goals.value;
  const speeds_m_s = aimSpeeds(topSpeed.value, [compression.kneeSpeed_m_s, rebound.kneeSpeed_m_s]);
  const wish = { compression, rebound, wheelTravel_mm, speeds_m_s };
  try {
    const wanted = await sideSolver().wantedCurve({ ...wish, project: project.value });
    if (wanted.status !== 'wanted') {
      tell(wanted.status === 'no-swing' ? aimWords.readings.noSwing : words.incomplete, { tone: 'problem' });
      return;
    }
    const points = speeds_m_s.map((shaftSpeed_m_s, i) => ({
      shaftSpeed_m_s,
      force_N: Number(wanted.force_N[i].toFixed(1)),
    }));
    const origin = { compression, rebound, wheelTravel_mm: Number(wheelTravel_mm.toFixed(2)) };
    addAim(words.names.ratio, points, { kind: 'damping-ratio', ...origin });
  } catch (error) {
    if (!(error instanceof SolverError)) throw error;
    tell(aimWords.readings.failed(errorInWords(error)), { tone: 'problem' });
  }
}
