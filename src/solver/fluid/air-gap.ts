/**
 * Air over the oil of a fork leg. The level is measured fully compressed with the spring out, from the top of the tube down to
 * the oil; what goes in afterwards takes its volume from the air, and stretching the leg to full extension gives the air what leaves the oil:
 *   V_compressed = pi/4 D^2 h - V_in,   V = V_compressed + A S
 * Without a level, by the oil poured in: V_compressed = V_leg - V_oil - V_in.
 * Source: geometry. Left out: air that dissolves in the oil, the oil that a wetted spring keeps.
 *
 * symbol        unit  meaning
 * D             m     bore of the tube in which the level is measured
 * h             m     oil level, from the top of the tube
 * V_in          m3    solid volume that comes in after measuring: spring, spacers
 * V_leg, V_oil  m3    what the leg holds fully compressed up to the top of its tube, oil poured in
 * A             m2    volume that leaves the air per metre of stroke: the leg at its seal
 * S             m     travel
 * V             m3    volume of the air at full extension
 */
import { InputError } from '../../units/fault.ts';

export interface AirGapTube {
  readonly tubeDiameter_m: number;
  /** Solid volume that comes in after measuring [m3]. */
  readonly insertedVolume_m3: number;
}

export interface AirGap extends AirGapTube {
  /** Fully compressed, spring out, from the top of the tube [m]. */
  readonly level_m: number;
}

/**
 * Volume of the air at full extension [m3].
 * @throws InputError `gas.air-gap.level`, `gas.air-gap.tube`, `gas.air-gap.inserted` for sizes that cannot be,
 *   `gas.air-gap.full` when what comes in fills the tube: the leg would stand on its oil before it is compressed.
 */
export function airGapVolume({ level_m, ...tube }: AirGap, area_m2: number, travel_m: number): number {
  requireTube(tube);
  if (!(level_m > 0 && Number.isFinite(level_m))) throw fault('level', 'level_m', level_m, 'more than 0', 'm');
  const compressed_m3 = boreArea(tube) * level_m - tube.insertedVolume_m3;
  if (compressed_m3 > 0) return compressed_m3 + area_m2 * travel_m;
  const wanted = `less than the air over the oil, ${boreArea(tube) * level_m}`;
  throw fault('full', 'insertedVolume_m3', tube.insertedVolume_m3, wanted, 'm3');
}

export interface OilFill {
  readonly oilVolume_m3: number;
  readonly legVolume_m3: number;
  /** Solid volume that comes in afterwards [m3]. */
  readonly insertedVolume_m3: number;
}

/**
 * Volume of the air at full extension over the oil poured into a leg [m3].
 * @throws InputError `gas.air-gap.full` when oil and what comes in leave nothing of the leg to the air.
 */
export function airOverFill({ legVolume_m3, ...fill }: OilFill, area_m2: number, travel_m: number): number {
  const compressed_m3 = legVolume_m3 - fill.oilVolume_m3 - fill.insertedVolume_m3;
  if (compressed_m3 > 0) return compressed_m3 + area_m2 * travel_m;
  const path = 'gas.oilFill.oilVolume_m3';
  const wanted = `less than the leg holds beside what comes in, ${legVolume_m3 - fill.insertedVolume_m3}`;
  throw new InputError({ code: 'gas.air-gap.full', path, got: String(fill.oilVolume_m3), wanted, unit: 'm3' });
}

/**
 * The level that gives a volume of air at full extension [m]: what to fill to.
 * @throws InputError `gas.air-gap.tube`, `gas.air-gap.inserted` as `airGapVolume`, `gas.air-gap.volume` when the stroke would need
 *   all of it.
 */
export function airGapLevel(volume_m3: number, tube: AirGapTube, area_m2: number, travel_m: number): number {
  requireTube(tube);
  const compressed_m3 = volume_m3 - area_m2 * travel_m;
  if (compressed_m3 > 0) return (compressed_m3 + tube.insertedVolume_m3) / boreArea(tube);
  throw fault('volume', 'volume_m3', volume_m3, `more than the stroke takes, ${area_m2 * travel_m}`, 'm3');
}

function requireTube({ tubeDiameter_m, insertedVolume_m3 }: AirGapTube): void {
  if (!(tubeDiameter_m > 0 && Number.isFinite(tubeDiameter_m))) {
    throw fault('tube', 'tubeDiameter_m', tubeDiameter_m, 'more than 0', 'm');
  }
  if (!(insertedVolume_m3 >= 0)) throw fault('inserted', 'insertedVolume_m3', insertedVolume_m3, '0 or more', 'm3');
}

const boreArea = ({ tubeDiameter_m: D }: AirGapTube): number => (Math.PI / 4) * D * D;

const fault = (code: string, key: string, got: number, wanted: string, unit: string) =>
  new InputError({ code: `gas.air-gap.${code}`, path: `gas.airGap.${key}`, got: String(got), wanted, unit });
