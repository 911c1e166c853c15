import { expect, it } from 'vitest';
import { coarseFirst } from '../../../../src/ui/app/coarse-first.ts';

it('spans the whole before it goes between, and leaves nothing out', () => {
  expect(coarseFirst([0, 1, 2, 3, 4, 5, 6, 7, 8])).toEqual([0, 4, 8, 2, 6, 1, 3, 5, 7]);
  expect(coarseFirst([])).toEqual([]);
});
