import { describe, expect, it } from 'vitest';
import type { Project } from '../../../../src/model/project.ts';
import { changedParts } from '../../../../src/ui/lessons/parts.ts';
import { REAR, readDemo } from '../helpers/demos.ts';

const start = readDemo(REAR);
const changed = (edit: (copy: Project) => void): string[] => {
  const copy = structuredClone(start);
  edit(copy);
  return changedParts(start, copy, 'square-edge', 'stock');
};

describe('changed parts', () => {
  it('are none in a copy, nor where only names, notes or a count of 1 differ', () => {
    expect(changed(() => {})).toEqual([]);
    expect(
      changed((copy) => {
        copy.name = 'x';
        copy.notes = 'x';
        copy.damper.name = 'x';
        copy.fluid.name = 'x';
        copy.builds[1].name = 'x';
        copy.builds[1].valves.pistonCompression.shims[0].count = 1;
      }),
    ).toEqual([]);
  });

  it.each<[string, (copy: Project) => void]>([
    [
      'compression-face-thickness',
      (p) => Object.assign(p.builds[1].valves.pistonCompression.shims[0], { thickness_mm: 0.2 }),
    ],
    ['rebound-face', (p) => Object.assign(p.builds[1].valves.pistonRebound.shims[0], { count: 3 })],
    [
      'compression-second-thickness',
      (p) => Object.assign(p.builds[1].valves.pistonCompression.shims[1], { thickness_mm: 1 }),
    ],
    ['compression-shims', (p) => p.builds[1].valves.pistonCompression.shims.pop()],
    ['rebound-clamp', (p) => Object.assign(p.builds[1].valves.pistonRebound, { clampDiameter_mm: 10 })],
    ['compression-seat', (p) => Object.assign(p.builds[1].valves.pistonCompression, { seatHeight_mm: 0 })],
    ['compression-stack', (p) => Object.assign(p.builds[1].valves.pistonCompression, { backingPlate: { gap_mm: 1 } })],
    ['bleed', (p) => Object.assign(p.builds[1].bleed, { diameter_mm: 2 })],
    ['other-build', (p) => Object.assign(p.builds[0].bleed, { diameter_mm: 2 })],
    ['other-build', (p) => p.builds.shift()],
    ['rebound-ports', (p) => Object.assign(p.damper.valves.pistonRebound.ports, { area_mm2: 20 })],
    ['damper', (p) => Object.assign(p.damper, { rodDiameter_mm: 14 })],
    ['temperature', (p) => Object.assign(p.fluid, { temperature_degC: 20 })],
    ['oil', (p) => Object.assign(p.fluid, { densityAt15_kg_m3: 800 })],
    ['gas-pressure', (p) => Object.assign(p.gas, { gaugePressure_bar: 3 })],
    ['gas', (p) => Object.assign(p.gas, { volume_mL: 50 })],
  ])('tell %s', (part, edit) => {
    expect(changed(edit)).toEqual([part]);
  });
});
