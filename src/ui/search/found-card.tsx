/** One found stack: how near it comes, what it keeps, how it differs from the one that is there, and the way to lay it. */
import type { JSX } from 'preact';
import type { FoundStacks } from '../../../workers/protocol.ts';
import { type PickLine, pickingList } from '../../model/picking-list.ts';
import type { ShimRow, ValvePlace } from '../../model/project.ts';
import { describeDifference } from '../app/difference.ts';
import { editOrTell } from '../app/edit-or-tell.ts';
import { tell } from '../app/notices.ts';
import { show, showField, writeField } from '../app/quantities.ts';
import { project, selectBuild } from '../app/store.ts';
import { undoAct } from '../app/undo-act.ts';
import { text } from '../text/en.ts';
import { searchWords as words } from '../text/search.ts';
import { againstPresent, percent, reserve } from './judgement-words.ts';
import { buildWith, namedBuild, pointed, previewed } from './preview.ts';
import { StackFigure } from './stack-figure.tsx';
import { buildOfStudy, type Study } from './study.ts';

interface CardProps {
  readonly of: Study;
  readonly found: FoundStacks;
  readonly rank: number;
}

const placeName = (place: ValvePlace): string => text.placeOf(project.value.damper.layout, place).name;

/** A project that was edited meanwhile may hold other builds; the new one is that which was judged. */
function makeBuild(of: Study, found: FoundStacks, rank: number): void {
  const taken = project.value.builds.map(({ id }) => id);
  const build = namedBuild(of, found, words.makeName(of.aimName, rank), taken);
  const edit = () => ({ ...project.value, builds: [...project.value.builds, build] });
  if (!editOrTell(edit, words.makeLabel)) return;
  selectBuild(build.id);
  tell(words.made(build.name), { action: undoAct() });
}

const WAVES: Readonly<Record<ValvePlace, keyof FoundStacks['judgement']['waves']>> = {
  pistonCompression: 'compression',
  pistonRebound: 'rebound',
  baseCompression: 'base',
};

function wavesInWords({ judgement: { waves } }: FoundStacks, places: readonly ValvePlace[]): string | undefined {
  const told = places.flatMap((place) => {
    const onset = waves[WAVES[place]];
    if (onset?.status === 'found') return [words.wavesFrom(placeName(place), show('pressure', onset.pressure_Pa))];
    return onset?.status === 'unknown' ? [words.wavesUnknown(placeName(place))] : [];
  });
  return told.length > 0 ? told.join('; ') : undefined;
}

/** Which theory gave the stacks that were searched; told since answers say so. */
function theoryOfStacks({ judgement: { theories } }: FoundStacks, places: readonly ValvePlace[]): string[] {
  const used = places.flatMap((place) => {
    const theory = theories?.[WAVES[place]];
    return theory ? [{ name: placeName(place), theory: text.theory[theory] }] : [];
  });
  if (used.length === 0) return [];
  const [{ theory: first }] = used;
  if (used.every(({ theory }) => theory === first)) return [first];
  return [used.map(({ name, theory }) => text.theories.ofStacks(theory, name)).join(', ')];
}

function Figures({ found, places }: { found: FoundStacks; places: readonly ValvePlace[] }): JSX.Element {
  const { worst, fatigueReserve, yieldReserve, gasMargin_Pa } = found.judgement;
  const waves = wavesInWords(found, places);
  const entries: [string, string][] = [
    [words.worst, words.worstAt(show('force', worst.difference_N), show('speed', worst.shaftSpeed_m_s))],
    [words.life, reserve(fatigueReserve)],
    [words.yield, reserve(yieldReserve)],
    [words.gas, show('pressure', gasMargin_Pa)],
    ...(waves === undefined ? [] : [[words.waves, waves] as [string, string]]),
    ...theoryOfStacks(found, places).map((name): [string, string] => [text.section.cells.theory, name]),
  ];
  return (
    <dl class="found-figures">
      {entries.map(([name, value]) => (
        <div key={name}>
          <dt>{name}</dt>
          <dd>{value}</dd>
        </div>
      ))}
    </dl>
  );
}

const rowsAt = (shims: FoundStacks['shims'], places: readonly ValvePlace[]): ShimRow[] =>
  places.flatMap((place) => [...(shims[place] ?? [])]);

function Pick({ lines }: { lines: readonly PickLine[] }): JSX.Element {
  const missing = lines.reduce((sum, line) => sum + line.missing, 0);
  return (
    <details class="picking">
      <summary data-missing={missing}>
        {words.pick}: {missing === 0 ? words.pickComplete : words.pickMissing(missing)}
      </summary>
      <table>
        <thead>
          <tr>
            {[words.pickSize, words.pickNeeded, words.pickStacks, words.pickDrawer, words.pickLacking].map((name) => (
              <th key={name} scope="col">
                {name}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {lines.map((line) => (
            <tr key={`${line.outerDiameter_mm} ${line.thickness_mm}`}>
              <th scope="row">
                {text.difference.size(
                  writeField('length', line.outerDiameter_mm),
                  showField('length', line.thickness_mm),
                )}
              </th>
              <td>{line.needed}</td>
              <td>{line.fromStacks}</td>
              <td>{line.fromDrawer}</td>
              <td class={line.missing > 0 ? 'lacking' : ''}>{line.missing}</td>
            </tr>
          ))}
        </tbody>
      </table>
    </details>
  );
}

export function FoundCard({ of, found, rank }: CardProps): JSX.Element {
  const { places } = of.request;
  const build = buildOfStudy(of);
  const rms = show('force', found.judgement.rms_N);
  const now = of.present?.judgement;
  const point = (): void => {
    pointed.value = rank - 1;
  };
  const length = (length_mm: number): string => writeField('length', length_mm);
  const difference = describeDifference(build, buildWith(build, found), project.value.damper.layout, length);
  const present = places.flatMap((place) => build.valves[place]?.shims ?? []);
  const lines = pickingList(rowsAt(found.shims, places), present, project.value.drawer);
  return (
    <li
      class={`found-card ${previewed.value?.rank === rank ? 'shown' : ''}`}
      aria-label={words.card(rank, rms)}
      data-rank={rank}
      onPointerEnter={point}
      onFocusIn={point}
    >
      <header>
        <h3>{words.rank(rank)}</h3>
        <p>
          <strong data-rms>{rms}</strong>{' '}
          <span class="hint" data-off>
            {words.off(percent(found.judgement.rmsShare))}
          </span>
          {now && (
            <span class="hint" data-against-now>
              {againstPresent(found.judgement.rms_N, now.rms_N)}
            </span>
          )}
        </p>
      </header>
      <div class="found-stacks">
        {places.map((place) => (
          <StackFigure
            key={place}
            name={text.placeOf(project.value.damper.layout, place).stack}
            rows={found.shims[place] ?? []}
          />
        ))}
      </div>
      <Figures found={found} places={places} />
      <p class="difference">
        <strong>{words.changes(found.changes)}</strong> · {difference}
      </p>
      <Pick lines={lines} />
      <button type="button" class="button make" onClick={() => makeBuild(of, found, rank)}>
        {words.make}
      </button>
    </li>
  );
}
