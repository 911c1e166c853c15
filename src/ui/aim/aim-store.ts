/** The aims of the project, and the one that is looked at. */
import { computed, signal } from '@preact/signals';
import type { Aim, AimOrigin, AimPoint, Project } from '../../model/project.ts';
import { editOrTell } from '../app/edit-or-tell.ts';
import { keyPut } from '../app/optional-parts.ts';
import { project } from '../app/store.ts';
import { aimWords } from '../text/aim.ts';

const wantedAim = signal('');

export const aims = computed<readonly Aim[]>(() => project.value.aims ?? []);
export const chosenAim = computed<Aim | undefined>(
  () => aims.value.find(({ id }) => id === wantedAim.value) ?? aims.value[aims.value.length - 1],
);
export const chooseAim = (id: string): void => {
  wantedAim.value = id;
};

/** Whether the force chart of the bench shows it. */
export const aimOnBench = signal(true);

const withAims = (next: readonly Aim[]): Project =>
  keyPut(project.value, 'aims', next.length > 0 ? [...next] : undefined);

export const withAim = (id: string, change: Partial<Aim>): Project =>
  withAims(aims.value.map((aim) => (aim.id === id ? { ...aim, ...change } : aim)));

/** Points moved or typed by hand make the aim a drawn one; they stand in the order of their speeds. */
export const withPoints = (id: string, points: readonly AimPoint[]): Project =>
  withAim(id, {
    points: [...points].sort((a, b) => a.shaftSpeed_m_s - b.shaftSpeed_m_s),
    origin: { kind: 'drawn' },
  });

function freeId(): string {
  const taken = new Set(aims.value.map(({ id }) => id));
  let number = aims.value.length + 1;
  while (taken.has(`aim-${number}`)) number++;
  return `aim-${number}`;
}

function freeName(name: string): string {
  const taken = new Set(aims.value.map((aim) => aim.name));
  if (!taken.has(name)) return name;
  let number = 2;
  while (taken.has(`${name} ${number}`)) number++;
  return `${name} ${number}`;
}

/** A new aim, which is then the one looked at. @returns whether the document took it */
export function addAim(wantedName: string, points: AimPoint[], origin: AimOrigin): boolean {
  const id = freeId();
  const name = freeName(wantedName);
  const isMade = editOrTell(() => withAims([...aims.value, { id, name, points, origin }]), aimWords.make.made(name));
  if (isMade) chooseAim(id);
  return isMade;
}

export const removeAim = ({ id, name }: Aim): void => {
  editOrTell(() => withAims(aims.value.filter((aim) => aim.id !== id)), aimWords.aims.removed(name));
};
