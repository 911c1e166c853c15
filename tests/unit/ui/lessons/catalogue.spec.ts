import { describe, expect, it } from 'vitest';
import { LESSONS } from '../../../../src/ui/lessons/catalogue.ts';
import { lessonsWords as words } from '../../../../src/ui/text/lessons.ts';

describe('the lessons', () => {
  it('are at least eight, each with its words, in one order', () => {
    expect(LESSONS.length).toBeGreaterThanOrEqual(8);
    expect(LESSONS.map(({ id }) => id)).toEqual(Object.keys(words.lessons));
  });

  it.each(LESSONS.map((lesson) => [lesson.id, lesson] as const))('"%s" is short, and can be answered', (id, lesson) => {
    const { title, steps, question, learnt } = words.lessons[id];
    expect(steps.length).toBeGreaterThanOrEqual(3);
    expect(steps.length).toBeLessThanOrEqual(5);
    for (const sentence of [title, question, learnt, ...steps]) expect(sentence).toMatch(/\S/);
    expect(lesson.goals.length).toBeGreaterThan(0);
    expect(lesson.mayChange.length).toBeGreaterThan(0);
  });

  it('have a name for every part that can stray', () => {
    for (const name of Object.values(words.parts)) expect(name).toMatch(/^(the|other) /);
    for (const { mayChange } of LESSONS) for (const part of mayChange) expect(words.parts[part]).toBeDefined();
  });
});
