/** Where in its stroke the damper is looked at: a setting of the bench, no part of the document. */
import { computed, signal } from '@preact/signals';
import { metresFromMillimetres } from '../../units/si.ts';
import { openId, project } from './store.ts';

/** As typed, for the project it was typed in. */
const wanted = signal<{ readonly id: string; readonly position_mm: number } | undefined>(undefined);

/** From full extension; undefined is mid-stroke, as is a position that the travel no longer has. */
export const position_mm = computed<number | undefined>(() => {
  const set = wanted.value;
  if (set === undefined || set.id !== openId.value) return undefined;
  return set.position_mm <= project.value.damper.travel_mm ? set.position_mm : undefined;
});

export const position_m = computed(() =>
  position_mm.value === undefined ? undefined : metresFromMillimetres(position_mm.value),
);

export const setPosition = (next_mm: number | undefined): void => {
  wanted.value = next_mm === undefined ? undefined : { id: openId.value, position_mm: next_mm };
};
