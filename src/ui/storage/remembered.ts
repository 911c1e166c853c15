/** Which project this tab shows, so that a reload shows it again, and which was open last, for a new tab. */
const HERE = 'shimwright.here';
const LAST = 'shimwright.last';

/** A comfort: without it the project changed last is opened. */
function attempt<T>(use: () => T): T | undefined {
  try {
    return use();
  } catch {
    return undefined;
  }
}

export function remember(id: string): void {
  attempt(() => sessionStorage.setItem(HERE, id));
  attempt(() => localStorage.setItem(LAST, id));
}

/** Best first. */
export const remembered = (): string[] =>
  [attempt(() => sessionStorage.getItem(HERE)), attempt(() => localStorage.getItem(LAST))].filter(
    (id) => typeof id === 'string',
  );
