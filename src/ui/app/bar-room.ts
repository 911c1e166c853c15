/** How much the top bar can hold in one row; what it cannot hold stands in its menu. */
import { signal } from '@preact/signals';

export type BarRoom = 'wide' | 'middle' | 'narrow';

/** CSS pixels: all pages, name, state and buttons; the same with one menu; name, state, undo and menu. */
const wide = window.matchMedia('(min-width: 1281px)');
const middle = window.matchMedia('(min-width: 901px)');

const read = (): BarRoom => (wide.matches ? 'wide' : middle.matches ? 'middle' : 'narrow');

export const barRoom = signal<BarRoom>(read());

for (const query of [wide, middle])
  query.addEventListener('change', () => {
    barRoom.value = read();
  });
