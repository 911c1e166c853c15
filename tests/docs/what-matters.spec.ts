/** Some cells of the page, each computed again from a document that is changed here by hand. */
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { DEMOS } from '../../src/demo/index.ts';
import { adjustersOf } from '../../src/model/adjusters.ts';
import type { Project } from '../../src/model/project.ts';
import { COEFFICIENT_TABLE, forceCurveForBuild } from '../../src/solver/index.ts';
import { ROOT } from '../architecture/import-graph.ts';
import { loadDemo } from '../helpers/demo-curves.ts';
import { withValue } from '../helpers/documents.ts';
import { tableUnder } from './markdown.ts';

const page = readFileSync(join(ROOT, 'docs/what-matters.md'), 'utf8');
const titled = (id: string) => DEMOS.find((demo) => demo.id === id) as (typeof DEMOS)[number];

/** Numbers are printed with three digits, and with one behind the point. */
const RELATIVE = 0.02;
const PRINTED = 0.1;

const fromPrinted = (text: string): number => Number(text.replace('−', '-').replace('+', ''));

function cellOf(id: string, row: string, heading: string): string {
  const { title } = titled(id);
  const section = page.slice(page.indexOf(`\n## ${title}\n`));
  const headings = section.slice(section.indexOf('| change')).split('\n', 1)[0].split('|').slice(1, -1);
  const column = headings.findIndex((text) => text.trim() === heading);
  const cells = tableUnder(title, page).find(([label]) => label === row);
  return (cells ?? [])[column]?.replaceAll('*', '') ?? 'no such cell';
}

const sidesOf = (cell: string): number[] =>
  cell
    .replace(/ \(.*$/, '')
    .split(' / ')
    .map(fromPrinted);

interface Cell {
  readonly demo: string;
  readonly row: string;
  readonly heading: string;
  readonly speed: number;
  /** What is changed in the stock build, by the value of its lower and its upper side. */
  readonly path: string;
  readonly values: (drawn: number) => readonly [number, number];
}

const around = (step: number) => (drawn: number) => [drawn - step, drawn + step] as const;

/** The stock build is the first of each demo. */
const CELLS: readonly Cell[] = [
  {
    demo: 'larkspur-trail-rear',
    row: 'piston: seat ± 0.02 mm',
    heading: '0.3 m/s compression',
    speed: 0.3,
    path: 'builds[0].valves.pistonCompression.seatHeight_mm',
    values: around(0.02),
  },
  {
    demo: 'larkspur-trail-rear',
    row: 'gas ± 1 bar',
    heading: '1 m/s rebound',
    speed: -1,
    path: 'gas.gaugePressure_bar',
    values: around(1),
  },
  {
    demo: 'larkspur-trail-fork',
    row: 'base needle, one click',
    heading: '0.1 m/s compression',
    speed: 0.1,
    path: 'builds[0].baseBleed.needle.clicks',
    values: around(1),
  },
  {
    demo: 'wagtail-hill-climb-rear',
    row: 'base: one face shim less, more',
    heading: '1 m/s compression',
    speed: 1,
    path: 'builds[0].valves.baseCompression.shims[0].count',
    values: around(1),
  },
  {
    demo: 'dunnock-mountain-bike-rear',
    row: 'piston: clamp ± 0.5 mm',
    heading: '1.5 m/s rebound',
    speed: -1.5,
    path: 'builds[0].valves.pistonRebound.clampDiameter_mm',
    values: around(0.5),
  },
  {
    demo: 'dunnock-mountain-bike-rear',
    row: 'oil ± 15 °C',
    heading: '0.05 m/s rebound',
    speed: -0.05,
    path: 'fluid.temperature_degC',
    values: around(15),
  },
];

function pointAt(project: Project, speed: number, coefficients = {}) {
  const fastest = [0.3, 1, 1.5].filter((v) => v >= Math.abs(speed)).map((v) => Math.sign(speed) * v);
  const speeds_m_s = [...new Set([speed, ...fastest])];
  const options = { speeds_m_s, theory: 'large-deflection', coefficients } as const;
  const [point] = forceCurveForBuild(project, project.baselineBuild, options).points;
  if (point.status !== 'converged') throw new Error(point.reason);
  return point;
}

const near = (got: number, wanted: number, damping_N: number): boolean =>
  Math.abs(got - wanted) <= Math.max(RELATIVE * Math.abs(wanted), PRINTED, TABLE_SHARE * damping_N);

/** Two tables of one stack that reach to other speeds differ by so much of the force. */
const TABLE_SHARE = 0.002;

describe('the tables of what matters most', () => {
  it.each(DEMOS)('$title: every coefficient and adjuster is told', ({ title, file }) => {
    const section = page.slice(page.indexOf(`\n## ${title}\n`)).split('\n## ')[1];
    const project = loadDemo(file);
    const build = project.builds.find(({ id }) => id === project.baselineBuild);
    const adjusters = build ? adjustersOf(build).map(({ id }) => `${id.replace('-', ' ')}, one click`) : [];
    const coefficients = Object.keys(COEFFICIENT_TABLE).map((name) => name.replace(/_.*$/, ''));
    const words = coefficients.map((name) => name.replace(/[A-Z]/g, (letter) => ` ${letter.toLowerCase()}`));
    expect([...adjusters, ...words].filter((label) => !section.includes(label))).toEqual([]);
  });

  it.each(CELLS)('$demo, $row, $heading', ({ demo, row, heading, speed, path, values }) => {
    const drawn = loadDemo(titled(demo).file);
    const value = path.split(/[.[\]]+/).reduce((at: unknown, key) => (at as Record<string, unknown>)[key], drawn);
    const { force_N, dampingForce_N } = pointAt(drawn, speed);
    const wanted = values(value as number).map((to) => {
      const changed = pointAt(withValue(structuredClone(drawn), path, to), speed);
      return Math.sign(speed) * (changed.force_N - force_N);
    });
    const cell = cellOf(demo, row, heading);
    const damping = Math.abs(dampingForce_N);
    const told = sidesOf(cell);
    expect({ cell, ok: told.map((got, i) => near(got, wanted[i], damping)) }).toEqual({ cell, ok: [true, true] });
    const share = (100 * Math.max(...wanted.map(Math.abs))) / damping;
    expect(Number(/\(([\d.]+) %\)/.exec(cell)?.[1]) / share).toBeCloseTo(1, 1);
    expect(fromPrinted(cellOf(demo, 'damping force, N', heading)) / damping).toBeCloseTo(1, 2);
  });

  it('tell what the range of the jet does', () => {
    const drawn = loadDemo(titled('wagtail-hill-climb-rear').file);
    const { force_N, dampingForce_N } = pointAt(drawn, -1);
    const { low, high } = COEFFICIENT_TABLE.jetDischarge;
    const wanted = [low, high].map((jetDischarge) => force_N - pointAt(drawn, -1, { jetDischarge }).force_N);
    const cell = cellOf('wagtail-hill-climb-rear', `jet discharge ${low} – ${high}`, '1 m/s rebound');
    const ok = sidesOf(cell).map((got, i) => near(got, wanted[i], Math.abs(dampingForce_N)));
    expect({ cell, ok }).toEqual({ cell, ok: [true, true] });
  });

  it('notice a number that is off', () => {
    expect(near(100, 103, 100)).toBe(false);
    expect(near(100, 101, 100)).toBe(true);
    expect(sidesOf('+9.2 / −6.4 (6.3 %)')).toEqual([9.2, -6.4]);
  });
});
