import { describe, expect, it } from 'vitest';
import { buffersOf } from '../../workers/buffers-of.ts';

describe('buffersOf', () => {
  it('finds each buffer once, however deep, and leaves shared memory alone', () => {
    const one = new Float64Array(3);
    const two = new Float64Array(2);
    const value = { shapes: [{ r: one, w: [two, one.subarray(1)] }], flag: new Int32Array(new SharedArrayBuffer(4)) };
    expect([...buffersOf(value)]).toEqual([one.buffer, two.buffer]);
  });
});
