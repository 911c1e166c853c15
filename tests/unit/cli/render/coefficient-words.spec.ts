import { expect, it } from 'vitest';
import { COEFFICIENT_WORDS } from '../../../../src/cli/render/coefficient-words.ts';
import { text } from '../../../../src/ui/text/en.ts';

it('calls the coefficients what the bench calls them', () => {
  expect(COEFFICIENT_WORDS).toEqual(text.readout.coefficient);
});
