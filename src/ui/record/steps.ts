/** Which steps a damper has, in the order in which it comes apart. */
import type { Damper, ValvePlace } from '../../model/project.ts';
import type { RecordStep } from '../../model/record.ts';
import { hasBase } from '../app/places.ts';

/** A fork leg is drained through its open cap, after its spring; another damper through its open head, after its coil spring. */
const HEAD_TO_OIL = {
  fork: ['head', 'springs', 'oil'],
  other: ['springs', 'head', 'oil'],
} as const satisfies Record<string, readonly RecordStep[]>;

export function stepsOf({ layout }: Pick<Damper, 'layout'>): readonly RecordStep[] {
  return [
    'machine',
    'clicks',
    'gas',
    ...HEAD_TO_OIL[layout === 'cartridge' ? 'fork' : 'other'],
    'rod',
    'reboundStack',
    'compressionStack',
    'pistonFaces',
    ...(hasBase(layout) ? (['baseStack', 'baseFace', 'refillCheck'] as const) : []),
    'wear',
  ];
}

/** The place whose stack a step takes off. */
export const STACK_OF: Readonly<Partial<Record<RecordStep, ValvePlace>>> = {
  reboundStack: 'pistonRebound',
  compressionStack: 'pistonCompression',
  baseStack: 'baseCompression',
};
