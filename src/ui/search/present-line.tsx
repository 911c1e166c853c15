/** How far the stacks as they are lie off the wanted curve, in the unit of the answers, and what is asked of the answers' reserves. */
import type { JSX } from 'preact';
import type { PresentStacks } from '../../../workers/protocol.ts';
import type { SearchLimits } from '../../model/search-request.ts';
import { show, showNumber } from '../app/quantities.ts';
import { searchWords as words } from '../text/search.ts';
import { percent, reserve } from './judgement-words.ts';
import type { Study } from './study.ts';

function askedReserves({ minFatigueReserve: life, minYieldReserve: yielding }: SearchLimits): string[] {
  return [
    ...(life === undefined ? [] : [words.lifeAsked(showNumber(life, 2))]),
    ...(yielding === undefined ? [] : [words.yieldAsked(showNumber(yielding, 2))]),
  ];
}

function Standing({ judgement }: Pick<PresentStacks, 'judgement'>): JSX.Element {
  if (!judgement) return <p class="caution-text">{words.presentUnsolved}</p>;
  const { rms_N, rmsShare, fatigueReserve, yieldReserve } = judgement;
  return (
    <p>
      <strong>{words.present}</strong>:{' '}
      <span data-rms>{words.presentOff(show('force', rms_N), percent(rmsShare))}</span>;{' '}
      {words.presentReserves(reserve(fatigueReserve), reserve(yieldReserve))}
    </p>
  );
}

export function PresentLine({ of, present }: { of: Study; present: PresentStacks }): JSX.Element {
  const asked = askedReserves(of.request.limits ?? {});
  return (
    <div class="present" data-present>
      <Standing judgement={present.judgement} />
      {asked.length > 0 && <p class="hint">{words.reservesAsked(asked.join(', '))}</p>}
    </div>
  );
}
