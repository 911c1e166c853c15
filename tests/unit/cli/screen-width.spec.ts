import { describe, expect, it } from 'vitest';
import { screenWidth } from '../../../src/cli/screen-width.ts';

const ENDLESS = Number.POSITIVE_INFINITY;

describe('screenWidth', () => {
  it('is that of the terminal; where there is none, or it does not know, lines may be of any length', () => {
    expect([screenWidth(undefined, 120), screenWidth(undefined, undefined), screenWidth(undefined, 0)]).toEqual([
      120,
      ENDLESS,
      ENDLESS,
    ]);
  });

  it('is what COLUMNS says, with a terminal and without', () => {
    expect([screenWidth('100', 120), screenWidth('100', undefined)]).toEqual([100, 100]);
  });

  it.each(['', '0', '-80', '8e1', '80.5', 'wide', ' 80'])('passes over COLUMNS=%j, which is no width', (setting) => {
    expect([screenWidth(setting, 120), screenWidth(setting, undefined)]).toEqual([120, ENDLESS]);
  });
});
