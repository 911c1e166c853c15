/** Exponents of metre, kilogram, second and kelvin, so that a pressure cannot pass for a length. */
import type { Kind } from './unit-table.ts';

export type Dimension = readonly [metre: number, kilogram: number, second: number, kelvin: number];

export const NUMBER: Dimension = [0, 0, 0, 0];

export const DIMENSIONS: Readonly<Record<Kind, Dimension>> = {
  length: [1, 0, 0, 0],
  distance: [1, 0, 0, 0],
  area: [2, 0, 0, 0],
  volume: [3, 0, 0, 0],
  mass: [0, 1, 0, 0],
  force: [1, 1, -2, 0],
  pressure: [-1, 1, -2, 0],
  stress: [-1, 1, -2, 0],
  modulus: [-1, 1, -2, 0],
  speed: [1, 0, -1, 0],
  temperature: [0, 0, 0, 1],
  temperatureDifference: [0, 0, 0, 1],
  torque: [2, 1, -2, 0],
  energy: [2, 1, -2, 0],
  power: [2, 1, -3, 0],
  kinematicViscosity: [2, 0, -1, 0],
  dynamicViscosity: [-1, 1, -1, 0],
  density: [-3, 1, 0, 0],
  springRate: [0, 1, -2, 0],
  viscousFriction: [0, 1, -1, 0],
  flow: [3, 0, -1, 0],
  frequency: [0, 0, -1, 0],
  time: [0, 0, 1, 0],
  number: NUMBER,
};

const combine = (a: Dimension, b: Dimension, sign: 1 | -1): Dimension => [
  a[0] + sign * b[0],
  a[1] + sign * b[1],
  a[2] + sign * b[2],
  a[3] + sign * b[3],
];

export const product = (a: Dimension, b: Dimension): Dimension => combine(a, b, 1);
export const quotient = (a: Dimension, b: Dimension): Dimension => combine(a, b, -1);
export const sameDimension = (a: Dimension, b: Dimension): boolean =>
  a.every((exponent, index) => exponent === b[index]);
