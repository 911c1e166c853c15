/** What must be known before a damper built from these numbers is ridden. */
import type { JSX } from 'preact';
import { text } from '../text/en.ts';

export function Cautions(): JSX.Element {
  return (
    <section class="cautions" aria-labelledby="cautions-title">
      <h2 id="cautions-title">{text.caution.title}</h2>
      <ul>
        <li>{text.caution.estimates}</li>
        <li>{text.caution.gas}</li>
        <li>{text.caution.ride}</li>
      </ul>
    </section>
  );
}
