import { describe, expect, it } from 'vitest';
import { damperFromProject, forceCurve } from '../../../../src/solver/index.ts';
import type { ForcePoint } from '../../../../src/ui/app/solved.ts';
import { curveRows } from '../../../../src/ui/export/curve-table.ts';
import { csvOf } from '../../../../src/ui/export/table-text.ts';
import { RESERVOIR, readDemo } from '../helpers/demos.ts';
import { columns, curve, failed, point } from './points.ts';

/** Exact by definition of the inch and the pound (BIPM SI brochure, NIST SP 811). */
const N_PER_LBF = 4.4482216152605;
const PA_PER_PSI = 6894.757293168;

const some = curve(
  point(-0.5, { airRelease: true }),
  point(0.5, { band: { status: 'converged', low_N: 400, high_N: 600 } }),
  failed(1),
);

describe('the whole curve of a build, metric', () => {
  const table = columns(curveRows(some, { family: 'metric' }));

  it('has a row for each solved speed, rebound below 0', () => {
    expect(table['Shaft speed, m/s']).toEqual([-0.5, 0.5, 1]);
    expect(table['Force, N']).toEqual([-500, 500, undefined]);
  });

  it('tells chamber pressures above atmosphere and drops as they are', () => {
    expect(table['Pressure in compression chamber, bar above atmosphere'][0]).toBeCloseTo(30, 9);
    expect(table['Gas pressure, bar above atmosphere'][1]).toBeCloseTo(10, 9);
    expect(table['Piston: pressure drop, bar'][0]).toBeCloseTo(20, 9);
  });

  it('tells openings, flows and where air comes out', () => {
    expect(table['Piston: opening at the seat, mm'][0]).toBeCloseTo(0.1, 9);
    expect(table['Piston: flow shims, L/min'][0]).toBeCloseTo(18, 9);
    expect(table['Held at air release']).toEqual(['yes', 'no', undefined]);
  });

  it('has the band where there is one, and says why a speed has no numbers', () => {
    expect(table['Force, band from, N']).toEqual([undefined, 400, undefined]);
    expect(table['Force, band to, N']).toEqual([undefined, 600, undefined]);
    expect(table.Note).toEqual([undefined, undefined, 'residual 1, wanted 1e-9']);
  });

  it('names the paths in which oil cavitates', () => {
    const cavitating = (['ports', 'bleed'] as const).map((path) => ({ path, flow_m3_s: 2e-4, chokedFlow_m3_s: 1e-4 }));
    const told = columns(curveRows(curve(point(1), point(2, { cavitating })), { family: 'metric' }));
    expect(told['Piston: oil cavitates in']).toEqual([undefined, 'ports; bleed']);
    expect(Object.keys(told)).not.toContain('Base valve: oil cavitates in');
  });

  it('leaves out bands and base valves that no point has', () => {
    const heads = Object.keys(columns(curveRows(curve(point(1)), { family: 'metric' })));
    expect(heads.filter((head) => /band from|Base valve/.test(head))).toEqual([]);
  });
});

it('imperial: the same points in inches, pounds and psi', () => {
  const table = columns(curveRows(some, { family: 'imperial' }));
  expect(table['Shaft speed, in/s'][1]).toBeCloseTo(0.5 / 0.0254, 9);
  expect(table['Force, lbf'][0]).toBeCloseTo(-500 / N_PER_LBF, 9);
  expect(table['Pressure in rebound chamber, psi above atmosphere'][0]).toBeCloseTo(1e6 / PA_PER_PSI, 6);
  expect(table['Piston: opening at the seat, in'][0]).toBeCloseTo(0.1 / 25.4, 9);
});

it('of a damper with a base valve, as solved: read back, every number is that of the point', () => {
  const project = readDemo(RESERVOIR);
  const solved = forceCurve(damperFromProject(project, project.baselineBuild), [-1, -0.2, 0.2, 1], {
    theory: 'large-deflection',
  });
  const lines = csvOf(curveRows(solved, { family: 'metric' }))
    .trim()
    .split('\r\n');
  const cells = lines.map((line) =>
    [...line.matchAll(/("([^"]*)"|[^,]*)(,|$)/g)].map(([, whole, inner]) => inner ?? whole),
  );
  const table = columns(cells);
  const points = solved.points as ForcePoint[];
  points.forEach((each, i) => {
    expect(Number(table['Force, N'][i]) / each.force_N).toBeCloseTo(1, 6);
    expect(Number(table['Piston: pressure drop, bar'][i])).toBeCloseTo(each.pistonDrop_Pa / 1e5, 4);
    expect(Number(table['Base valve: pressure drop, bar'][i])).toBeCloseTo((each.base?.drop_Pa ?? Number.NaN) / 1e5, 4);
    expect(Number(table['Base valve: opening, mm'][i])).toBeCloseTo((each.base?.seatOpening_m ?? Number.NaN) * 1e3, 5);
  });
  expect(points).toHaveLength(4);
});
