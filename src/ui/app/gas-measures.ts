/**
 * The ways in which the gas of a damper is known: its volume, and in a fork leg the oil level or the oil poured in. Going from
 * one to another leaves the gas as it is.
 */
import type { AirGap, Damper, Gas, OilFill } from '../../model/project.ts';

export type GasMeasure = 'volume' | 'airGap' | 'oilFill';
export const GAS_MEASURES: readonly GasMeasure[] = ['volume', 'airGap', 'oilFill'];

export const measureOf = ({ airGap, oilFill }: Gas): GasMeasure => (airGap ? 'airGap' : oilFill ? 'oilFill' : 'volume');

const millilitres = (diameter_mm: number, length_mm: number): number =>
  ((Math.PI / 4) * diameter_mm * diameter_mm * length_mm) / 1000;

/** What enters the gas over the whole travel [mL]. */
const displaced_mL = ({ layout, legDiameter_mm, rodDiameter_mm, travel_mm }: Damper): number =>
  millilitres((layout === 'cartridge' ? legDiameter_mm : undefined) ?? rodDiameter_mm, travel_mm);

/** Fully compressed [mL]. */
function compressed_mL({ volume_mL = 0, airGap, oilFill }: Gas, damper: Damper): number {
  if (airGap) return millilitres(airGap.tubeDiameter_mm, airGap.level_mm) - airGap.insertedVolume_mL;
  if (oilFill) return oilFill.legVolume_mL - oilFill.oilVolume_mL - oilFill.insertedVolume_mL;
  return volume_mL - displaced_mL(damper);
}

const tenths = (value: number): number => Number(value.toFixed(1));

/** What a leg is filled with where nothing is known of it (own starting value) [mL]. */
const USUAL_OIL_ML = 500;

/** The tube, and what comes in after measuring, as they were given before. */
export type GasShape = Pick<Gas, 'airGap' | 'oilFill'>;

function airGapOf(compressed: number, damper: Damper, before: AirGap | undefined): AirGap {
  const tubeDiameter_mm = before?.tubeDiameter_mm ?? damper.legDiameter_mm ?? damper.boreDiameter_mm;
  const insertedVolume_mL = before?.insertedVolume_mL ?? 0;
  const level_mm = tenths((compressed + insertedVolume_mL) / millilitres(tubeDiameter_mm, 1));
  return { level_mm, tubeDiameter_mm, insertedVolume_mL };
}

function oilFillOf(compressed: number, before: OilFill | undefined): OilFill {
  const insertedVolume_mL = before?.insertedVolume_mL ?? 0;
  const legVolume_mL = before?.legVolume_mL ?? tenths(USUAL_OIL_ML + insertedVolume_mL + compressed);
  return { oilVolume_mL: tenths(legVolume_mL - insertedVolume_mL - compressed), legVolume_mL, insertedVolume_mL };
}

/** The same gas by another measure. @param before the shape that was given by that measure earlier */
export function gasBy(measure: GasMeasure, gas: Gas, damper: Damper, before: GasShape = {}): Gas {
  if (measure === measureOf(gas)) return gas;
  const { volume_mL: _v, airGap: _g, oilFill: _f, ...rest } = gas;
  const compressed = compressed_mL(gas, damper);
  if (measure === 'airGap') return { ...rest, airGap: airGapOf(compressed, damper, before.airGap) };
  if (measure === 'oilFill') return { ...rest, oilFill: oilFillOf(compressed, before.oilFill) };
  return { ...rest, volume_mL: tenths(compressed + displaced_mL(damper)) };
}
