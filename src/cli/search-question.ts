/** What a search is asked, read off the command line. */

import type { Project, ValvePlace } from '../model/project.ts';
import type { SearchLimits, SearchRequest } from '../model/search-request.ts';
import { presentStacks } from '../solver/index.ts';
import { parseForceSpeed } from './aim-file.ts';
import { UsageError, type Values } from './command.ts';
import { readInput } from './input.ts';
import { numberList } from './number-list.ts';
import { findBuild } from './occasions.ts';
import { theoryOf } from './theories.ts';

export const AIM = 'aim';
export const STACKS = 'stacks';
export const DIAMETERS = 'diameters-mm';
export const THICKNESSES = 'thicknesses-mm';
export const KEEP_FACE = 'keep-face';
/** Options that bound an answer, and the limit that each sets. */
export const LIMITS: readonly (readonly [option: string, limit: keyof SearchLimits, help: string])[] = [
  ['max-shims', 'maxShims', 'single shims of one stack at most'],
  ['max-changes', 'maxChanges', 'single shims added or taken out at most, all stacks together'],
  ['min-height-mm', 'minHeight_mm', 'height of one stack at least'],
  ['max-height-mm', 'maxHeight_mm', 'height of one stack at most'],
  [
    'min-life-reserve',
    'minFatigueReserve',
    'reserve of endless life that every shim keeps; unless said otherwise 1, or that of the present stacks if it is less',
  ],
  [
    'min-yield-reserve',
    'minYieldReserve',
    'reserve of yield that every shim keeps; unless said otherwise as that of life',
  ],
  [
    'min-gas-margin-bar',
    'minGasMargin_bar',
    'gas pressure that is left above the one that keeps oil from pulling apart',
  ],
];

const PLACES: Readonly<Record<string, ValvePlace>> = {
  compression: 'pistonCompression',
  rebound: 'pistonRebound',
  base: 'baseCompression',
};

/** @throws UsageError naming the option that is wrong */
export async function questionOf(project: Project, values: Values): Promise<SearchRequest> {
  const build = findBuild(project, values);
  const aim = await aimOf(project, values.get(AIM) ?? '');
  const request: SearchRequest = {
    buildId: build.id,
    places: placesOf(project, values.get(STACKS), aim),
    aim,
    source: sourceOf(project, values),
    keepFace: values.has(KEEP_FACE),
  };
  const { usualReserves } = presentStacks(project, request, theoryOf(values));
  return { ...request, limits: { ...usualReserves, ...limitsOf(values) } };
}

/** An aim of the project by id, else by name, else a file of speeds and forces. */
async function aimOf({ aims = [] }: Project, wanted: string): Promise<SearchRequest['aim']> {
  const byId = aims.filter(({ id }) => id === wanted);
  const found = byId.length > 0 ? byId : aims.filter(({ name }) => name === wanted);
  if (found.length > 1)
    throw new UsageError(`--${AIM}: several aims are named ${JSON.stringify(wanted)}, choose by id`);
  if (found.length === 1) return found[0].points;
  const text = await readInput(wanted).catch((error) => {
    if (!(error instanceof UsageError)) throw error;
    const known = aims.map(({ id, name }) => `${id} (${name})`).join(', ');
    const none = known === '' ? 'the project has no aims' : `the aims of the project are ${known}`;
    throw new UsageError(`--${AIM}: no aim of that id or name, and as a file: ${error.message}; ${none}`);
  });
  return parseForceSpeed(text, wanted);
}

function placesOf({ damper }: Project, text: string | undefined, aim: SearchRequest['aim']): ValvePlace[] {
  const has = (place: ValvePlace) => damper.valves[place] !== undefined;
  if (text === undefined) {
    const way = (place: ValvePlace) => (place === 'pistonRebound' ? -1 : 1);
    const asked = (place: ValvePlace) => aim.some(({ shaftSpeed_m_s }) => shaftSpeed_m_s * way(place) > 0);
    return Object.values(PLACES).filter((place) => has(place) && asked(place));
  }
  return text.split(',').map((word) => {
    const place = PLACES[word.trim()];
    if (place && has(place)) return place;
    const known = Object.keys(PLACES).filter((name) => has(PLACES[name]));
    throw new UsageError(`--${STACKS}: got ${JSON.stringify(word)}, wanted ${known.join(', ')}, with a comma between`);
  });
}

function sourceOf({ drawer }: Project, values: Values): SearchRequest['source'] {
  const [diameters, thicknesses] = [values.get(DIAMETERS), values.get(THICKNESSES)];
  if (diameters === undefined && thicknesses === undefined) {
    if (drawer.length > 0) return { kind: 'drawer' };
    throw new UsageError(`the drawer of the project is empty: give the sizes with --${DIAMETERS} and --${THICKNESSES}`);
  }
  if (diameters === undefined || thicknesses === undefined)
    throw new UsageError(`a catalogue of sizes needs both --${DIAMETERS} and --${THICKNESSES}`);
  return {
    kind: 'catalogue',
    outerDiameters_mm: numberList(diameters, DIAMETERS, { from: 0.001, upTo: 500, unit: 'mm' }),
    thicknesses_mm: numberList(thicknesses, THICKNESSES, { from: 0.001, upTo: 20, unit: 'mm' }),
  };
}

function limitsOf(values: Values): SearchLimits {
  const given = LIMITS.flatMap(([option, limit]) => {
    const text = values.get(option);
    return text === undefined ? [] : [[limit, numberList(text, option, { from: 0, single: true })[0]]];
  });
  return Object.fromEntries(given);
}
