/** What the hatched area of the force chart is, in sentences. */
import { gasForce } from '../app/preferences.ts';
import { selectedBuild } from '../app/store.ts';
import { text } from '../text/en.ts';
import { shownStudy } from './tolerance-solve.ts';

const words = text.tolerance;

/** As sentences, for the chart and for its picture. */
export function hatchLines(): string[] {
  const { study, stale } = shownStudy.value;
  const { name } = selectedBuild.value;
  if (!study?.read) return [words.noHatched(name)];
  return [
    words.hatched(name, words.samplesOf(study.read.samples)),
    ...(stale ? [words.hatchedStale] : []),
    ...(gasForce.value === 'subtracted' ? [words.hatchedGas] : []),
  ];
}
