/** The damper as it was taken apart: sizes, faces of its valves, oil and gas. Each group opens on its own. */
import type { JSX } from 'preact';
import { placesOf } from '../../app/places.ts';
import { project } from '../../app/store.ts';
import { text } from '../../text/en.ts';
import { BodyGroup } from './body-group.tsx';
import { GasGroup } from './gas-group.tsx';
import { OilGroup } from './oil-group.tsx';
import { PistonGroup } from './piston-group.tsx';
import { RefillGroup } from './refill-group.tsx';
import { SizesGroup } from './sizes-group.tsx';

export function DamperForm(): JSX.Element {
  const { damper } = project.value;
  return (
    <section class="sheet damper" aria-label={text.damper.title}>
      <header>
        <h2>{text.damper.title}</h2>
        <span class="hint">{damper.name}</span>
      </header>
      <SizesGroup />
      {placesOf(damper.layout).map((place) => (
        <BodyGroup key={place} place={place} />
      ))}
      <RefillGroup />
      <PistonGroup />
      <OilGroup />
      <GasGroup />
    </section>
  );
}
