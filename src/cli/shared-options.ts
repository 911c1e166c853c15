/** Options that several commands share. */
import { ADJUSTER_IDS } from '../model/adjusters.ts';
import { DEFAULT_THEORY, type TheoryChoice } from '../solver/index.ts';
import { CLICKS } from './clicks.ts';
import type { Option } from './command.ts';
import { SPEEDS } from './curve-points.ts';
import { BUILD, POSITIONS, TEMPERATURES } from './occasions.ts';

const THEORIES: readonly TheoryChoice[] = ['auto', 'small-deflection', 'large-deflection', 'port-periodic'];
export const THEORY: Option = {
  name: 'theory',
  value: 'NAME',
  choices: THEORIES,
  help: `plate theory; ${DEFAULT_THEORY} unless said otherwise: large-deflection where a stack stays round under many ports, port-periodic, which follows the waves of its rim, elsewhere; what was used is told`,
};
/** Of a search, which tries thousands of stacks. */
export const SEARCH_THEORY: Option = {
  ...THEORY,
  choices: THEORIES.filter((theory) => theory !== 'port-periodic'),
  help: `plate theory; ${DEFAULT_THEORY} unless said otherwise: stacks are tried with large-deflection, and those that are handed on are judged as every other command would; what was used is told`,
};
export const JSON_OUTPUT: Option = { name: 'json', help: 'print JSON instead of a table' };
export const CSV_OUTPUT: Option = { name: 'csv', help: 'print comma-separated values instead of a table' };

const SPEED_LIST: Option = {
  name: SPEEDS,
  value: 'LIST',
  required: true,
  help: 'shaft speeds in m/s, below 0 in rebound, such as -0.5,0.1,0.5',
};
export const BUILD_CHOICE: Option = {
  name: BUILD,
  value: 'NAME',
  help: 'id or name of the build; the baseline unless said otherwise',
};
export const TEMPERATURE_LIST: Option = {
  name: TEMPERATURES,
  value: 'LIST',
  help: 'oil temperatures in °C, such as 20,60; that of the project unless said otherwise',
};
export const POSITION_LIST: Option = {
  name: POSITIONS,
  value: 'LIST',
  help: 'where the piston stands, in mm of stroke from full extension, such as 0,40; half the travel unless said otherwise',
};
export const CLICK_LIST: Option = {
  name: CLICKS,
  value: 'LIST',
  help: `clicks from closed: 0,6,12 turns the only adjuster of the build, or else the needle in its piston; by name, with a slash between several, as needle=8,poppet=0/6/12. The names that a build may have are ${ADJUSTER_IDS.join(', ')}`,
};
/** What the static curves share; several settings give every combination. */
export const CURVE: readonly Option[] = [SPEED_LIST, BUILD_CHOICE, TEMPERATURE_LIST, POSITION_LIST, CLICK_LIST];
