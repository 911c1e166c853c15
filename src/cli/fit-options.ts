/** Options of `shimwright fit`. */
import { FIT_NAMES } from '../solver/index.ts';
import type { Command } from './command.ts';
import { COEFFICIENTS, fit } from './commands/fit.ts';
import { COLUMNS, FRICTION, GAS, MEASURED, MEASURED_SIGNS, PEAKS, WINDOW } from './measured-input.ts';
import { BUILD_CHOICE, CLICK_LIST, JSON_OUTPUT, POSITION_LIST, TEMPERATURE_LIST, THEORY } from './shared-options.ts';

export const FIT_COMMAND: Command = {
  name: 'fit',
  input: 'PROJECT',
  example: 'project.json --measured bench.csv --gas bench',
  summary:
    'coefficients of a build fitted to what a test bench measured, with how well they are known and what cannot be told',
  options: [
    {
      name: MEASURED,
      value: 'FILE',
      help: 'table of force against speed, or of force and position over time; what is kept with the build otherwise',
    },
    {
      name: COLUMNS,
      value: 'LIST',
      help: `which column holds what, by number or heading, with its unit: speed=2:mm/s,force=Load:lbf; speed, force, compressionForce, reboundForce, position, time; what the headings say otherwise`,
    },
    {
      name: MEASURED_SIGNS,
      value: 'LIST',
      help: 'what is above 0: speed=rebound,force=none,position=rebound; compression unless said otherwise',
    },
    {
      name: GAS,
      value: 'HOW',
      help: 'gas force: kept in the forces, taken off by the bench, or off the slowest-points, or an amount in N',
    },
    { name: FRICTION, value: 'N', help: 'friction to take off' },
    { name: WINDOW, value: 'S', help: 'width of the local parabola that gives the speed by position over time' },
    { name: PEAKS, help: 'keep the peak of every half cycle alone' },
    {
      name: COEFFICIENTS,
      value: 'LIST',
      help: `to fit; all that the damper has but the seats otherwise: ${FIT_NAMES.join(', ')}`,
    },
    BUILD_CHOICE,
    TEMPERATURE_LIST,
    POSITION_LIST,
    CLICK_LIST,
    THEORY,
    JSON_OUTPUT,
  ],
  run: fit,
};
