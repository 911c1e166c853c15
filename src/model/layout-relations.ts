/** Which parts a layout has: the gas of a monotube is in its tube, every other layout leads to it through a base valve. */
import type { InputFault } from '../units/fault.ts';
import { child, describe, entries, type Place } from './place.ts';
import { LAYOUTS, type Layout } from './project.ts';

const isLayout = (value: unknown): value is Layout => LAYOUTS.some((layout) => layout === value);

export function layoutFaults(project: Place): InputFault[] {
  const damper = child(project, 'damper');
  const layout = child(damper, 'layout').value;
  if (!isLayout(layout)) return [];
  const builds = entries(child(project, 'builds'));
  const needed = [
    child(damper, 'valves', 'baseCompression'),
    child(damper, 'refillCheck'),
    ...builds.map((build) => child(build, 'valves', 'baseCompression')),
  ];
  if (layout !== 'monotube') return needed.flatMap((part) => missingFault(part, layout));
  const beside = builds.flatMap((build) => [child(build, 'baseBleed'), child(build, 'basePoppet')]);
  return [...needed, ...beside].flatMap(monotubeFault);
}

function missingFault({ value, path }: Place, layout: Layout): InputFault[] {
  if (value !== undefined) return [];
  return [{ code: 'damper.base.none', path, got: 'nothing', wanted: `this part of the base valve of a ${layout}` }];
}

function monotubeFault({ value, path }: Place): InputFault[] {
  if (value === undefined) return [];
  const wanted = 'nothing: a monotube has no base valve';
  return [{ code: 'damper.base.of-monotube', path, got: describe(value), wanted }];
}
