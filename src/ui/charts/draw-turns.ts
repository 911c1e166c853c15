/** Charts that change at once are drawn in a task each: drawn in one, they would hold up what a person types. */

export interface Turns {
  /** Draws now where nothing was drawn in this task, and in a task of its own where something was. @returns takes it back */
  readonly take: (draw: () => void) => () => void;
}

/** @param soon runs what it is given in a later task */
export function drawTurns(soon: (run: () => void) => void): Turns {
  const waiting = new Set<() => void>();
  let taken = false;
  const next = (): void => {
    const [first] = waiting;
    taken = first !== undefined;
    if (!first) return;
    waiting.delete(first);
    soon(next);
    first();
  };
  return {
    take: (draw) => {
      const turn = (): void => draw();
      waiting.add(turn);
      if (!taken) next();
      return () => {
        waiting.delete(turn);
      };
    },
  };
}

export const turns = drawTurns((run) => void setTimeout(run));
