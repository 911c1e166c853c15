/** Every word the bench shows, in English, by subject. A translation is a folder of these shapes. */
import { adjusterWords } from './adjusters.ts';
import { benchWords } from './bench.ts';
import { blankWords } from './blank.ts';
import { buildsWords } from './builds.ts';
import { chartWords } from './chart.ts';
import { cycleWords } from './cycle.ts';
import { damperWords } from './damper.ts';
import { effectsWords } from './effects.ts';
import { exportWords } from './export.ts';
import { materialWords } from './material.ts';
import { measureWords } from './measures.ts';
import { placeWords } from './places.ts';
import { planWords } from './plan.ts';
import { sectionWords } from './section.ts';
import { sectionPartWords } from './section-parts.ts';
import { shimsWords } from './shims.ts';
import { sketchWords } from './sketches.ts';
import { sweepWords } from './sweeps.ts';

import { theoryWords } from './theory.ts';

import { toleranceWords } from './tolerance.ts';

import { waveWords } from './wave.ts';

export const text = {
  ...benchWords,
  ...blankWords,
  ...buildsWords,
  ...adjusterWords,
  ...placeWords,
  ...planWords,
  ...sectionWords,
  ...sectionPartWords,
  ...chartWords,
  ...shimsWords,
  ...sweepWords,
  ...cycleWords,
  ...damperWords,
  ...effectsWords,
  ...exportWords,
  ...materialWords,
  ...measureWords,
  ...sketchWords,
  ...theoryWords,
  ...waveWords,
  ...toleranceWords,
};
