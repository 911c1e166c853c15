/** The title block of the sheet: what is drawn, at which scale, by which theory, at which speed. */

import type { JSX } from 'preact';
import { millimetresFromMetres } from '../../units/si.ts';
import { show, showRatio } from '../app/quantities.ts';
import type { Theory } from '../app/solved.ts';
import { cursorSpeed } from '../app/store.ts';
import type { DrawnStack } from '../app/views.ts';
import { text } from '../text/en.ts';
import { PartReadout } from './part-walk.tsx';
import type { Sheet } from './sheet.ts';

/** Lift over the face shim's thickness above which small deflection shows some 10 % too much. */
const SMALL_DEFLECTION_LIMIT = 0.7;

const largest = (values: readonly number[]): number => Math.max(...values);

const theoryName = (theory: Theory, awaitsWaves = false): string =>
  awaitsWaves ? text.theories.followed(text.theory[theory]) : text.theory[theory];

function cellsOf(sheet: Sheet, stack: DrawnStack): [string, string][] {
  const { build, state, theory } = stack;
  const none = text.readout.none;
  const { cells } = text.section;
  const ofAll = (name: string): string => (state && state.shape.waves > 0 ? text.wave.ofMean(name) : name);
  const scale =
    sheet.axial === 1
      ? text.section.scaleTrue(`${sheet.radial}`)
      : text.section.scale(`${sheet.radial}`, `${sheet.axial}`);
  return [
    [cells.build, build.name],
    [cells.scale, scale],
    [cells.theory, theory ? theoryName(theory, stack.awaitsWaves) : none],
    [cells.cursor, show('speed', cursorSpeed.value)],
    [cells.pressure, state ? show('pressure', state.pressure_Pa) : none],
    [ofAll(cells.opening), state ? show('lift', state.seatOpening_m) : none],
    [ofAll(cells.lift), state ? show('lift', state.shimEdgeLift_m[0]) : none],
    [cells.stress, state ? show('stress', largest(state.shimStress_Pa)) : none],
  ];
}

/** What to know of a state beyond the range in which its theory is proven. */
function beyondRange({ state, valving, theory, waves }: DrawnStack): string | undefined {
  if (!state) return undefined;
  const { beyondRange: words } = text.section;
  if (waves?.status === 'unknown') return words.wavesUnknown;
  if (waves?.status === 'found' && state.pressure_Pa >= waves.pressure_Pa) return words.waves(waves.waves);
  const ratio = millimetresFromMetres(state.shimEdgeLift_m[0]) / valving.shims[0].thickness_mm;
  return theory === 'small-deflection' && ratio > SMALL_DEFLECTION_LIMIT
    ? words.smallDeflection(showRatio(ratio))
    : undefined;
}

/** While a part is pointed at, its numbers stand over the block, so that nothing moves. */
export function TitleBlock({ sheet, stack }: { sheet: Sheet; stack: DrawnStack }): JSX.Element {
  const note = stack.state ? beyondRange(stack) : text.section.atRest;
  return (
    <>
      <div class="sheet-foot">
        <dl class="title-block" title={text.section.scaleWhy}>
          {cellsOf(sheet, stack).map(([name, value]) => (
            <div key={name}>
              <dt>{name}</dt>
              <dd>{value}</dd>
            </div>
          ))}
        </dl>
        <PartReadout />
      </div>
      {note && <p class="sheet-note">{note}</p>}
    </>
  );
}
