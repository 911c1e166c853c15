import { describe, expect, it } from 'vitest';
import { withBlocks } from '../../../scripts/lib/blocks.ts';

const page =
  'before\n<!-- one: begin -->\nold\n<!-- one: end -->\nbetween\n<!-- two: begin -->\n<!-- two: end -->\nafter';

describe('the blocks of a page', () => {
  it('stand between their marks, whatever stood there', () => {
    const written = withBlocks(page, { one: 'first', two: 'second' });
    expect(written).toBe(
      'before\n<!-- one: begin -->\n\nfirst\n\n<!-- one: end -->\nbetween\n<!-- two: begin -->\n\nsecond\n\n<!-- two: end -->\nafter',
    );
    expect(withBlocks(written, { one: 'first', two: 'second' })).toBe(written);
  });

  it('want their marks', () => {
    expect(() => withBlocks(page, { three: 'x' })).toThrow('no marks for three');
    expect(() => withBlocks('<!-- one: end --><!-- one: begin -->', { one: 'x' })).toThrow('no marks for one');
  });
});
