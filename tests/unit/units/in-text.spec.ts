import { describe, expect, it } from 'vitest';
import { quantitiesInText } from '../../../src/units/in-text.ts';

const REASON = 'the valve ends at a drop of 0.2137 MPa (known up to 0.75 L/s); absolute pressures there: gas 1.5 MPa';

describe('the quantities of a sentence', () => {
  it('stand in the units of its reader, the words as they are', () => {
    // By definition: 1 MPa is 10 bar; 1 L/s is 60 L/min.
    expect(quantitiesInText(REASON, { family: 'metric' }, '.')).toBe(
      'the valve ends at a drop of 2.137 bar (known up to 45 L/min); absolute pressures there: gas 15 bar',
    );
    // Source: 1 psi = 6894.757 Pa (NIST SP 811); 1 L = 61.02374 in3: 0.2137e6 / 6894.757 = 30.99, 0.75 * 61.02374 = 45.77, 1.5e6 / 6894.757 = 217.6.
    expect(quantitiesInText(REASON, { family: 'imperial' }, '.')).toBe(
      'the valve ends at a drop of 30.99 psi (known up to 45.77 in³/s); absolute pressures there: gas 217.6 psi',
    );
  });

  it('stand in units that were picked for their kind, with the decimal sign of the reader', () => {
    const units = { family: 'metric', own: { pressure: 'kPa', flow: 'mL/s' } } as const;
    expect(quantitiesInText('at 0.00123456 MPa, 0.0015 L/s', units, ',')).toBe('at 1,235 kPa, 1,5 mL/s');
  });

  it('are told from numbers that have no unit, and from words that only begin like one', () => {
    const sentence = 'balance left 1.0e-3 of the load after 40 iterations at 3 MPascals';
    expect(quantitiesInText(sentence, { family: 'imperial' }, '.')).toBe(sentence);
    expect(quantitiesInText('beyond 1 GPa or 2e-3 MPa', { family: 'metric' }, '.')).toBe(
      'beyond 10000 bar or 0.02 bar',
    );
    expect(quantitiesInText('more than 0.02 of its free width', { family: 'metric' }, ',')).toBe(
      'more than 0,02 of its free width',
    );
  });
});
