/** `shimwright force`: force against shaft speed of one build, under one or several settings of the day. */
import type { Outcome, Request } from '../command.ts';
import { type AskedPoint, airReleaseOf, cavitationOf, rowOf } from '../curve-points.ts';
import { whereOf } from '../render/rows.ts';
import { tellCurve } from '../tell-curve.ts';
import { theoryColumns } from '../theories.ts';
import { forceColumns } from './force-columns.ts';

export const BAND = 'band';
export const WITHOUT_GAS = 'without-gas';

export function force(request: Request): Promise<Outcome> {
  const wanted = { band: request.values.has(BAND), withoutGas: request.values.has(WITHOUT_GAS) };
  return tellCurve(request, {
    format: 'shimwright/force',
    bands: wanted.band,
    columnsOf: (damper) => [...forceColumns(damper, wanted), ...theoryColumns(damper.layout !== 'monotube')],
    rowsOf: (point) => [rowOf(point)],
    remarksOf: (point) => [...airReleaseOf(point), ...cavitationOf(point), ...bandFailureOf(point)],
  });
}

function bandFailureOf({ asked, point }: AskedPoint): string[] {
  if (point.status !== 'converged' || !point.band || point.band.status === 'converged') return [];
  return [`${whereOf(asked)}: no band: ${point.band.status}: ${point.band.reason}`];
}
