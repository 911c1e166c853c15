/** The sizes of the stock builds of the demos, read off their documents by a person: mm, mm², N, N/mm, mL, gas in MPa. */
import { type HoleSizes, roundPort } from './hand-formulas.ts';
import type { DamperSizes } from './hand-types.ts';

const ATMOSPHERE = 0.101325;

const monotubeBleed: HoleSizes = [1, 1.6, 6];
const cartridgeBleed = { bleed: [1, 2.2, 6], needle: [2.2, 8, 1.5] } as const;
const twinBleed: HoleSizes = [2, 1.3, 4];
const reservoirPiston = { bleed: [1, 1.8, 5], needle: [1.8, 7, 1.08], gap: [27, 0.02, 7, 0.5] } as const;

export const DAMPERS: readonly DamperSizes[] = [
  {
    page: 'hand-monotube.md',
    name: 'monotube',
    speeds: [0.05, 0.3, 1],
    bore: 40,
    rod: 16,
    oil: [15, 3.5, 860, 50],
    gas: [1.2 + ATMOSPHERE, 70, 1.2, 16, 38],
    friction: [25, 0],
    piston: [
      {
        stack: {
          clamp: 6,
          face: '34 × 0.3',
          rest: ['22 × 0.1', '28 × 0.25', '22 × 0.25', '18 × 0.25'],
          pressed: [9, 16.1],
          land: [15.7, 16.5],
          seat: 0.1,
        },
        bleed: monotubeBleed,
        ports: [4, roundPort(30), 14],
      },
      {
        stack: {
          clamp: 6,
          face: '28 × 0.2 × 2',
          rest: ['24 × 0.2', '22 × 0.2', '20 × 0.2', '18 × 0.25'],
          pressed: [8.5, 13.15],
          land: [12.8, 13.5],
          seat: 0.1,
        },
        bleed: monotubeBleed,
        ports: [4, roundPort(15), 14],
      },
    ],
  },
  {
    page: 'hand-cartridge.md',
    name: 'cartridge',
    speeds: [0.1, 0.5, 1.5],
    bore: 25,
    rod: 14,
    oil: [16, undefined, 855, 30],
    gas: [ATMOSPHERE, ((Math.PI / 4) * (38 ** 2 * 130 + 43 ** 2 * 240)) / 1000 - 30, 1.2, 43, 120],
    friction: [18, 10],
    piston: [
      {
        stack: {
          clamp: 4.5,
          face: '22 × 0.15 × 2',
          rest: ['17 × 0.15', '13 × 0.15'],
          pressed: [6.5, 10.25],
          land: [10, 10.5],
          seat: 0,
          float: [0.25, 2, 1.5],
        },
        ...cartridgeBleed,
        ports: [4, roundPort(18), 8],
      },
      {
        stack: {
          clamp: 4,
          face: '20 × 0.15 × 4',
          rest: ['18 × 0.15', '15 × 0.15', '12 × 0.15'],
          pressed: [5.75, 9.25],
          land: [9, 9.5],
          seat: 0.05,
        },
        ...cartridgeBleed,
        ports: [4, 3.4, 8],
      },
    ],
    base: {
      stack: {
        clamp: 4,
        face: '19 × 0.15 × 4',
        rest: ['13 × 0.1', '17 × 0.15', '15 × 0.15', '13 × 0.2', '11 × 0.2'],
        pressed: [5.5, 8.95],
        land: [8.7, 9.2],
        seat: 0.05,
      },
      bleed: [1, 2, 5],
      needle: [2, 7, 1.5],
      ports: [4, 3.2, 10],
    },
    check: { ports: [8, 3.2, 6], land: [7.5, 11], rate: 0.3, force: 0.8, travel: 1.5 },
  },
  {
    page: 'hand-twin-tube.md',
    name: 'twin-tube',
    speeds: [0.1, 0.3, 1],
    bore: 36,
    rod: 18,
    oil: [15, undefined, 865, 60],
    gas: [0.35 + ATMOSPHERE, 110, 1.2, 18, 75],
    friction: [40, 25],
    piston: [
      {
        stack: {
          clamp: 8,
          face: '32 × 0.2',
          rest: ['24 × 0.15'],
          pressed: [9.5, 15.125],
          land: [14.75, 15.5],
          seat: 0,
          float: [0.8, 1.2, 4],
        },
        bleed: twinBleed,
        ports: [6, roundPort(22), 9],
      },
      {
        stack: {
          clamp: 5.5,
          face: '26 × 0.2 × 5',
          rest: ['24 × 0.2', '21 × 0.2', '18 × 0.2'],
          pressed: [7, 12.05],
          land: [11.7, 12.4],
          seat: 0.05,
          coil: [8.5, 80, 100 - 8 * 0.05 * 80],
        },
        bleed: twinBleed,
        ports: [6, roundPort(10), 12],
        share: 0.75,
      },
    ],
    base: {
      stack: {
        clamp: 5,
        face: '22 × 0.2 × 4',
        rest: ['18 × 0.2', '16 × 0.2', '13 × 0.2'],
        pressed: [6.5, 10.375],
        land: [10, 10.75],
        seat: 0.06,
      },
      bleed: [1, 1.2, 4],
      ports: [6, 3, 8],
    },
    check: { ports: [8, 4.5, 8], land: [10.75, 15.5], rate: 0.5, force: 1.2, travel: 1.6 },
  },
  {
    page: 'hand-reservoir.md',
    name: 'reservoir',
    speeds: [0.05, 0.3, 1.5],
    bore: 27,
    rod: 14,
    oil: [13, 3.6, 850, 35],
    gas: [1.2 + ATMOSPHERE, 40, 1.3, 14, 32.5],
    friction: [30, 15],
    piston: [
      {
        stack: {
          clamp: 4.5,
          face: '24 × 0.2 × 2',
          rest: ['16 × 0.1', '20 × 0.2', '16 × 0.2'],
          pressed: [6.75, 11.3],
          land: [11, 11.6],
          seat: 0.05,
        },
        ...reservoirPiston,
        ports: [4, roundPort(20), 9],
      },
      {
        stack: {
          clamp: 4.5,
          face: '21 × 0.15 × 4',
          rest: ['15 × 0.1', '19 × 0.15', '17 × 0.15', '14 × 0.15'],
          pressed: [6, 9.75],
          land: [9.5, 10],
          seat: 0.1,
        },
        ...reservoirPiston,
        ports: [4, 3.4, 9],
      },
    ],
    base: {
      stack: {
        clamp: 3.5,
        face: '17 × 0.15 × 4',
        rest: ['14 × 0.15', '11 × 0.15'],
        pressed: [4.75, 7.75],
        land: [7.5, 8],
        seat: 0.05,
      },
      bleed: [1, 1.6, 5],
      needle: [1.6, 7, 0.96],
      ports: [4, 2.6, 8],
      poppet: [6, 45, 15, 50 - 6 * 0.1 * 15],
    },
    check: { ports: [6, 3, 6], land: [7.75, 11.5], rate: 0.6, force: 1.5, travel: 1.2 },
  },
];
