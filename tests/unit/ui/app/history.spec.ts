import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { HISTORY_LIMIT, mapDocuments, record, redo, startHistory, undo } from '../../../../src/ui/app/history.ts';

describe('history', () => {
  it('goes back and forth, and names what it takes back', () => {
    const h = record(record(startHistory('a'), 'b', 'first'), 'c', 'second');
    expect(undo(h).present).toBe('b');
    expect(undo(undo(h)).present).toBe('a');
    expect(undo(h).future[0].label).toBe('second');
    expect(redo(undo(h)).present).toBe('c');
    expect(redo(undo(h)).past.at(-1)?.label).toBe('second');
  });

  it('has nothing before the beginning and nothing after the end', () => {
    const h = record(startHistory('a'), 'b', 'x');
    expect(undo(startHistory('a')).present).toBe('a');
    expect(redo(h)).toBe(h);
  });

  it('counts one typed number as one step, and the next field as another', () => {
    let h = record(startHistory(0), 1, 'thickness', 'field#1');
    h = record(h, 12, 'thickness', 'field#1');
    h = record(h, 13, 'diameter', 'field#2');
    expect(undo(h).present).toBe(12);
    expect(undo(undo(h)).present).toBe(0);
    const after = record(undo(record(startHistory(0), 1, 'x', 'k')), 2, 'x', 'k');
    expect(undo(after).present).toBe(0);
  });

  it('forgets the way forward once something else is done', () => {
    const h = record(undo(record(startHistory('a'), 'b', 'x')), 'c', 'y');
    expect(h.future).toEqual([]);
    expect(undo(h).present).toBe('a');
  });

  it('keeps at least 200 steps, each as it was', () => {
    let h = startHistory(0);
    for (let i = 1; i <= 1000; i++) h = record(h, i, `${i}`);
    expect(h.past.length).toBe(HISTORY_LIMIT);
    let steps = 0;
    while (undo(h) !== h) {
      const before = h.present;
      h = undo(h);
      expect(h.present).toBe(before - 1);
      steps++;
    }
    expect(steps).toBeGreaterThanOrEqual(200);
  });

  it('undo then redo is where one was, whatever was done', () => {
    fc.assert(
      fc.property(fc.array(fc.integer(), { minLength: 1, maxLength: 40 }), fc.nat(39), (edits, back) => {
        const h = edits.reduce((now, edit, i) => record(now, { edit, i }, 'e'), startHistory<object>({}));
        let moved = h;
        const steps = Math.min(back, edits.length);
        for (let i = 0; i < steps; i++) moved = undo(moved);
        for (let i = 0; i < steps; i++) moved = redo(moved);
        expect(moved.present).toBe(h.present);
        expect(moved.past.map((step) => step.document)).toEqual(h.past.map((step) => step.document));
      }),
    );
  });

  it('changes every document in the same way, and nothing else', () => {
    const h = undo(record(record(startHistory(1), 2, 'x', 'k'), 3, 'y'));
    const mapped = mapDocuments(h, (n) => n * 10);
    expect([undo(mapped).present, mapped.present, redo(mapped).present]).toEqual([10, 20, 30]);
    expect(mapped.past.map(({ label }) => label)).toEqual(['x']);
    expect(mapped.future.map(({ label }) => label)).toEqual(['y']);
  });
});
