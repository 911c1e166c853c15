/** The one table of commands and options: the help, the checks of a command line and the exit codes come from it. */
import { DEFAULT_THEORY, type Theory } from '../solver/index.ts';
import { type Command, EXIT, type ExitCode, type Option } from './command.ts';
import { check } from './commands/check.ts';
import { fluid, WEIGHT } from './commands/fluid.ts';
import { AIR, PRESSURES_BAR } from './commands/fluid-compression.ts';
import { BAND, CLICKS, force, SPEEDS, TEMPERATURES } from './commands/force.ts';
import { lift, PRESSURES, STRESS } from './commands/lift.ts';

const THEORIES: readonly Theory[] = ['small-deflection', 'large-deflection'];
const THEORY: Option = {
  name: 'theory',
  value: 'NAME',
  choices: THEORIES,
  help: `plate theory; ${DEFAULT_THEORY} unless said otherwise`,
};
const JSON_OUTPUT: Option = { name: 'json', help: 'print JSON instead of a table' };
const CSV_OUTPUT: Option = { name: 'csv', help: 'print comma-separated values instead of a table' };

export const COMMANDS: readonly Command[] = [
  {
    name: 'lift',
    input: 'FILE',
    summary: 'lift and stress of the stack in a stack file, at each pressure',
    options: [
      {
        name: PRESSURES,
        value: 'LIST',
        required: true,
        help: 'pressures on the pressure zone in MPa, such as 0.1,0.2',
      },
      THEORY,
      { name: STRESS, help: 'also the peak stress of every shim, where it is, and its reserves of life and of yield' },
      JSON_OUTPUT,
      CSV_OUTPUT,
    ],
    oneOf: ['json', 'csv'],
    run: lift,
  },
  {
    name: 'force',
    input: 'PROJECT',
    summary: 'force of one build of a project, at each shaft speed',
    options: [
      {
        name: SPEEDS,
        value: 'LIST',
        required: true,
        help: 'shaft speeds in m/s, below 0 in rebound, such as -0.5,0.1,0.5',
      },
      { name: 'build', value: 'NAME', help: 'id or name of the build; the baseline unless said otherwise' },
      {
        name: TEMPERATURES,
        value: 'LIST',
        help: 'oil temperatures in °C, such as 20,60; that of the project unless said otherwise',
      },
      { name: CLICKS, value: 'LIST', help: 'clicks of the bleed needle from closed, such as 0,6,12' },
      { name: BAND, help: 'how far the force may lie off, since coefficients are known to a range only' },
      THEORY,
      JSON_OUTPUT,
      CSV_OUTPUT,
    ],
    oneOf: ['json', 'csv'],
    run: force,
  },
  {
    name: 'fluid',
    input: 'PROJECT',
    summary: "viscosity, density and stiffness of a project's oil, at each temperature and pressure",
    options: [
      { name: TEMPERATURES, value: 'LIST', help: 'in °C, such as 20,60; that of the project unless said otherwise' },
      {
        name: WEIGHT,
        value: 'LIST',
        help: 'also says what viscosities are sold under these weight numbers, which are none themselves',
      },
      { name: PRESSURES_BAR, value: 'LIST', help: 'also the bulk modulus and density at these gauge pressures in bar' },
      { name: AIR, value: 'LIST', help: 'free air in the oil then, percent by volume; that of the project otherwise' },
      JSON_OUTPUT,
      CSV_OUTPUT,
    ],
    oneOf: ['json', 'csv'],
    run: fluid,
  },
  {
    name: 'check',
    input: 'FILE',
    summary: 'whether a project or a stack file holds, and every fault if not',
    options: [{ name: 'json', help: 'print the report as JSON' }],
    run: check,
  },
];

export const EXIT_MEANINGS: readonly (readonly [ExitCode, string])[] = [
  [EXIT.done, 'done'],
  [EXIT.failed, 'failed: at least one point did not solve; its status says why'],
  [EXIT.misuse, 'misuse: the command line or the input file is wrong'],
];
