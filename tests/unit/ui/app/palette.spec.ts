import { describe, expect, it } from 'vitest';
import { buildColour, buildDash, buildMark, colourIndex } from '../../../../src/ui/app/palette.ts';

/** Relative luminance and contrast as WCAG 2.2 defines them (from memory). */
function luminance(hex: string): number {
  const [r, g, b] = [1, 3, 5].map((at) => {
    const c = Number.parseInt(hex.slice(at, at + 2), 16) / 255;
    return c <= 0.04045 ? c / 12.92 : ((c + 0.055) / 1.055) ** 2.4;
  });
  return 0.2126 * r + 0.7152 * g + 0.0722 * b;
}
function contrast(a: string, b: string): number {
  const [high, low] = [luminance(a), luminance(b)].sort((x, y) => y - x);
  return (high + 0.05) / (low + 0.05);
}

const COLOURS = [0, 1, 2, 3, 4, 5];

describe('colours of builds', () => {
  it.each([
    ['light', false, '#fafbf8'],
    ['dark', true, '#131f26'],
  ] as const)('keep 4.5 : 1 against the %s sheet, so that names can be written in them', (_, dark, sheet) => {
    for (const i of COLOURS) expect(contrast(buildColour(i, dark), sheet)).toBeGreaterThanOrEqual(4.5);
  });

  it('stay with their build while others come and go', () => {
    expect(colourIndex(['a', 'b', 'c'], 'c')).toBe(2);
    expect(colourIndex(['a', 'c'], 'c')).toBe(2);
    expect(colourIndex(['a', 'c', 'd'], 'd')).toBe(1);
  });

  it('are not the only mark: the baseline has a line of its own', () => {
    expect(buildDash(-1, true)).not.toBe(buildDash(0, false));
    expect(new Set([0, 1, 2, 3].map((at) => buildDash(at, false))).size).toBe(4);
    // Points have no dash: seven forms.
    expect(new Set([buildMark(-1, true), ...COLOURS.map((at) => buildMark(at, false))]).size).toBe(7);
  });
});
