import { describe, expect, it } from 'vitest';
import {
  inOrder,
  missingPieces,
  newStudy,
  PIECE,
  refusalsOf,
  samplesOf,
  withPiece,
} from '../../../../src/ui/tolerance/scatter-study.ts';
import { piece } from './studies.ts';

describe('a study of scatter', () => {
  it('puts its pieces in the order of their samples, whichever came first', () => {
    const study = [3, 0, 2].reduce((of, n) => withPiece(of, n, piece(n)), newStudy('k', 'a'));
    expect(inOrder(study).map(({ a }) => a[0][0])).toEqual([0, 2, 3]);
    expect(samplesOf(study)).toBe(3 * PIECE);
  });

  it('knows what is still to be solved, and nothing more when it has been asked for fewer', () => {
    const study = withPiece(newStudy('k', 'a'), 1, piece(1));
    expect(missingPieces(study, 3 * PIECE)).toEqual([0, 2]);
    expect(missingPieces(study, 3 * PIECE + 1)).toEqual([0, 2, 3]);
    expect(missingPieces(withPiece(study, 0, piece(0)), PIECE)).toEqual([]);
  });

  it('tells each reason once', () => {
    const study = [0, 1].reduce((of, n) => withPiece(of, n, piece(n, ['too small', `no. ${n}`])), newStudy('k', 'a'));
    expect(refusalsOf(study)).toEqual(['too small', 'no. 0', 'no. 1']);
  });
});
