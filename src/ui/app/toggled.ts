/** The list without an item that it has, or with one that it lacks. */
export const toggled = <T>(list: readonly T[], item: T): T[] =>
  list.includes(item) ? list.filter((each) => each !== item) : [...list, item];
