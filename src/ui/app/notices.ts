/**
 * Short messages to the person, newest first, each with at most one thing to do about it. A problem stands until it is dismissed; what went
 * well is put away after a while, and can be called back for as long as the page is open.
 */
import { computed, signal } from '@preact/signals';

export interface NoticeAct {
  readonly label: string;
  readonly run: () => void;
  /** Whether it would still do what it says; always where this is absent. Read as a message is drawn. */
  readonly isOffered?: () => boolean;
}

export interface Notice {
  readonly id: number;
  readonly tone: 'info' | 'problem';
  readonly message: string;
  readonly details: readonly string[];
  readonly action?: NoticeAct;
  /** Out of sight, and not read yet for all we know. */
  readonly isAway: boolean;
  /** Until it is dismissed. */
  readonly stays: boolean;
}

/** What went well, in sight at once. */
const INFOS_AT_ONCE = 2;
/** What went well, kept in all. */
const INFOS_KEPT = 20;
let lastId = 0;

const all = signal<readonly Notice[]>([]);
export const notices = computed(() => all.value.filter(({ isAway }) => !isAway));
export const awayCount = computed(() => all.value.length - notices.value.length);

const isInfo = ({ tone }: Notice): boolean => tone === 'info';
const change = (next: (notice: Notice) => Notice): void => {
  all.value = all.value.map(next);
};

export function tell(message: string, more: Partial<Pick<Notice, 'tone' | 'details' | 'action'>> = {}): void {
  lastId++;
  const stays = more.tone === 'problem';
  const notice: Notice = { id: lastId, tone: 'info', details: [], message, isAway: false, stays, ...more };
  const told = [notice, ...all.value.filter((n) => n.message !== message)];
  const infos = told.filter(isInfo);
  const inSight = infos.filter(({ isAway }) => !isAway).slice(0, INFOS_AT_ONCE);
  all.value = told
    .filter((n) => !isInfo(n) || infos.indexOf(n) < INFOS_KEPT)
    .map((n) => (isInfo(n) && !inSight.includes(n) ? { ...n, isAway: true } : n));
}

export function dismiss(id: number): void {
  all.value = all.value.filter((notice) => notice.id !== id);
}

export const putAway = (id: number): void => change((n) => (n.id === id ? { ...n, isAway: true } : n));

/** Whoever asks for them has time. */
export const callBack = (): void => change((n) => (n.isAway ? { ...n, isAway: false, stays: true } : n));
