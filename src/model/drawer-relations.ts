/** How the entries of the drawer, and the points of the aims, must relate. */
import type { InputFault } from '../units/fault.ts';
import { sizeKey } from './drawer.ts';
import { child, describe, entries, type Place } from './place.ts';

export function drawerFaults(project: Place): InputFault[] {
  const seen = new Set<string>();
  return entries(child(project, 'drawer')).flatMap((entry) => {
    const { value: outerDiameter_mm, path } = child(entry, 'outerDiameter_mm');
    const thickness_mm = child(entry, 'thickness_mm').value;
    const innerDiameter_mm = child(entry, 'innerDiameter_mm').value;
    if (typeof outerDiameter_mm !== 'number' || typeof thickness_mm !== 'number') return [];
    const bore = typeof innerDiameter_mm === 'number' ? innerDiameter_mm : undefined;
    const key = sizeKey({ outerDiameter_mm, thickness_mm, innerDiameter_mm: bore });
    if (bore !== undefined && bore >= outerDiameter_mm) {
      const wanted = `less than the outer diameter, ${outerDiameter_mm}`;
      const at = child(entry, 'innerDiameter_mm').path;
      return [{ code: 'drawer.bore', path: at, got: String(bore), wanted, unit: 'mm' }];
    }
    if (seen.has(key)) return [{ code: 'drawer.same-size', path, got: key, wanted: 'each size once, with its count' }];
    seen.add(key);
    return [];
  });
}

export function aimFaults(project: Place): InputFault[] {
  const aims = entries(child(project, 'aims'));
  const ids = aims.map((aim) => child(aim, 'id'));
  const same = ids
    .filter(({ value }, i) => value !== undefined && ids.findIndex((other) => other.value === value) < i)
    .map(({ value, path }) => ({
      code: 'aim.same-id',
      path,
      got: describe(value),
      wanted: 'an id that no other aim has',
    }));
  return [...same, ...aims.flatMap(pointFaults)];
}

function pointFaults(aim: Place): InputFault[] {
  const speeds = entries(child(aim, 'points')).map((point) => child(point, 'shaftSpeed_m_s'));
  return speeds.flatMap(({ value, path }, i) => {
    const before = i === 0 ? Number.NEGATIVE_INFINITY : speeds[i - 1].value;
    if (typeof value !== 'number' || typeof before !== 'number') return [];
    if (value !== 0 && value > before) return [];
    const wanted = 'speeds that rise from point to point, none of them 0';
    return [{ code: 'aim.speed', path, got: String(value), wanted, unit: 'm/s' }];
  });
}
