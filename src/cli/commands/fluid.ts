/** `shimwright fluid`: viscosity and density of a project's oil against temperature. */
import { decodeProject } from '../../model/codec.ts';
import type { Fluid } from '../../model/project.ts';
import { OIL_TEMPERATURES } from '../../model/project-schema.ts';
import { isoGradeEntry, oilFromDocument, WEIGHT_SPREADS, weightInWords } from '../../solver/index.ts';
import { EXIT, type Outcome, type Request, UsageError } from '../command.ts';
import { readDocument } from '../input.ts';
import { numberList } from '../number-list.ts';
import { csv } from '../render/csv.ts';
import { json } from '../render/json.ts';
import { type Cell, textTable } from '../render/text-table.ts';
import { TEMPERATURES } from './force.ts';

export const WEIGHT = 'weight';

const KEYS = [
  'oilTemperature_degC',
  'kinematicViscosity_cSt',
  'gradeLow_cSt',
  'gradeHigh_cSt',
  'density_kg_m3',
  'dynamicViscosity_mPa_s',
] as const;
const HEADINGS = ['oil °C', 'viscosity cSt', 'grade low cSt', 'grade high cSt', 'density kg/m3', 'viscosity mPa s'];

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

function rowAt(fluid: Fluid, temperature_degC: number): Cell[] {
  const warmed = { ...fluid, temperature_degC };
  const { density_kg_m3, dynamicViscosity_Pa_s } = oilFromDocument(warmed);
  const millipascalSeconds = dynamicViscosity_Pa_s * 1000;
  return [temperature_degC, kinematic_cSt(warmed), ...gradeLimits(warmed), density_kg_m3, millipascalSeconds];
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

export async function fluid({ file, values }: Request): Promise<Outcome> {
  const talk = remarks(values.get(WEIGHT));
  const { fluid: oil } = await readDocument(file, decodeProject);
  const list = values.get(TEMPERATURES);
  const temperatures = list === undefined ? [oil.temperature_degC] : numberList(list, TEMPERATURES, OIL_TEMPERATURES);
  const rows = temperatures.map((temperature_degC) => rowAt(oil, temperature_degC));
  if (values.has('csv')) return { exit: EXIT.done, result: csv(KEYS, rows), talk };
  if (values.has('json')) {
    const points = rows.map((row) => Object.fromEntries(KEYS.map((key, index) => [key, row[index]])));
    const result = json({ format: 'shimwright/fluid', version: 1, name: oil.name, points });
    return { exit: EXIT.done, result, talk };
  }
  return { exit: EXIT.done, result: textTable(HEADINGS, rows), talk };
}
