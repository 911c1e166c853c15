/** What the page of the search is set to, by project; no part of the document. */
import { computed, signal } from '@preact/signals';
import type { Build, Project, ValvePlace, Valving } from '../../model/project.ts';
import type { SearchLimits } from '../../model/search-request.ts';
import { CORES } from '../app/pool.ts';
import { openId, places, project, selectedBuild } from '../app/store.ts';

export type AimChoice =
  | { readonly kind: 'aim'; readonly id: string }
  | { readonly kind: 'build'; readonly id: string }
  | { readonly kind: 'change'; readonly id: string };

export interface Change {
  readonly percent: number;
  readonly side: 'above' | 'below';
  readonly speed_m_s: number;
}

export interface SearchForm {
  readonly buildId: string;
  readonly places: readonly ValvePlace[];
  readonly aim: AimChoice;
  readonly change: Change;
  readonly source: 'drawer' | 'catalogue';
  readonly outerDiameters_mm: readonly number[];
  readonly thicknesses_mm: readonly number[];
  readonly limits: SearchLimits;
  /** The least reserves are those of the present stacks, 1 at most; absent in what was kept before there was the choice. */
  readonly reservesAsNow?: boolean;
  /** Rows that stay, by `rowKey`. */
  readonly keep: readonly string[];
  readonly keepFace: boolean;
  readonly starts: number;
  readonly steps: number;
  readonly seed: number;
}

const EFFORT = { starts: 16, steps: 300, seed: 1 } as const;

const valvingsOf = ({ valves }: Build): Valving[] => [
  valves.pistonCompression,
  valves.pistonRebound,
  ...(valves.baseCompression ? [valves.baseCompression] : []),
];

function sizesOf(builds: readonly Build[], read: 'outerDiameter_mm' | 'thickness_mm'): number[] {
  const rows = builds.flatMap(valvingsOf).flatMap(({ shims }) => shims);
  return [...new Set(rows.map((row) => row[read]))].sort((a, b) => b - a);
}

function firstAim({ aims = [], builds }: Project, buildId: string): AimChoice {
  if (aims.length > 0) return { kind: 'aim', id: aims[0].id };
  const other = builds.find(({ id }) => id !== buildId);
  return other ? { kind: 'build', id: other.id } : { kind: 'change', id: buildId };
}

function newForm(of: Project, buildId: string, all: readonly ValvePlace[]): SearchForm {
  return {
    buildId,
    places: [all[0]],
    aim: firstAim(of, buildId),
    change: { percent: 15, side: 'above', speed_m_s: 1 },
    source: of.drawer.length > 0 ? 'drawer' : 'catalogue',
    outerDiameters_mm: sizesOf(of.builds, 'outerDiameter_mm'),
    thicknesses_mm: sizesOf(of.builds, 'thickness_mm').reverse(),
    limits: { minFatigueReserve: 1, minYieldReserve: 1 },
    reservesAsNow: true,
    keep: [],
    keepFace: false,
    ...EFFORT,
  };
}

const forms = signal<Readonly<Record<string, SearchForm>>>({});

/** A row of a stack: a tick at it goes when the row is another. */
export const rowKey = (place: ValvePlace, index: number, { shims }: Valving): string =>
  JSON.stringify([place, index, shims[index]]);

/** Refers to nothing that the project no longer has. */
function mended(form: SearchForm, of: Project, all: readonly ValvePlace[], fallback: string): SearchForm {
  const has = (id: string): boolean => of.builds.some((build) => build.id === id);
  const buildId = has(form.buildId) ? form.buildId : fallback;
  const isThere = form.aim.kind === 'aim' ? (of.aims ?? []).some(({ id }) => id === form.aim.id) : has(form.aim.id);
  const aim = isThere ? form.aim : firstAim(of, buildId);
  return { ...form, buildId, aim, places: form.places.filter((place) => all.includes(place)) };
}

export const form = computed<SearchForm>(() => {
  const set = forms.value[openId.value] ?? newForm(project.value, selectedBuild.value.id, places.value);
  return mended(set, project.value, places.value, selectedBuild.value.id);
});

export function setForm(change: Partial<SearchForm>): void {
  forms.value = { ...forms.value, [openId.value]: { ...form.value, ...change } };
}

export const searchedBuild = computed(
  () => project.value.builds.find(({ id }) => id === form.value.buildId) ?? project.value.builds[0],
);

/** How many workers run; it changes nothing in what is found. */
export const workerCount = signal(CORES);
