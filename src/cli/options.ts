/** The one table of commands and options: the help, the checks of a command line and the exit codes come from it. */
import { type Command, EXIT, type ExitCode } from './command.ts';
import { checkCommand } from './commands/check.ts';
import { compare } from './commands/compare.ts';
import { cycle, HYSTERESIS_SPEED } from './commands/cycle.ts';
import { flow } from './commands/flow.ts';
import { fluid, WEIGHT } from './commands/fluid.ts';
import { AIR, PRESSURES_BAR } from './commands/fluid-compression.ts';
import { BAND, force, WITHOUT_GAS } from './commands/force.ts';
import { lift, PRESSURES, STRESS } from './commands/lift.ts';
import { pressures } from './commands/pressures.ts';
import { ANSWERS, DEFAULTS, JSON_LINES, merge, SEED, SHARD, STARTS, STEPS, search } from './commands/search.ts';
import { sheetCommand } from './commands/sheet.ts';
import { CYCLES, FREQUENCIES, STROKE, TRACE } from './cycle-motion.ts';
import { FIT_COMMAND } from './fit-options.ts';
import { STACK, STACK_PLACES } from './lift-stack.ts';
import { POSITIONS, TEMPERATURES } from './occasions.ts';
import { AIM, DIAMETERS, KEEP_FACE, LIMITS, STACKS, THICKNESSES } from './search-question.ts';
import {
  BUILD_CHOICE,
  CLICK_LIST,
  CSV_OUTPUT,
  CURVE,
  JSON_OUTPUT,
  SEARCH_THEORY,
  TEMPERATURE_LIST,
  THEORY,
} from './shared-options.ts';
import { TOLERANCE_COMMAND } from './tolerance-options.ts';

