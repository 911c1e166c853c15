/** The fragment of the address, which tells the open page; a fragment that names no page is a place on the bench. */
import { signal } from '@preact/signals';

const read = (): string => location.hash.slice(1);

export const fragment = signal(read());
/** The person has gone on from the page that was opened first: a page that opens now takes the keyboard along. */
export const hasMoved = signal(false);

window.addEventListener('hashchange', () => {
  hasMoved.value = true;
  fragment.value = read();
});
