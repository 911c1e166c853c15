/** The way from the bench to the proof; back on the bench, the keyboard goes on from here. */
import type { JSX } from 'preact';
import { useEffect, useRef } from 'preact/hooks';
import { cameFrom } from '../app/route.ts';
import { proofGateWords } from '../text/proof-gate.ts';

export function ProofLink(): JSX.Element {
  const link = useRef<HTMLAnchorElement>(null);
  useEffect(() => {
    if (cameFrom.value === 'proof') link.current?.focus();
  }, []);
  return (
    <a class="button" href="#proof" ref={link} title={proofGateWords.linkWhy}>
      {proofGateWords.link}
    </a>
  );
}
