/** Gas of a document, as it stands at a stroke position. */
import type { AirGap, Gas, OilFill } from '../../model/project.ts';
import { InputError } from '../../units/fault.ts';
import {
  absoluteFromGauge,
  cubicMetresFromMillilitres,
  metresFromMillimetres as metres,
  pascalsFromBars,
} from '../../units/si.ts';
import { gasArea } from '../damper/piston-areas.ts';
import type { GasInput } from '../damper/types.ts';
import { airGapVolume, airOverFill } from '../fluid/air-gap.ts';
import { floatingPistonPressure, gasAtStroke } from '../fluid/gas.ts';

/** Of what sinks into the gas. */
type Sizes = Parameters<typeof gasArea>[0] & { readonly travel_m: number };

/** @throws InputError `gas.volume.too-small` when the stroke needs more than the gas has, `gas.size`, `gas.air-gap.*` */
export function gasFrom(gas: Gas, sizes: Sizes, stroke_m: number): GasInput {
  const { travel_m } = sizes;
  const area_m2 = gasArea(sizes);
  const charge = {
    absolutePressure_Pa: absoluteFromGauge(pascalsFromBars(gas.gaugePressure_bar)),
    volume_m3: volumeExtended(gas, area_m2, travel_m),
    polytropicExponent: gas.polytropicExponent,
  };
  gasAtStroke(charge, area_m2, travel_m);
  return { ...gasAtStroke(charge, area_m2, stroke_m), separatorFriction_Pa: separatorFriction(gas) };
}

function volumeExtended({ volume_mL, airGap, oilFill }: Gas, area_m2: number, travel_m: number): number {
  if (volume_mL !== undefined) return cubicMetresFromMillilitres(volume_mL);
  if (airGap) return airGapVolume(gapFrom(airGap), area_m2, travel_m);
  if (oilFill) return airOverFill(fillFrom(oilFill), area_m2, travel_m);
  throw new InputError({ code: 'gas.size', path: 'gas', got: 'none', wanted: 'one of volume_mL, airGap, oilFill' });
}

const gapFrom = ({ level_mm, tubeDiameter_mm, insertedVolume_mL }: AirGap) => ({
  level_m: metres(level_mm),
  tubeDiameter_m: metres(tubeDiameter_mm),
  insertedVolume_m3: cubicMetresFromMillilitres(insertedVolume_mL),
});

const fillFrom = ({ oilVolume_mL, legVolume_mL, insertedVolume_mL }: OilFill) => ({
  oilVolume_m3: cubicMetresFromMillilitres(oilVolume_mL),
  legVolume_m3: cubicMetresFromMillilitres(legVolume_mL),
  insertedVolume_m3: cubicMetresFromMillilitres(insertedVolume_mL),
});

function separatorFriction({ separator }: Gas): number {
  if (separator?.kind !== 'floating-piston') return 0;
  return floatingPistonPressure(separator.friction_N, metres(separator.diameter_mm));
}
