import { describe, expect, it } from 'vitest';
import { drawTurns } from '../../../../src/ui/charts/draw-turns.ts';

/** Tasks that wait, run one by one by hand. */
function byHand() {
  const tasks: (() => void)[] = [];
  const drawn: string[] = [];
  const turns = drawTurns((run) => tasks.push(run));
  return {
    drawn,
    take: (name: string) => turns.take(() => drawn.push(name)),
    task: () => tasks.shift()?.(),
  };
}

describe('the turns of the charts', () => {
  it('give the first its drawing at once and every other a task of its own, in order', () => {
    const { drawn, take, task } = byHand();
    for (const name of ['a', 'b', 'c']) take(name);
    expect(drawn).toEqual(['a']);
    task();
    expect(drawn).toEqual(['a', 'b']);
    task();
    expect(drawn).toEqual(['a', 'b', 'c']);
  });

  it('draw at once again when nothing waits, and not before', () => {
    const { drawn, take, task } = byHand();
    take('a');
    task();
    take('b');
    take('c');
    expect(drawn).toEqual(['a', 'b']);
    task();
    take('d');
    expect(drawn).toEqual(['a', 'b', 'c']);
    task();
    expect(drawn).toEqual(['a', 'b', 'c', 'd']);
  });

  it('leave out what was taken back, and give its turn to the next', () => {
    const { drawn, take, task } = byHand();
    take('a');
    const takeBack = take('b');
    take('c');
    takeBack();
    task();
    expect(drawn).toEqual(['a', 'c']);
  });

  it('go on after a drawing that failed', () => {
    const tasks: (() => void)[] = [];
    const turns = drawTurns((run) => tasks.push(run));
    const drawn: string[] = [];
    expect(() =>
      turns.take(() => {
        throw new Error('no canvas');
      }),
    ).toThrow('no canvas');
    turns.take(() => drawn.push('b'));
    tasks.shift()?.();
    expect(drawn).toEqual(['b']);
  });
});
