/** What is known of one study of scatter: samples in pieces, in whatever order they come, and what was read off them last. */

import type { Samples, ToleranceReading, ToleranceSamples } from '../../../workers/protocol.ts';
import type { Failure } from '../app/reasons.ts';

/** Samples a piece: few enough that a stop loses little, enough that the damper as drawn, solved with every piece, costs little. */
export const PIECE = 4;

export interface Study {
  /** Everything that the samples depend on. */
  readonly key: string;
  readonly buildId: string;
  /** By the number of the piece. */
  readonly pieces: ReadonlyMap<number, ToleranceSamples>;
  readonly read?: { readonly reading: ToleranceReading; readonly samples: number };
  readonly failure?: Failure;
}

export const newStudy = (key: string, buildId: string): Study => ({ key, buildId, pieces: new Map() });

export const withPiece = (study: Study, piece: number, solved: ToleranceSamples): Study => ({
  ...study,
  pieces: new Map([...study.pieces, [piece, solved]]),
});

export const samplesOf = ({ pieces }: Study): number => pieces.size * PIECE;

/** Rising; those that are still to be solved for so many samples. */
export const missingPieces = ({ pieces }: Study, samples: number): number[] =>
  Array.from({ length: Math.ceil(samples / PIECE) }, (_, piece) => piece).filter((piece) => !pieces.has(piece));

/** In the order of the numbers of their samples: what is read off them does not depend on which worker was first. */
export const inOrder = ({ pieces }: Study): Samples[] =>
  [...pieces].sort(([p], [q]) => p - q).map(([, { samples }]) => samples);

/** Why some samples have no force, each reason once. */
export const refusalsOf = ({ pieces }: Study): string[] => [
  ...new Set([...pieces.values()].flatMap(({ refusals }) => refusals)),
];

/** Any piece, for what all of them share: speeds, forces as drawn, parts. */
export const anyPiece = ({ pieces }: Study): ToleranceSamples | undefined => pieces.values().next().value;
