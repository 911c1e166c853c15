/** Words of the guided lessons, in English. */
import type { Part } from '../lessons/parts.ts';
import { lessonTexts } from './lesson-texts.ts';

const stackParts = (way: string) =>
  ({
    'face-thickness': `the thickness of the ${way} face shim`,
    face: `the ${way} face shim`,
    'second-thickness': `the thickness of the second ${way} shim`,
    shims: `other ${way} shims`,
    clamp: `the ${way} clamp`,
    seat: `the ${way} seat height`,
    stack: `other settings of the ${way} stack`,
  }) as const;

type StackWords<Way extends string> = { [K in keyof ReturnType<typeof stackParts> as `${Way}-${K}`]: string };

const prefixed = <Way extends 'compression' | 'rebound'>(way: Way): StackWords<Way> =>
  Object.fromEntries(
    Object.entries(stackParts(way)).map(([part, words]) => [`${way}-${part}`, words]),
  ) as StackWords<Way>;

const parts: Readonly<Record<Part, string>> = {
  ...prefixed('compression'),
  ...prefixed('rebound'),
  'rebound-ports': 'the rebound ports',
  bleed: 'the bleed',
  build: 'other parts of your build',
  'other-build': 'the build “As it was”',
  damper: 'the damper',
  temperature: 'the oil temperature',
  oil: 'the oil',
  'gas-pressure': 'the gas pressure',
  gas: 'the gas',
};

export const lessonsWords = {
  button: 'Lessons',
  buttonWhy: 'Short guided lessons on the bench, each with a question that you answer by changing the damper',
  title: 'Lessons',
  intro:
    'Each lesson opens an invented damper of its own and asks you to change it. Your project stays as it is, and leaving a lesson brings it back.',
  list: 'All lessons',
  done: 'done',
  doneCount: (done: number, all: number) => `${done} of ${all} done`,
  place: (n: number, all: number) => `Lesson ${n} of ${all}`,
  close: 'Close the lessons',
  less: 'Result only',
  more: 'Whole lesson',
  previous: 'Previous',
  next: 'Next',
  again: 'Start again',
  leave: 'Leave',
  leaveWhy: 'Back to your own project, as you left it',
  open: (title: string) => `Lesson: ${title}`,
  leaving: 'Leave the lesson',
  question: 'Your turn',
  steps: 'What to look at',
  project: (title: string) => `Lesson: ${title} (invented)`,
  projectNotes:
    'Invented: no such machine, maker or rider exists. Made for a lesson; change what you like, your own project is not touched.',
  ownBuild: 'Yours',
  startBuild: 'As it was',
  result: 'Result',
  measure: 'Force without that of the gas, against “As it was”. Choose “Less gas” on the charts to read it there.',
  measureStart: 'Force without that of the gas, against the start of the lesson.',
  met: 'Met.',
  notYet: 'Not yet.',
  solving: 'Solving…',
  startFailed: 'The start of the lesson could not be solved, so there is nothing to compare with.',
  way: { compression: 'Compression', rebound: 'Rebound' },
  at: (way: string, speed: string) => `${way} at ${speed}`,
  asBefore: (limit: string) => `as before, within ${limit}`,
  between: (least: string, most: string) => `${least} to ${most}`,
  marginOf: (at: string) => `${at}, oil pressure above where air comes out`,
  now: (measured: string) => `now ${measured}`,
  state: {
    force: { met: 'as asked', 'too-low': 'too soft', 'too-high': 'too firm' },
    margin: { met: 'as asked', 'too-low': 'too little', 'too-high': 'more than needed' },
  },
  noNumber: {
    'not-solved': 'not solved, so there is no number',
    'beyond-chart': 'the charts end before this speed: raise “Up to” on the charts',
  },
  strayed: (names: readonly string[]) => `Also changed: ${names.join(', ')}. Put it back, or undo.`,
  nothingStrayed: 'Nothing else changed.',
  ownIsGone: 'The build “Yours” is gone. Undo brings it back.',
  parts,
  lessons: lessonTexts,
};
