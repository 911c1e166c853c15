/** The columns of `shimwright fluid` for oil under pressure, with air in it. */
import type { Fluid } from '../../model/project.ts';
import { aeratedOilFromDocument, airShare, densityAtPressure, effectiveBulkModulus } from '../../solver/index.ts';
import { fromSI, tidy } from '../../units/convert.ts';
import { absoluteFromGauge, pascalsFromBars } from '../../units/si.ts';
import { UsageError, type Values } from '../command.ts';
import { numberList } from '../number-list.ts';
import type { Cell, Heading } from '../render/text-table.ts';

export const PRESSURES_BAR = 'pressures-bar';
export const AIR = 'air-percent';

/** A gauge pressure and a share of free air at atmospheric pressure; without the latter, that of the document. */
export interface Squeeze {
  readonly gaugePressure_bar: number;
  readonly freeAir_percent: number | undefined;
}

export const SQUEEZE_KEYS = [
  'pressureGauge_bar',
  'freeAir_percent',
  'airThere_percent',
  'bulkModulus_GPa',
  'densityThere_kg_m3',
] as const;
export const SQUEEZE_HEADINGS: readonly Heading[] = [
  ['pressure', 'bar gauge'],
  ['free air', 'vol %'],
  ['air there', 'vol %'],
  ['bulk modulus', 'GPa'],
  ['density there', 'kg/m3'],
];

/** A full vacuum has no pressure left. */
const GAUGE_PRESSURES = { from: -1, upTo: 10_000 };
/** As in a document. */
const FREE_AIR = { from: 0, upTo: 30 };

/** Every air share at every pressure that was asked for; none without pressures. */
export function squeezes(values: Values): Squeeze[] {
  const [pressures, air] = [values.get(PRESSURES_BAR), values.get(AIR)];
  if (pressures === undefined) {
    if (air !== undefined) throw new UsageError(`--${AIR} needs --${PRESSURES_BAR}`);
    return [];
  }
  const shares = air === undefined ? [undefined] : numberList(air, AIR, { ...FREE_AIR, unit: '%' });
  const gauges = numberList(pressures, PRESSURES_BAR, { ...GAUGE_PRESSURES, unit: 'bar' });
  return shares.flatMap((freeAir_percent) =>
    gauges.map((gaugePressure_bar) => ({ gaugePressure_bar, freeAir_percent })),
  );
}

/** Cells of one row; the density is that of the oil at the pressure of the atmosphere. */
export function squeezeCells(
  fluid: Fluid,
  { gaugePressure_bar, freeAir_percent }: Squeeze,
  density_kg_m3: number,
): Cell[] {
  const oil = aeratedOilFromDocument({
    ...fluid,
    ...(freeAir_percent !== undefined && { entrainedAir_percent: freeAir_percent }),
  });
  const p = absoluteFromGauge(pascalsFromBars(gaugePressure_bar));
  return [
    gaugePressure_bar,
    tidy(oil.airFraction * 100),
    airShare(oil, p) * 100,
    fromSI(effectiveBulkModulus(oil, p), 'pressure', 'GPa'),
    densityAtPressure(oil, density_kg_m3, p),
  ];
}
