/** Refuses searches that have no answer. */
import { InputError } from '../../units/fault.ts';
import type { AimPoint, SearchProblem, SearchSettings } from './types.ts';

/** @throws InputError `search.aim.*`, `search.places.none`, `search.supply.none`, `search.settings.*` */
export function checkProblem(problem: SearchProblem, { seed, steps, answers }: SearchSettings): void {
  checkAim(problem);
  for (const [name, value] of Object.entries({ steps, answers })) {
    if (!(Number.isInteger(value) && value >= 1))
      refuse(`search.settings.${name}`, `settings.${name}`, String(value), 'a whole number of at least 1');
  }
  if (!Number.isInteger(seed)) refuse('search.settings.seed', 'settings.seed', String(seed), 'a whole number');
}

/** @throws InputError `search.aim.*`, `search.places.none`, `search.supply.none` */
export function checkAim({ aim, places, supply }: SearchProblem): void {
  if (places.length === 0) refuse('search.places.none', 'places', 'none', 'at least one stack that may change');
  if (supply.length === 0) refuse('search.supply.none', 'supply', 'none', 'at least one shim');
  aim.forEach(checkPoint);
  for (const { place } of places) {
    const way = place === 'rebound' ? -1 : 1;
    if (aim.some((point) => point.shaftSpeed_m_s * way > 0 && point.force_N * way > 0)) continue;
    const wanted = `a point with speed and force ${way < 0 ? 'below' : 'above'} 0, since the stack ${place} may change`;
    refuse('search.aim.direction', 'aim', `${aim.length} points, none of them`, wanted);
  }
}

function checkPoint({ shaftSpeed_m_s: v, force_N }: AimPoint, i: number): void {
  if (!(Number.isFinite(v) && v !== 0))
    refuse('search.aim.speed', `aim[${i}].shaftSpeed_m_s`, String(v), 'a speed above or below 0', 'm/s');
  if (!Number.isFinite(force_N)) refuse('search.aim.force', `aim[${i}].force_N`, String(force_N), 'a number', 'N');
}

function refuse(code: string, path: string, got: string, wanted: string, unit?: string): never {
  throw new InputError({ code, path, got, wanted, ...(unit && { unit }) });
}
