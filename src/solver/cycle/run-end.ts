/**
 * Why a run could not go on, read off the damper as it stood when it ended: a valve at the end of its table, or oil that would pull apart
 * beside a floating piston that its friction holds back. Source: own.
 *
 * symbol  unit  meaning
 * drop    Pa    fall of pressure from a chamber to its parent
 */
import { pressureInWords } from '../in-words.ts';
import type { CycleNetwork } from './cycle-network.ts';
import type { FailedCycle } from './types.ts';

export type RunEnd = Pick<FailedCycle, 'status' | 'reason'>;

type Ended = Pick<CycleNetwork, 'model' | 'names' | 'pressure_Pa' | 'gasPressure_Pa' | 'oil'>;

/** Share of its last drop from which on a table counts as at its end. */
const NEAR_END = 0.99;
/** Over air release by less than this share of what the floating piston holds, the oil beside it counts as at it. */
const NEAR_RELEASE = 0.01;

/** @returns undefined when neither explains it */
export function causeOfEnd(network: Ended): RunEnd | undefined {
  return valveAtEnd(network) ?? stuckSeparator(network);
}

function valveAtEnd({ model, names, pressure_Pa }: Ended): RunEnd | undefined {
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

function stuckSeparator({ model, pressure_Pa, gasPressure_Pa, oil }: Ended): RunEnd | undefined {
  const held = model.root.gas.separatorFriction_Pa;
  if (!(held > 0 && pressure_Pa[0] < oil.floor_Pa + NEAR_RELEASE * held)) return undefined;
  const [friction, gas, least] = [held, gasPressure_Pa, oil.floor_Pa + held].map(pressureInWords);
  return {
    status: 'separator',
    reason: `friction holds the floating piston back with ${friction} against ${gas} of gas, and the oil beside it pulls apart; more than ${least} of gas would prevent it`,
  };
}
