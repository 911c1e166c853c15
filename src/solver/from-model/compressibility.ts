/** What of a document says how stiff its oil is. */
import type { Fluid } from '../../model/project.ts';
import { pascalsFromGigapascals } from '../../units/si.ts';
import { type AeratedOil, aeratedOil } from '../fluid/bulk-modulus.ts';

/** What the document leaves open is taken from the table. @throws InputError as `aeratedOil` does */
export const aeratedOilFromDocument = (fluid: Pick<Fluid, 'bulkModulus_GPa' | 'entrainedAir_percent'>): AeratedOil =>
  aeratedOil({
    bulkModulus_Pa: fluid.bulkModulus_GPa === undefined ? undefined : pascalsFromGigapascals(fluid.bulkModulus_GPa),
    airFraction: fluid.entrainedAir_percent === undefined ? undefined : fluid.entrainedAir_percent / 100,
  });
