/** Words for the places of stacks, by the layout of the damper, in English. */
import type { Layout, ValvePlace } from '../../model/project.ts';

interface PlaceWords {
  /** Alone on a tab. */
  readonly tab: string;
  readonly name: string;
  readonly stack: string;
  /** In front of a list of changes. */
  readonly letter: string;
}

const PISTON_REBOUND: PlaceWords = { tab: 'Rebound', name: 'Piston, rebound', stack: 'Rebound stack', letter: 'R' };
const PISTON: Record<ValvePlace, PlaceWords> = {
  pistonCompression: { tab: 'Compression', name: 'Piston, compression', stack: 'Compression stack', letter: 'C' },
  pistonRebound: PISTON_REBOUND,
  baseCompression: { tab: 'Base valve', name: 'Base valve, compression', stack: 'Base valve stack', letter: 'B' },
};

const PLACES: Record<Layout, Record<ValvePlace, PlaceWords>> = {
  monotube: PISTON,
  'monotube-reservoir': PISTON,
  'twin-tube': PISTON,
  cartridge: {
    ...PISTON,
    pistonCompression: { tab: 'Mid-valve', name: 'Mid-valve, compression', stack: 'Mid-valve stack', letter: 'M' },
  },
};

export const placeWords = {
  placeOf: (layout: Layout, place: ValvePlace): PlaceWords => PLACES[layout][place],
  way: { compression: 'Compression', rebound: 'Rebound' },
};