export const COMMANDS: readonly Command[] = [
  {
    name: 'lift',
    input: 'FILE',
    summary: 'lift and stress of one stack, of a stack file or of a build in a project, at each pressure',
    example: 'stack.json --pressures-MPa 0.1,0.2,0.4',
    options: [
      {
        name: PRESSURES,
        value: 'LIST',
        required: true,
        help: 'pressures on the pressure zone in MPa, such as 0.1,0.2; 0.1 MPa is 1 bar',
      },
      { name: STACK, value: 'PLACE', choices: STACK_PLACES, help: 'of a project: which of its stacks' },
      { ...BUILD_CHOICE, help: `of a project: ${BUILD_CHOICE.help}` },
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
    example: 'project.json --speeds-m-s=-1,-0.3,-0.1,0.1,0.3,1',
    options: [
      ...CURVE,
      { name: BAND, help: 'how far the force may lie off, since coefficients are known to a range only' },
      { name: WITHOUT_GAS, help: 'the force without that of the gas, as a test bench shows it that has taken it off' },
      THEORY,
      JSON_OUTPUT,
      CSV_OUTPUT,
    ],
    oneOf: ['json', 'csv'],
    run: force,
  },
  {
    name: 'compare',
    input: 'PROJECT',
    summary: 'how much firmer builds are than the baseline, in newtons and as a share of its force without the gas',
    example: 'project.json --speeds-m-s=-1,-0.3,-0.1,0.1,0.3,1',
    options: [
      ...CURVE.filter((option) => option !== BUILD_CHOICE),
      { ...BUILD_CHOICE, help: 'id or name of the one build to compare; all unless said otherwise' },
      THEORY,
      JSON_OUTPUT,
      CSV_OUTPUT,
    ],
    oneOf: ['json', 'csv'],
    run: compare,
  },
  {
    name: 'pressures',
    input: 'PROJECT',
    summary: 'pressure in every chamber, how far from where oil pulls apart, and the gas that would prevent it',
    example: 'project.json --speeds-m-s=-1,1,3',
    options: [...CURVE, THEORY, JSON_OUTPUT, CSV_OUTPUT],
    oneOf: ['json', 'csv'],
    run: pressures,
  },
  {
    name: 'flow',
    input: 'PROJECT',
    summary: 'flow and share of each path through each valve, and the opening of its shims',
    example: 'project.json --speeds-m-s=-0.1,0.1,1 --clicks 0,6,12',
    options: [...CURVE, THEORY, JSON_OUTPUT, CSV_OUTPUT],
    oneOf: ['json', 'csv'],
    run: flow,
  },
  {
    name: 'cycle',
    input: 'PROJECT',
    summary: 'a damper driven over time: peak forces, energy, hysteresis, warming, lowest pressures',
    example: 'project.json --stroke-mm 40 --frequency-Hz 0.5,1,2,4',
    options: [
      { name: STROKE, value: 'MM', help: 'sine stroke from end to end' },
      {
        name: FREQUENCIES,
        value: 'LIST',
        help: 'of the sine stroke in Hz; several, such as 0.5,1,2, are run one by one',
      },
      { name: CYCLES, value: 'N', help: 'out and back, how often; the last one counts' },
      {
        name: POSITIONS,
        value: 'LIST',
        help: 'middle of the sine stroke, in mm from full extension; half the travel unless said otherwise',
      },
      {
        name: TRACE,
        value: 'FILE',
        help: `instead of a sine stroke: values between commas, semicolons or tabs under a header that names time_s or time_ms, and position_mm, position_m or position_in, from full extension; all of it counts`,
      },
      {
        name: HYSTERESIS_SPEED,
        value: 'SPEED',
        help: 'shaft speed in m/s at which to tell the hysteresis, both ways; half the peak speed unless said otherwise',
      },
      BUILD_CHOICE,
      TEMPERATURE_LIST,
      CLICK_LIST,
      THEORY,
      { name: 'json', help: 'print JSON: every run with its samples' },
      { name: 'csv', help: 'print comma-separated values: the samples of a single run, or a line a run' },
    ],
    oneOf: ['json', 'csv'],
    run: cycle,
  },
  FIT_COMMAND,
  {
    name: 'fluid',
    input: 'PROJECT',
    summary: "viscosity, density and stiffness of a project's oil, at each temperature and pressure",
    example: 'project.json --temperature 0,20,40,60',
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
    name: 'search',
    input: 'PROJECT',
    summary: 'stacks, laid from the drawer or from sizes given, that come near a wanted force curve',
    example: 'project.json --aim wanted.csv --max-changes 4',
    options: [
      {
        name: AIM,
        value: 'NAME',
        required: true,
        help: `an aim of the project by id or name, or a file: a table of speed and force under a line that names them with their units, such as shaftSpeed_m_s,force_N; forces at the shaft with friction, without that of the gas`,
      },
      BUILD_CHOICE,
      {
        name: STACKS,
        value: 'LIST',
        help: 'stacks that may change: compression, rebound, base; all that the aim has forces for',
      },
      { name: DIAMETERS, value: 'LIST', help: 'a catalogue of outer diameters, instead of the drawer' },
      { name: THICKNESSES, value: 'LIST', help: 'every one of them in these thicknesses, as many as needed' },
      { name: KEEP_FACE, help: 'the face shims stay those they are' },
      ...LIMITS.map(([name, , help]) => ({ name, value: 'NUMBER', help })),
      {
        name: STARTS,
        value: 'N',
        help: `searches begun anew, each from another stack; ${DEFAULTS.starts} unless said otherwise`,
      },
      { name: STEPS, value: 'N', help: `stacks that each proposes; ${DEFAULTS.steps} unless said otherwise` },
      { name: ANSWERS, value: 'N', help: `how many it hands on; ${DEFAULTS.answers} unless said otherwise` },
      {
        name: SEED,
        value: 'N',
        help: `of its chance; the same seed finds the same; ${DEFAULTS.seed} unless said otherwise`,
      },
      {
        name: SHARD,
        value: 'I/N',
        help: 'runs the I-th of N parts of the starts, for as many machines; merge puts their lines together',
      },
      SEARCH_THEORY,
      JSON_OUTPUT,
      { name: JSON_LINES, help: 'print a line of JSON for each start, as soon as it is done' },
    ],
    oneOf: ['json', JSON_LINES],
    run: search,
  },
  {
    name: 'merge',
    input: 'LINES',
    summary: 'one ranked list out of the lines of a search that ran in parts; - reads them from stdin',
    example: 'part-1.jsonl --answers 10',
    options: [{ name: ANSWERS, value: 'N', help: `how many; ${DEFAULTS.answers} unless said otherwise` }, JSON_OUTPUT],
    run: merge,
  },
  TOLERANCE_COMMAND,
  sheetCommand,
  checkCommand,
];

export const EXIT_MEANINGS: readonly (readonly [ExitCode, string])[] = [
  [EXIT.done, 'done'],
  [EXIT.failed, 'failed: at least one point or run did not solve; its status says why'],
  [EXIT.misuse, 'misuse: the command line or the input file is wrong'],
];
