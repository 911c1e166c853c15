import { expect, it } from 'vitest';
import { wantedInWords } from '../../../../src/ui/text/faults.ts';

const fault = { code: 'stack.shim.below-clamp', wanted: 'more than the clamp diameter 12.5' };

it('a refusal is told as the layer that refused said it, or by the sentence of its code with the same values', () => {
  expect(wantedInWords(fault)).toBe(fault.wanted);
  const german = { 'stack.shim.below-clamp': ([clamp]: readonly string[]) => `mehr als die Klemmung ${clamp}` };
  expect(wantedInWords(fault, german)).toBe('mehr als die Klemmung 12.5');
  expect(wantedInWords({ code: 'other', wanted: '1 or 2' }, german)).toBe('1 or 2');
});
