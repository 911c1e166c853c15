import { beforeEach, describe, expect, it } from 'vitest';
import type { Viscosity } from '../../../../src/model/project.ts';
import { validateProject } from '../../../../src/model/validate.ts';
import { oilFromDocument } from '../../../../src/solver/index.ts';
import { startWith } from '../../../../src/ui/app/store.ts';
import { asKind, switchKind, VISCOSITY_KINDS } from '../../../../src/ui/app/viscosity-kinds.ts';
import { REAR, readDemo } from '../helpers/demos.ts';

const TWO_POINT: Viscosity = {
  kind: 'two-point',
  points: [
    { temperature_degC: 20, kinematicViscosity_cSt: 30 },
    { temperature_degC: 45, kinematicViscosity_cSt: 14 },
  ],
};
const INDEX: Viscosity = { kind: 'viscosity-index', kinematicViscosity40_cSt: 16, viscosityIndex: 180 };

beforeEach(() => startWith(readDemo(REAR), 'viscosity'));

describe('viscosity by another kind', () => {
  it.each(VISCOSITY_KINDS)('starts with what is known, as %s', (kind) => {
    for (const known of [TWO_POINT, INDEX, { kind: 'iso-grade', isoGrade: 22, viscosityIndex: 100 } as const]) {
      const fluid = { ...readDemo(REAR).fluid, viscosity: asKind(known, kind) };
      expect(validateProject({ ...readDemo(REAR), fluid }).ok).toBe(true);
      expect(() => oilFromDocument(fluid)).not.toThrow();
    }
  });

  it('takes over the viscosity at 40 °C, or what is nearest to it', () => {
    expect(asKind(TWO_POINT, 'viscosity-index')).toMatchObject({ kinematicViscosity40_cSt: 14 });
    expect(asKind(INDEX, 'iso-grade')).toEqual({ kind: 'iso-grade', isoGrade: 15, viscosityIndex: 180 });
    const points = (asKind(INDEX, 'two-point') as Extract<Viscosity, { kind: 'two-point' }>).points;
    expect(points[0]).toEqual({ temperature_degC: 40, kinematicViscosity_cSt: 16 });
    expect(points[1].kinematicViscosity_cSt).toBeLessThan(16);
  });

  it('is as it was typed when a person goes back', () => {
    const index = switchKind(TWO_POINT, 'viscosity-index');
    expect(index.kind).toBe('viscosity-index');
    expect(switchKind(index, 'two-point')).toEqual(TWO_POINT);
  });
});
