/** How the command line tells which theory gave a number. */
import {
  DEFAULT_THEORY,
  type Fallback,
  type ForceCurve,
  type StackPlace,
  type StackTheories,
  type Theory,
  type TheoryChoice,
} from '../solver/index.ts';
import type { Values } from './command.ts';
import type { Column } from './render/rows.ts';

/** The one that is asked for. */
export const theoryOf = (values: Values): TheoryChoice =>
  (values.get('theory') as TheoryChoice | undefined) ?? DEFAULT_THEORY;

/** What `auto` could not follow, in a sentence. */
export const fallbackInWords = ({ status, reason }: Fallback): string =>
  `the waves could not be followed (${status}: ${reason}); the round theory stands in, outside its proven range`;

/** Of the curve that a point belongs to. */
export interface TheoriesOfCurve {
  readonly theories: StackTheories;
  readonly fallbacks: readonly (readonly [StackPlace, Fallback])[];
}

export function theoriesOfCurve({ stacks }: Pick<ForceCurve, 'stacks'>, theories: StackTheories): TheoriesOfCurve {
  const places = Object.keys(stacks) as StackPlace[];
  const fallbacks = places.flatMap((place) => {
    const fallback = stacks[place]?.fallback;
    return fallback ? [[place, fallback] as const] : [];
  });
  return { theories, fallbacks };
}

/** Of the stack of the piston that works at a speed; at rest that of compression stands for both. */
export const pistonTheory = ({ compression, rebound }: StackTheories, shaftSpeed_m_s: number): Theory =>
  shaftSpeed_m_s < 0 ? rebound : compression;

/** Of the stack of the base valve; in rebound none works. */
export const baseTheory = ({ base }: StackTheories, shaftSpeed_m_s: number): Theory | null =>
  shaftSpeed_m_s < 0 ? null : (base ?? null);

interface AtSpeed {
  readonly shaftSpeed_m_s: number;
  readonly theories: StackTheories;
}

export const theoryColumns = (hasBase: boolean): Column<AtSpeed>[] => [
  {
    key: 'theory',
    heading: 'theory',
    read: ({ theories, shaftSpeed_m_s }) => pistonTheory(theories, shaftSpeed_m_s),
  },
  ...(hasBase
    ? [
        {
          key: 'baseTheory',
          heading: 'base theory',
          read: ({ theories, shaftSpeed_m_s }: AtSpeed) => baseTheory(theories, shaftSpeed_m_s),
        },
      ]
    : []),
];

/** What `auto` chose, where results stand for whole dampers. */
export const theoryTalk = (asked: TheoryChoice, theories: StackTheories): string[] =>
  asked === 'auto'
    ? [
        `theory: ${Object.entries(theories)
          .map(([place, theory]) => `${theory} (${place})`)
          .join(', ')}`,
      ]
    : [];
