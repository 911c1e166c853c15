/** Exact by definition (1959 inch and pound, standard gravity; US fluid ounce of 231/128 cubic inches), rounded by hand. */
import { describe, expect, it } from 'vitest';
import { both, settingIn } from '../../../src/sheet/quantities.ts';

describe('numbers of the sheet', () => {
  it.each([
    ['length', 0.15, '0.15 mm (0.0059 in)', '0.0059 in (0.15 mm)'],
    ['length', 30, '30 mm (1.1811 in)', '1.1811 in (30 mm)'],
    ['volume', 500, '500 mL (16.91 fl oz US)', '16.91 fl oz US (500 mL)'],
    ['gasPressure', 12, '12 bar (174 psi)', '174 psi (12 bar)'],
    ['gasPressure', 0, '0 bar (0 psi)', '0 psi (0 bar)'],
    ['torque', 12.5, '12.5 N·m (9.2 ft·lbf)', '9.2 ft·lbf (12.5 N·m)'],
    ['temperature', 50, '50 °C (122 °F)', '122 °F (50 °C)'],
    ['springRate', 10, '10 N/mm (57.10 lbf/in)', '57.10 lbf/in (10 N/mm)'],
  ] as const)('%s %d stands in both families, that of the reader first', (kind, value, metric, imperial) => {
    expect(both(kind, value, 'metric')).toBe(metric);
    expect(both(kind, value, 'imperial')).toBe(imperial);
  });

  it('keeps a whole number whole and a count bare', () => {
    expect(both('length', 100, 'metric')).toBe('100 mm (3.9370 in)');
    expect(settingIn('metric')('count', 12)).toBe('12');
    expect(settingIn('imperial')('angle', 30)).toBe('30°');
    expect(settingIn('imperial')('length', 25.4)).toBe('1.0000 in (25.4 mm)');
  });
});
