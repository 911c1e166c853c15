/** Which page is open, told by the fragment of the address; any other fragment is a place on the bench. */
import { signal } from '@preact/signals';

export type Route = 'bench' | 'proof';

const read = (): Route => (location.hash === '#proof' ? 'proof' : 'bench');

export const route = signal<Route>(read());
/** The page before this one, if the person came by a link; tells where the keyboard should go on. */
export const cameFrom = signal<Route | undefined>(undefined);

window.addEventListener('hashchange', () => {
  if (read() === route.value) return;
  cameFrom.value = route.value;
  route.value = read();
});
