import { describe, expect, it } from 'vitest';
import { LAYOUTS, type Layout, type Project } from '../../../../src/model/project.ts';
import { validateProject } from '../../../../src/model/validate.ts';
import { damperFromProject, forceCurveForBuild } from '../../../../src/solver/index.ts';
import { withMeasured } from '../../../../src/ui/app/assumed-parts.ts';
import { gasBy } from '../../../../src/ui/app/gas-measures.ts';
import { changeLayout, NOTHING_ASIDE } from '../../../../src/ui/app/layout-change.ts';
import { demos, FORK, REAR, RESERVOIR, readDemo } from '../helpers/demos.ts';

const faultsOf = (project: Project): unknown => {
  const checked = validateProject(project);
  return checked.ok ? [] : checked.faults;
};
describe.each(demos())('another layout for %s', (_, project) => {
  it.each(LAYOUTS)('%s is whole: a document without a fault, which the solver takes', (layout) => {
    const changed = changeLayout(project, layout, NOTHING_ASIDE).project;
    expect(faultsOf(changed)).toEqual([]);
    expect(changed.damper.layout).toBe(layout);
    expect(damperFromProject(changed, changed.builds[0].id).base === undefined).toBe(layout === 'monotube');
  });

  it('comes back as it was, by way of any other', () => {
    for (const layout of LAYOUTS) {
      const there = changeLayout(project, layout, NOTHING_ASIDE);
      const back = changeLayout(there.project, project.damper.layout, there.aside).project;
      expect(back).toEqual(project);
    }
  });
});

describe('what a change of layout does', () => {
  it('leaves the document it came from untouched', () => {
    const fork = readDemo(FORK);
    const copy = structuredClone(fork);
    changeLayout(fork, 'monotube', NOTHING_ASIDE);
    expect(fork).toEqual(copy);
  });

  it('keeps what else is laid aside over several changes', () => {
    const fork = readDemo(FORK);
    const first = changeLayout(fork, 'monotube', NOTHING_ASIDE);
    const second = changeLayout(first.project, 'twin-tube', first.aside);
    expect(second.project.damper.legDiameter_mm).toBeUndefined();
    expect(second.project.builds[1].baseBleed).toEqual(fork.builds[1].baseBleed);
    const third = changeLayout(second.project, 'cartridge', second.aside);
    expect(third.project.damper).toEqual(fork.damper);
    expect(third.project.gas).toEqual(fork.gas);
    expect(third.project.builds).toEqual(fork.builds);
  });

  it('starts a base valve that opens easily, and marks it as an assumption that stays one until it is measured', () => {
    const rear = readDemo(REAR);
    const changed = changeLayout(rear, 'monotube-reservoir', NOTHING_ASIDE);
    const { damper, builds } = changed.project;
    const [face] = rear.builds[0].valves.pistonCompression.shims;
    expect(damper.valves.baseCompression).toEqual(rear.damper.valves.pistonCompression);
    expect(builds[0].valves.baseCompression).toMatchObject({ seatHeight_mm: 0, shims: [{ ...face, count: 1 }] });
    expect(damper.refillCheck?.ports.count).toBe(rear.damper.valves.pistonCompression.ports.count);
    expect(damper.assumedParts).toEqual(['baseCompression', 'refillCheck']);
    const measured = withMeasured(changed.project, 'baseCompression');
    expect(measured.damper.assumedParts).toEqual(['refillCheck']);
    const aside = changeLayout(measured, 'monotube', changed.aside);
    expect(aside.project).toEqual(rear);
    const back = changeLayout(aside.project, 'twin-tube', aside.aside).project;
    expect(back.damper.assumedParts).toEqual(['refillCheck']);
    expect(withMeasured(back, 'refillCheck').damper).not.toHaveProperty('assumedParts');
  });

  it('leaves the curve to the piston until the base valve is measured', () => {
    const rear = readDemo(REAR);
    const withBase = changeLayout(rear, 'monotube-reservoir', NOTHING_ASIDE).project;
    const forces = (project: typeof rear): number[] =>
      forceCurveForBuild(project, rear.builds[0].id, {
        speeds_m_s: [0.3, 1],
        theory: 'small-deflection',
      }).points.map((point) => ('force_N' in point ? point.force_N : Number.NaN));
    const before = forces(rear);
    for (const [i, force_N] of forces(withBase).entries()) expect(force_N / before[i]).toBeCloseTo(1, 1);
  });

  it('brings back the oil poured in, too', () => {
    const fork = readDemo(FORK);
    const filled = { ...fork, gas: gasBy('oilFill', fork.gas, fork.damper) };
    const there = changeLayout(filled, 'twin-tube', NOTHING_ASIDE);
    expect(there.project.gas.volume_mL).toBeCloseTo(466, 0);
    expect(changeLayout(there.project, 'cartridge', there.aside).project).toEqual(filled);
  });

  it('fits a floating piston that is wider than the tube of a monotube', () => {
    const wide = readDemo(RESERVOIR);
    const bore = wide.damper.boreDiameter_mm;
    wide.gas.separator = { kind: 'floating-piston', diameter_mm: bore + 5, friction_N: 10 };
    const next = changeLayout(wide, 'monotube' satisfies Layout, NOTHING_ASIDE).project;
    expect(next.gas.separator).toEqual({ kind: 'floating-piston', diameter_mm: bore, friction_N: 10 });
    expect(faultsOf(next)).toEqual([]);
  });
});
