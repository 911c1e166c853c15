/** How much of a tolerance is used: a bar that is full at the tolerance, and the number. */
import type { JSX } from 'preact';
import { proofWords } from '../text/proof.ts';
import { showShare } from './proof-numbers.ts';

export function UsedShare({ share }: { share: number }): JSX.Element {
  const isKnown = Number.isFinite(share);
  return (
    <span class={`used ${share <= 1 ? '' : 'over'}`}>
      <span class="used-bar" aria-hidden="true">
        <span style={{ width: `${Math.min(100, isKnown ? 100 * share : 100)}%` }} />
      </span>
      <span class="used-number">{isKnown ? showShare(share) : proofWords.cases.none}</span>
    </span>
  );
}

/** Within or outside, in words and by its mark. */
export function Result({ good, words }: { good: boolean; words: string }): JSX.Element {
  return <span class={`result ${good ? 'good' : 'bad'}`}>{words}</span>;
}
