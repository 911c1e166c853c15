/** `shimwright fit`: coefficients of a build out of what a test bench measured of it. */
import { decodeProject } from '../../model/codec.ts';
import type { Build, Measurement } from '../../model/project.ts';
import { FIT_NAMES, type FitDone, type FitName, type FitOutcome, fitBuild } from '../../solver/index.ts';
import { EXIT, type Outcome, type Request, UsageError, type Values } from '../command.ts';
import { readDocument } from '../input.ts';
import { MEASURED, type MeasuredFile, readMeasured } from '../measured-input.ts';
import { findBuild, headOf, occasionsOf } from '../occasions.ts';
import { json } from '../render/json.ts';
import { textTable } from '../render/text-table.ts';
import { theoryOf, theoryTalk } from '../theories.ts';

export const COEFFICIENTS = 'coefficients';

const SUSPECTED = {
  drives: 'the damper would push the bench along: one of the signs is likely the wrong way round',
  'too-fast': 'the peak speed is higher than benches drive: is the unit right?',
  'too-slow': 'the peak speed is lower than benches drive: is the unit right?',
  'too-strong': 'the peak force is higher than dampers bear: is the unit right?',
  'too-weak': 'the peak force is next to nothing: is the unit right?',
  'one-direction': 'all points are of one direction',
} as const;

function namesOf(values: Values): FitName[] | undefined {
  const list = values.get(COEFFICIENTS);
  return list?.split(',').map((written) => {
    const name = FIT_NAMES.find((each) => each.toLowerCase() === written.trim().toLowerCase());
    if (name) return name;
    throw new UsageError(`--${COEFFICIENTS}: got ${JSON.stringify(written)}, wanted any of ${FIT_NAMES.join(', ')}`);
  });
}

/** A file, or what is kept with the build. */
async function measuredOf(build: Build, values: Values): Promise<{ measurements: Measurement[]; file?: MeasuredFile }> {
  const path = values.get(MEASURED);
  if (path !== undefined) {
    const file = await readMeasured(path, values);
    return { measurements: [file.measurement], file };
  }
  const { measurements = [] } = build;
  if (measurements.length > 0) return { measurements };
  throw new UsageError(`fit needs --${MEASURED} FILE: no measurement is kept with the build ${build.name}`);
}

function tableOf({ coefficients }: FitDone, width: number): string {
  const rows = coefficients.map(({ name, unit, physical, value, low, high, leftOpen }) => [
    name,
    unit,
    physical,
    value,
    low,
    high,
    Math.round(leftOpen * 100),
  ]);
  return textTable(['coefficient', 'unit', 'physical', 'fitted', '95 % from', 'to', ['left open', '%']], rows, {
    width,
  });
}

/** Several directions may run through the same coefficients: they are told once. */
export function untoldLines({ untold }: Pick<FitDone, 'untold'>): string[] {
  const lines = untold.map(({ parts }) => {
    const names = parts.map(({ name }) => name).sort((a, b) => FIT_NAMES.indexOf(a) - FIT_NAMES.indexOf(b));
    const [first, ...others] = names;
    if (others.length === 0) return `The measurements cannot tell ${first}.`;
    return `The measurements cannot tell ${first} from ${others.join(' and ')}.`;
  });
  return [...new Set(lines)];
}

const rounded = (force?: number): string => (force === undefined ? 'no points' : `${force.toFixed(1)} N`);

function textOf(done: FitDone, width: number): string {
  const { before, after, scatter_N, pointCount } = done;
  const change = (way: 'compression_N' | 'rebound_N'): string => `${rounded(before[way])} to ${rounded(after[way])}`;
  return [
    tableOf(done, width),
    `${pointCount} points; scatter ${rounded(scatter_N)}.`,
    `Off the physical build, then off the fitted: compression ${change('compression_N')}, rebound ${change('rebound_N')}.`,
    ...untoldLines(done),
    '',
  ].join('\n');
}

function talkOf(file: MeasuredFile | undefined, outcome: FitOutcome): string[] {
  const { suspicions = [], outliersFound = 0 } = file?.read ?? {};
  return [
    ...suspicions.map((each) => SUSPECTED[each]),
    ...(outliersFound > 0 ? [`${outliersFound} outliers were left out of the fit`] : []),
    ...(outcome.status === 'fitted' ? [] : [`no fit: ${outcome.status}: ${outcome.reason}`]),
  ];
}

export async function fit({ file, values, width }: Request): Promise<Outcome> {
  const project = await readDocument(file, decodeProject);
  const build = findBuild(project, values);
  const names = namesOf(values);
  const [occasion, ...more] = occasionsOf(project, build, values);
  if (more.length > 0) throw new UsageError('fit takes one temperature, one position and one setting of the clicks');
  const measured = await measuredOf(build, values);
  const then = occasion.stroke_m === undefined ? {} : { position_mm: occasion.stroke_m * 1000 };
  const measurements = measured.measurements.map((each) => ({ ...each, conditions: { ...each.conditions, ...then } }));
  const theory = theoryOf(values);
  const outcome = fitBuild(occasion.project, build.id, { measurements, theory, ...(names && { names }) });
  const head = { format: 'shimwright/fit', version: 1, theory, ...headOf(project, build, values) };
  const reading = measured.file?.read;
  const told = {
    ...head,
    ...(reading && {
      reading: {
        rawCount: reading.rawCount,
        steps: reading.steps,
        outliers: reading.outliersFound,
        suspicions: reading.suspicions,
      },
    }),
    ...outcome,
  };
  const text = outcome.status === 'fitted' ? textOf(outcome, width) : '';
  return {
    exit: outcome.status === 'fitted' ? EXIT.done : EXIT.failed,
    result: values.has('json') ? json(told) : text,
    talk: [
      ...talkOf(measured.file, outcome),
      ...(outcome.status === 'fitted' ? outcome.theories.flatMap((used) => theoryTalk(theory, used)) : []),
    ],
  };
}
