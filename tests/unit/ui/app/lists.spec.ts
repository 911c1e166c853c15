import { describe, expect, it } from 'vitest';
import { looksLikeList } from '../../../../src/ui/app/lists.ts';

describe('what is pasted on the table', () => {
  it.each(['30 x 0.15', '3 x 30 x 0.15', '30x.15 (3)', '30.15 x3', '30×0,15', '30.15\n24.15', '1.2 in x 6 thou'])(
    'a list: %j',
    (pasted) => expect(looksLikeList(pasted)).toBe(true),
  );
  it.each(['0.15', '6 thou', '0.1 + 0.05', 'a note', '', '30 mm'])('a number or words: %j', (pasted) =>
    expect(looksLikeList(pasted)).toBe(false),
  );
});
