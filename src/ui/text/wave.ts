/** Words about stacks that wave round the circle, and their plan view, in English. */
import { plural } from './plural.ts';

export const waveWords = {
  wave: {
    crest: 'Crest',
    trough: 'Trough',
    mean: 'Mean',
    rim: (lift: string) => `rim lift ${lift}`,
    opening: (opening: string) => `opening ${opening}`,
    crestOf: (waves: number) => `Crest of ${plural(waves, 'wave', 'waves')}`,
    ofMean: (name: string) => `${name}, mean`,
    at: { crest: (name: string) => `${name}, crest`, trough: (name: string) => `${name}, trough` },
    describe: (waves: number) =>
      ` It waves ${waves} times round the circle: the left half is cut through a crest, the right half through a trough.`,
    legend: (unit: string) => `Stress at the crest, ${unit}`,
  },
};
