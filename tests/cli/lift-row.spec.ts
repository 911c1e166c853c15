import { describe, expect, it } from 'vitest';
import { liftRow } from '../../src/cli/commands/lift.ts';
import { solveLift, stackFromFile } from '../../src/solver/index.ts';
import { soundStack } from '../helpers/documents.ts';

const stack = stackFromFile(soundStack());

describe('liftRow', () => {
  it('carries waviness last, and only where the solver found it', () => {
    const [{ waviness: _, ...point }] = solveLift(stack, [1e5], { theory: 'large-deflection' }).points as (ReturnType<
      typeof solveLift
    >['points'][number] & { waviness?: unknown })[];
    const bare = liftRow(point as never, 0.1);
    const wavy = liftRow({ ...point, waviness: { margin: 0.4, waves: 3 } } as never, 0.1);
    expect(Object.keys(bare)).not.toContain('waviness');
    expect(wavy).toEqual({ ...bare, waviness: { margin: 0.4, waves: 3 } });
    expect(Object.keys(wavy).at(-1)).toBe('waviness');
  });
});
