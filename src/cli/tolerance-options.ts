/** Options of `shimwright tolerance`. */
import type { Command } from './command.ts';
import { DEFAULTS, SAMPLES, SEED, TOLERANCES, tolerance } from './commands/tolerance.ts';
import { SPEEDS } from './curve-points.ts';
import { BUILD_CHOICE, CSV_OUTPUT, JSON_OUTPUT, THEORY } from './shared-options.ts';
import { tolerancesInWords } from './tolerance-list.ts';

export const TOLERANCE_COMMAND: Command = {
  name: 'tolerance',
  input: 'PROJECT',
  summary: 'how far the force scatters when parts, oil and gas lie off what is drawn, and what it scatters from',
  example: 'project.json --tolerances thickness=0.004,gas=0.2',
  options: [
    {
      name: SPEEDS,
      value: 'LIST',
      help: `shaft speeds in m/s, below 0 in rebound; ${DEFAULTS[SPEEDS]} unless said otherwise`,
    },
    BUILD_CHOICE,
    {
      name: TOLERANCES,
      value: 'LIST',
      help: `to both sides, kept by 95 of 100; those of the project unless said otherwise, and common practice where it says nothing:
${tolerancesInWords}`,
    },
    {
      name: SAMPLES,
      value: 'N',
      help: `a sample costs two curves and one for each tolerance; ${DEFAULTS[SAMPLES]} unless said otherwise`,
    },
    {
      name: SEED,
      value: 'N',
      help: `of its chance; the same seed gives the same; ${DEFAULTS[SEED]} unless said otherwise`,
    },
    THEORY,
    JSON_OUTPUT,
    CSV_OUTPUT,
  ],
  oneOf: ['json', 'csv'],
  run: tolerance,
};
