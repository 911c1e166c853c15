/** How this person looks at the section: heights, shading, the large view, and the part under pointer or keys. */
import { computed, signal } from '@preact/signals';
import { activeRow } from '../app/store.ts';

/** `fit` enlarges the heights as far as they fit, `1` draws them true, the others by that factor. */
export const HEIGHTS = ['fit', '1', '5', '10'] as const;
export type Heights = (typeof HEIGHTS)[number];

export const heights = signal<Heights>('fit');
export const axialFactor = computed(() => (heights.value === 'fit' ? undefined : Number(heights.value)));
/** The stack cut through its axis, or one shim seen from above: the one on the bench, or the larger of both in the large view. */
export const DRAWINGS = ['section', 'plan'] as const;
export type DrawingName = (typeof DRAWINGS)[number];
export const drawingShown = signal<DrawingName>('section');

export const stressShown = signal(true);
export const isLarge = signal(false);

/** Its id; none while nothing is pointed at. */
export const activePart = signal<string | undefined>(undefined);

export interface PartMark {
  readonly id: string;
  /** Row of the shim table, for a shim. */
  readonly row?: number;
}

/** Marks a part in the drawing, and its row in the shim table. */
export function markPart(part: PartMark | undefined): void {
  activePart.value = part?.id;
  activeRow.value = part?.row;
}

export const isMarked = (id: string): boolean => activePart.value === id;
