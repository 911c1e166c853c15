/**
 * Reference oils of the viscosity index: L (index 0) and H (index 100) are the viscosities at 40 °C of the oils that
 * have Y at 100 °C; L = a Y^2 + b Y + c, H = d Y^2 + e Y + f, all in mm2/s.
 * Source: ASTM D2270 Table X2.1 (quadratic fits of the standard's table, checked against its worked examples).
 */

export interface ReferenceRow {
  /** The row holds for Y from here up to the next row [mm2/s]. */
  readonly from: number;
  readonly L: readonly [number, number, number];
  readonly H: readonly [number, number, number];
}

export const REFERENCE_ROWS: readonly ReferenceRow[] = [
  { from: 2, L: [1.14673, 1.7576, -0.109], H: [0.84155, 1.5521, -0.077] },
  { from: 3.8, L: [3.38095, -15.4952, 33.196], H: [0.78571, 1.7929, -0.183] },
  { from: 4.4, L: [2.5, -7.2143, 13.812], H: [0.82143, 1.5679, 0.119] },
  { from: 5, L: [0.101, 16.635, -45.469], H: [0.04985, 9.1613, -18.557] },
  { from: 6.4, L: [3.35714, -23.5643, 78.466], H: [0.22619, 7.7369, -16.656] },
  { from: 7, L: [0.01191, 21.475, -72.87], H: [0.79762, -0.7321, 14.61] },
  { from: 7.7, L: [0.41858, 16.1558, -56.04], H: [0.05794, 10.5156, -28.24] },
  { from: 9, L: [0.88779, 7.5527, -16.6], H: [0.26665, 6.7015, -10.81] },
  { from: 12, L: [0.7672, 10.7972, -38.18], H: [0.20073, 8.4658, -22.49] },
  { from: 15, L: [0.97305, 5.3135, -2.2], H: [0.28889, 5.9741, -4.93] },
  { from: 18, L: [0.97256, 5.25, -0.98], H: [0.24504, 7.416, -16.73] },
  { from: 22, L: [0.91413, 7.4759, -21.82], H: [0.20323, 9.1267, -34.23] },
  { from: 28, L: [0.87031, 9.7157, -50.77], H: [0.18411, 10.1015, -46.75] },
  { from: 40, L: [0.84703, 12.6752, -133.31], H: [0.17029, 11.4866, -80.62] },
  { from: 55, L: [0.85921, 11.1009, -83.19], H: [0.1713, 11.368, -76.94] },
  { from: 70, L: [0.83531, 14.6731, -216.246], H: [0.16841, 11.8493, -96.947] },
];
