/**
 * Why a run could not go on, read off the damper as it stood when it ended: a valve at the end of its table. Source: own.
 *
 * symbol  unit  meaning
 * drop    Pa    fall of pressure from a chamber to its parent
 */
import { pressureInWords } from '../in-words.ts';
import type { CycleNetwork } from './cycle-network.ts';
import type { FailedCycle } from './types.ts';

export type RunEnd = Pick<FailedCycle, 'status' | 'reason'>;

type Ended = Pick<CycleNetwork, 'model' | 'names' | 'pressure_Pa'>;

/** Share of its last drop from which on a table counts as at its end. */
const NEAR_END = 0.99;

/** @returns undefined when no valve explains it */
export function causeOfEnd({ model, names, pressure_Pa }: Ended): RunEnd | undefined {
  for (const [k, { name, parent, link }] of model.chambers.entries()) {
    const drop = pressure_Pa[k + 1] - pressure_Pa[names.indexOf(parent)];
    const { steady, endReason } = drop < 0 ? link.inward : link.outward;
    const end = steady.drop_Pa[steady.drop_Pa.length - 1];
    if (!(Math.abs(drop) > NEAR_END * end)) continue;
    const way = drop < 0 ? `${parent} to ${name}` : `${name} to ${parent}`;
    const why = endReason ? ` (${endReason})` : '';
    return { status: 'beyond-table', reason: `the valve from ${way} ends at a drop of ${pressureInWords(end)}${why}` };
  }
  return undefined;
}
