/** Which tolerance the scatter comes from, at the speed cursor and for the build and direction on show. */
import { computed, signal } from '@preact/signals';
import { cursorSpeed, direction } from '../app/store.ts';
import { rowsOf, type Sort, scatterOf } from './scatter-rows.ts';
import { shownStudy } from './tolerance-solve.ts';

export const sortedBy = signal<Sort>('cursor');

export const toleranceRows = computed(() => {
  const { study } = shownStudy.value;
  return study ? rowsOf(study, direction.value, cursorSpeed.value, sortedBy.value) : [];
});

export const scatterAtCursor = computed(() => {
  const { study } = shownStudy.value;
  return study && scatterOf(study, direction.value, cursorSpeed.value);
});
