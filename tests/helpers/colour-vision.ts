/**
 * Colours as people with a colour vision deficiency see them, and how far apart two then look.
 * Matrices: Machado, Oliveira, Fernandes, "A Physiologically-based Model for Simulation of Color Vision Deficiency", IEEE TVCG 15(6), 2009,
 * severity 1.0, for linear sRGB; the first two compared with public transcriptions, the third from memory.
 * Without cones for colour only the luminance of Rec. 709 is left. CIE L*a*b* and ΔE*ab of 1976 (ISO/CIE 11664-4), white D65; from memory.
 */
type Triple = readonly [number, number, number];
type Matrix = readonly [Triple, Triple, Triple];

const LUMINANCE: Triple = [0.2126, 0.7152, 0.0722];

export const VISIONS: Readonly<Record<string, Matrix>> = {
  protanopia: [
    [0.152286, 1.052583, -0.204868],
    [0.114503, 0.786281, 0.099216],
    [-0.003882, -0.048116, 1.051998],
  ],
  deuteranopia: [
    [0.367322, 0.860646, -0.227968],
    [0.280085, 0.672501, 0.047413],
    [-0.01182, 0.04294, 0.968881],
  ],
  tritanopia: [
    [1.255528, -0.076749, -0.178779],
    [-0.078411, 0.930809, 0.147602],
    [0.004733, 0.691367, 0.3039],
  ],
  achromatopsia: [LUMINANCE, LUMINANCE, LUMINANCE],
};

/** Linear sRGB to CIE XYZ (IEC 61966-2-1). */
const TO_XYZ: Matrix = [[0.4124, 0.3576, 0.1805], LUMINANCE, [0.0193, 0.1192, 0.9505]];
const WHITE: Triple = [0.9505, 1, 1.089];

const times = (matrix: Matrix, [x, y, z]: Triple): Triple => {
  const [a, b, c] = matrix.map((row) => row[0] * x + row[1] * y + row[2] * z);
  return [a, b, c];
};

function linear(hex: string): Triple {
  const [r, g, b] = [1, 3, 5].map((at) => {
    const c = Number.parseInt(hex.slice(at, at + 2), 16) / 255;
    return c <= 0.04045 ? c / 12.92 : ((c + 0.055) / 1.055) ** 2.4;
  });
  return [r, g, b];
}

/** Screens show nothing beyond their own colours. */
const onScreen = ([r, g, b]: Triple): Triple => {
  const held = (c: number): number => Math.min(1, Math.max(0, c));
  return [held(r), held(g), held(b)];
};

function lab(rgb: Triple): Triple {
  const [x, y, z] = times(TO_XYZ, rgb).map((value, i) => {
    const t = value / WHITE[i];
    return t > (6 / 29) ** 3 ? Math.cbrt(t) : t / (3 * (6 / 29) ** 2) + 4 / 29;
  });
  return [116 * y - 16, 500 * (x - y), 200 * (y - z)];
}

/**
 * ΔE*ab of two colours as one vision sees them; about 2.3 is just noticeable side by side (from memory), thin lines need far more.
 * @param a,b `#rrggbb`  @param vision none for all three kinds of cones
 */
export function colourDistance(a: string, b: string, vision?: Matrix): number {
  const seen = (hex: string): Triple => lab(onScreen(vision ? times(vision, linear(hex)) : linear(hex)));
  const [one, other] = [seen(a), seen(b)];
  return Math.hypot(...one.map((value, i) => value - other[i]));
}
