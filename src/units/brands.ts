/**
 * Numbers that must not be swapped: gauge for absolute pressure, radius for diameter. A brand is seen by the compiler
 * only; a branded number is a plain number when the program runs.
 */
import { absoluteFromGauge, STANDARD_ATMOSPHERE_PA } from './si.ts';

declare const quantity: unique symbol;
type Branded<Name extends string> = number & { readonly [quantity]: Name };

/** Pressure above the standard atmosphere [Pa]. */
export type GaugePressure = Branded<'gauge pressure'>;
/** Pressure above vacuum [Pa]. */
export type AbsolutePressure = Branded<'absolute pressure'>;
export type Radius = Branded<'radius'>;
export type Diameter = Branded<'diameter'>;

export const gaugePressure = (pressure_Pa: number): GaugePressure => pressure_Pa as GaugePressure;
export const absolutePressure = (pressure_Pa: number): AbsolutePressure => pressure_Pa as AbsolutePressure;
/** In any length unit; so is what comes of it. */
export const radius = (length: number): Radius => length as Radius;
export const diameter = (length: number): Diameter => length as Diameter;

export const toAbsolute = (pressure: GaugePressure): AbsolutePressure => absolutePressure(absoluteFromGauge(pressure));
export const toGauge = (pressure: AbsolutePressure): GaugePressure => gaugePressure(pressure - STANDARD_ATMOSPHERE_PA);
export const toRadius = (across: Diameter): Radius => radius(across / 2);
export const toDiameter = (fromCentre: Radius): Diameter => diameter(fromCentre * 2);
