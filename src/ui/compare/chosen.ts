/** Whether the comparison is open, and of which builds. */
import { computed, signal } from '@preact/signals';
import type { Build } from '../../model/project.ts';
import { baseline, project, selectedBuild } from '../app/store.ts';

export type Side = 'from' | 'to';

const wanted = signal<Readonly<Record<Side, string>> | undefined>(undefined);

const buildNamed = (id: string, otherwise: Build): Build =>
  project.value.builds.find((build) => build.id === id) ?? otherwise;

/** The builds beside one another; one that was deleted meanwhile gives way to the baseline. */
export const compared = computed<Readonly<Record<Side, Build>> | undefined>(
  () =>
    wanted.value && {
      from: buildNamed(wanted.value.from, baseline.value),
      to: buildNamed(wanted.value.to, baseline.value),
    },
);

/** Opens on the baseline and the build on show, or the next one. */
export function openComparison(): void {
  const from = baseline.peek().id;
  const shown = selectedBuild.peek().id;
  const other = project.peek().builds.find(({ id }) => id !== from);
  wanted.value = { from, to: shown === from ? (other?.id ?? from) : shown };
}

export const closeComparison = (): void => {
  wanted.value = undefined;
};

export const chooseSide = (side: Side, id: string): void => {
  if (wanted.value) wanted.value = { ...wanted.value, [side]: id };
};

export const swapSides = (): void => {
  if (wanted.value) wanted.value = { from: wanted.value.to, to: wanted.value.from };
};
