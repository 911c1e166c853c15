import { expect, it } from 'vitest';
import { plural } from '../../../../src/ui/text/plural.ts';

it('has one form for one and another for all else, none and parts too', () => {
  expect([0, 1, 2, 1.5].map((n) => plural(n, 'shim', 'shims'))).toEqual(['0 shims', '1 shim', '2 shims', '1.5 shims']);
});
