/** Short messages to the person, newest first, each with at most one thing to do about it. */
import { signal } from '@preact/signals';

export interface Notice {
  readonly id: number;
  readonly tone: 'info' | 'problem';
  readonly message: string;
  readonly details: readonly string[];
  readonly action?: { readonly label: string; readonly run: () => void };
}

export const notices = signal<readonly Notice[]>([]);

const SHOWN_AT_ONCE = 4;
let lastId = 0;

export function tell(message: string, more: Partial<Pick<Notice, 'tone' | 'details' | 'action'>> = {}): void {
  lastId++;
  const notice: Notice = { id: lastId, tone: 'info', details: [], message, ...more };
  notices.value = [notice, ...notices.value.filter((n) => n.message !== message)].slice(0, SHOWN_AT_ONCE);
}

export function dismiss(id: number): void {
  notices.value = notices.value.filter((notice) => notice.id !== id);
}
