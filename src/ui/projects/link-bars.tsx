/** Bars for links: what came with the address, and which link to copy. */
import type { JSX } from 'preact';
import { useEffect, useRef } from 'preact/hooks';
import { selectedBuild } from '../app/store.ts';
import { keeping } from '../text/keeping.ts';
import { Act, Bar } from './bar.tsx';
import { arrived, copyLink, leaveArrived, offer, openArrived } from './sharing.ts';

const words = keeping.link;

export function ArrivedBar(): JSX.Element | null {
  const document = arrived.value;
  if (!document) return null;
  const names = document.builds.map(({ name }) => name);
  return (
    <Bar kind="arrived" message={words.arrived(document.name || keeping.unnamed, names)}>
      <Act label={words.open} onClick={openArrived} />
      <Act label={words.leave} onClick={leaveArrived} />
    </Bar>
  );
}

function Address({ address }: { address: string }): JSX.Element {
  const box = useRef<HTMLInputElement>(null);
  useEffect(() => box.current?.select(), []);
  return (
    <label class="link-address">
      {words.copyByHand}
      <input ref={box} class="words" readOnly value={address} />
    </label>
  );
}

export function OfferBar(): JSX.Element | null {
  if (!offer.value) return null;
  const close = (): void => {
    offer.value = undefined;
  };
  return (
    <Bar kind="offer" message={words.offer}>
      {offer.value.address && <Address address={offer.value.address} />}
      <Act label={words.ofBuild(selectedBuild.value.name)} onClick={() => void copyLink('build')} />
      <Act label={words.ofProject} onClick={() => void copyLink('project')} />
      <Act label={words.close} onClick={close} />
    </Bar>
  );
}
