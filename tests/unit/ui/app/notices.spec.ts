import { beforeEach, describe, expect, it } from 'vitest';
import { awayCount, callBack, dismiss, notices, putAway, tell } from '../../../../src/ui/app/notices.ts';

const told = (): string[] => notices.value.map(({ message }) => message);
const idOf = (message: string): number => notices.value.find((notice) => notice.message === message)?.id ?? -1;

beforeEach(() => {
  callBack();
  for (const { id } of notices.value) dismiss(id);
});

describe('the messages', () => {
  it('keep every problem in sight until it is dismissed, however many there are', () => {
    const problems = ['a', 'b', 'c', 'd', 'e', 'f'];
    for (const problem of problems) tell(problem, { tone: 'problem' });
    for (let n = 0; n < 30; n++) tell(`saved ${n}`);
    expect(told().filter((message) => message.length === 1)).toEqual([...problems].reverse());
    dismiss(idOf('c'));
    expect(told()).not.toContain('c');
    expect(told()).toContain('b');
  });

  it('have the newest two that went well in sight; those put away come back when called, and then stay', () => {
    for (const message of ['one', 'two', 'three']) tell(message);
    expect(told()).toEqual(['three', 'two']);
    putAway(idOf('three'));
    expect(told()).toEqual(['two']);
    expect(awayCount.value).toBe(2);
    callBack();
    expect(told()).toEqual(['three', 'two', 'one']);
    expect(awayCount.value).toBe(0);
    expect(notices.value.map(({ stays }) => stays)).toEqual([true, false, true]);
  });

  it('keep the newest twenty that went well to be called back', () => {
    for (let n = 1; n <= 25; n++) tell(`saved ${n}`);
    callBack();
    expect(told()).toEqual(Array.from({ length: 20 }, (_, i) => `saved ${25 - i}`));
  });

  it('say the same thing once, as the newest', () => {
    tell('saved');
    putAway(idOf('saved'));
    tell('other');
    tell('saved');
    expect(told()).toEqual(['saved', 'other']);
    expect(awayCount.value).toBe(0);
  });
});
