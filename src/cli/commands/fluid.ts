/** `shimwright fluid`: viscosity and density of a project's oil against temperature, and its stiffness under pressure. */
import { decodeProject } from '../../model/codec.ts';
import type { Fluid } from '../../model/project.ts';
import { OIL_TEMPERATURES } from '../../model/project-schema.ts';
import { USUAL_INDEX, unusualIndex } from '../../model/viscosity-reach.ts';
import { isoGradeEntry, oilFromDocument, WEIGHT_SPREADS, weightInWords } from '../../solver/index.ts';
import { EXIT, type Outcome, type Request, UsageError } from '../command.ts';
import { readDocument } from '../input.ts';
import { numberList } from '../number-list.ts';
import { TEMPERATURES } from '../occasions.ts';
import { extrapolatedAt } from '../oil-reach.ts';
import { csv } from '../render/csv.ts';
import { json } from '../render/json.ts';
import { type Cell, type Heading, textTable } from '../render/text-table.ts';
import { SQUEEZE_HEADINGS, SQUEEZE_KEYS, type Squeeze, squeezeCells, squeezes } from './fluid-compression.ts';

export const WEIGHT = 'weight';

const KEYS = [
  'oilTemperature_degC',
  'kinematicViscosity_cSt',
  'gradeLow_cSt',
  'gradeHigh_cSt',
  'density_kg_m3',
  'dynamicViscosity_mPa_s',
] as const;
const HEADINGS: readonly Heading[] = [
  ['oil', '°C'],
  ['viscosity', 'cSt'],
  ['grade low', 'cSt'],
  ['grade high', 'cSt'],
  ['density', 'kg/m3'],
  ['viscosity', 'mPa s'],
];

const SQUARE_METRES_PER_CENTISTOKE = 1e-6;

function kinematic_cSt(fluid: Fluid): number {
  const { dynamicViscosity_Pa_s, density_kg_m3 } = oilFromDocument(fluid);
  return dynamicViscosity_Pa_s / density_kg_m3 / SQUARE_METRES_PER_CENTISTOKE;
}

/** The thinnest and the thickest oil of the grade, of the same index; no limits where the oil itself is known. */
function gradeLimits(fluid: Fluid): [number | null, number | null] {
  const { viscosity } = fluid;
  if (viscosity.kind !== 'iso-grade') return [null, null];
  const { low_mm2_s, high_mm2_s } = isoGradeEntry(viscosity.isoGrade);
  const at = (kinematicViscosity40_cSt: number): number => {
    const { viscosityIndex } = viscosity;
    return kinematic_cSt({
      ...fluid,
      viscosity: { kind: 'viscosity-index', kinematicViscosity40_cSt, viscosityIndex },
    });
  };
  return [at(low_mm2_s), at(high_mm2_s)];
}

/** One row, or one for each way the oil is squeezed. */
function rowsAt(fluid: Fluid, temperature_degC: number, squeezed: readonly Squeeze[]): Cell[][] {
  const warmed = { ...fluid, temperature_degC };
  const { density_kg_m3, dynamicViscosity_Pa_s } = oilFromDocument(warmed);
  const millipascalSeconds = dynamicViscosity_Pa_s * 1000;
  const row = [temperature_degC, kinematic_cSt(warmed), ...gradeLimits(warmed), density_kg_m3, millipascalSeconds];
  if (squeezed.length === 0) return [row];
  return squeezed.map((squeeze) => [...row, ...squeezeCells(fluid, squeeze, density_kg_m3)]);
}

function remarks(weight: string | undefined): string[] {
  if (weight === undefined) return [];
  const words = numberList(weight, WEIGHT).map(weightInWords);
  const known = WEIGHT_SPREADS.map((spread) => spread.weight).join(', ');
  return words.map((sentence) => {
    if (sentence) return sentence;
    throw new UsageError(`--${WEIGHT}: got ${JSON.stringify(weight)}, wanted weights of ${known}`);
  });
}

/** What of the table is further from the data sheet than a person may think. */
function reachRemarks(oil: Fluid, temperatures_degC: readonly number[]): string[] {
  const index = unusualIndex(oil.viscosity);
  return [
    ...extrapolatedAt(oil, temperatures_degC),
    ...(index === undefined
      ? []
      : [`a viscosity index of ${index} is unusual: oils for dampers have ${USUAL_INDEX.from} to ${USUAL_INDEX.upTo}`]),
  ];
}

/** What a row is asked at comes first in the table: temperature, pressure and free air. */
function named<Entry>(row: readonly Entry[]): Entry[] {
  const [temperature, ...oil] = row.slice(0, KEYS.length);
  const [pressure, air, ...there] = row.slice(KEYS.length);
  return [temperature, pressure, air, ...oil, ...there];
}

export async function fluid({ file, values, width }: Request): Promise<Outcome> {
  const weights = remarks(values.get(WEIGHT));
  const { fluid: oil } = await readDocument(file, decodeProject);
  const list = values.get(TEMPERATURES);
  const temperatures =
    list === undefined ? [oil.temperature_degC] : numberList(list, TEMPERATURES, { ...OIL_TEMPERATURES, unit: '°C' });
  const talk = [...reachRemarks(oil, temperatures), ...weights];
  const squeezed = squeezes(values);
  const rows = temperatures.flatMap((temperature_degC) => rowsAt(oil, temperature_degC, squeezed));
  const keys = [...KEYS, ...(squeezed.length > 0 ? SQUEEZE_KEYS : [])];
  if (values.has('csv')) return { exit: EXIT.done, result: csv(keys, rows), talk };
  if (values.has('json')) {
    const points = rows.map((row) => Object.fromEntries(keys.map((key, index) => [key, row[index]])));
    const result = json({ format: 'shimwright/fluid', version: 1, name: oil.name, points });
    return { exit: EXIT.done, result, talk };
  }
  const table =
    squeezed.length > 0
      ? textTable(named([...HEADINGS, ...SQUEEZE_HEADINGS]), rows.map(named), { width, names: 3 })
      : textTable(HEADINGS, rows, { width });
  return { exit: EXIT.done, result: table, talk };
}
