/** Two builds of a project beside one another: each place shim by shim, its totals, and all else that differs. */

import { alignRows, type RowPair } from '../../model/align-rows.ts';
import { countOf } from '../../model/expand-shims.ts';
import { stackHeight } from '../../model/lay-shims.ts';
import type { Build, ShimRow, ValvePlace, Valving } from '../../model/project.ts';
import { differingSettings, type SettingDifference, type Writer } from '../../sheet/settings.ts';
import { placesOf } from '../app/places.ts';
import { compare as words } from '../text/compare.ts';

export interface StackTotal {
  readonly shims: number;
  readonly height_mm: number;
}

export interface PlaceComparison {
  readonly place: ValvePlace;
  readonly pairs: readonly RowPair[];
  /** Undefined where a build has no stack. */
  readonly before?: StackTotal;
  readonly after?: StackTotal;
  readonly settings: readonly SettingDifference[];
}

export interface GroupDifference {
  readonly name: string;
  readonly settings: readonly SettingDifference[];
}

export interface Comparison {
  readonly places: readonly PlaceComparison[];
  readonly besides: readonly GroupDifference[];
}

function totalOf(valving: Valving | undefined): StackTotal | undefined {
  if (!valving) return undefined;
  return { shims: valving.shims.reduce((sum, row) => sum + countOf(row), 0), height_mm: stackHeight(valving) };
}

function beside(valving: Valving | undefined): object | undefined {
  if (!valving) return undefined;
  const { shims: _, ...rest } = valving;
  return rest;
}

const shimsOf = (valving: Valving | undefined): readonly ShimRow[] => valving?.shims ?? [];

function comparePlace(place: ValvePlace, from: Build, to: Build, write: Writer): PlaceComparison {
  const [before, after] = [from.valves[place], to.valves[place]];
  return {
    place,
    pairs: alignRows(shimsOf(before), shimsOf(after)),
    before: totalOf(before),
    after: totalOf(after),
    settings: differingSettings(beside(before), beside(after), write),
  };
}

const GROUPS = ['bleed', 'baseBleed', 'basePoppet'] as const;

/** Every place that either build has, in the order of the bench. */
export function compareBuilds(from: Build, to: Build, write: Writer): Comparison {
  const places = placesOf('cartridge').filter((place) => from.valves[place] ?? to.valves[place]);
  return {
    places: places.map((place) => comparePlace(place, from, to, write)),
    besides: GROUPS.map((group) => ({
      name: words.groups[group],
      settings: differingSettings(from[group], to[group], write),
    })).filter(({ settings }) => settings.length > 0),
  };
}

/** Whether anything at all differs. */
export const isEqual = ({ places, besides }: Comparison): boolean =>
  besides.length === 0 &&
  places.every(({ pairs, settings }) => settings.length === 0 && pairs.every(({ mark }) => mark === 'kept'));
