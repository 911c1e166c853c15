/**
 * What `--clicks` asks for, clicks counted from closed:
 *   0,6,12                     a sweep of the only adjuster of the build, or of the needle in its piston
 *   needle=8,poppet=0/6/12     adjusters by name, a slash between several clicks; all of their combinations
 */
import { ADJUSTER_IDS, type AdjusterId, adjustersOf } from '../model/adjusters.ts';
import type { Build } from '../model/project.ts';
import type { Clicks } from '../model/setting.ts';
import { UsageError } from './command.ts';
import { numberList } from './number-list.ts';
import type { Asked } from './render/rows.ts';

export const CLICKS = 'clicks';

export interface Turned {
  readonly asked: readonly Asked[];
  readonly clicks: number | Clicks;
}

const MOST_SETTINGS = 10_000;

/** @throws UsageError for a text of neither form */
export function clickSettings(text: string, build: Build): Turned[] {
  if (!text.includes('='))
    return numberList(text, CLICKS, { from: 0 }).map((turned) => ({ asked: [bare(turned)], clicks: turned }));
  const adjusters = text.split(',').map((entry) => namedClicks(entry, build));
  const twice = adjusters.find(({ id }, i) => adjusters.findIndex((other) => other.id === id) < i);
  if (twice)
    throw new UsageError(
      `--${CLICKS}: ${twice.id} is given twice; several clicks of one adjuster are ${twice.id}=0/6/12`,
    );
  const count = adjusters.reduce((product, { clicks }) => product * clicks.length, 1);
  if (count > MOST_SETTINGS)
    throw new UsageError(`--${CLICKS} takes at most ${MOST_SETTINGS} settings, these are ${count}`);
  return adjusters.reduce<Turned[]>(
    (settings, adjuster) =>
      settings.flatMap((setting) => adjuster.clicks.map((turned) => also(setting, adjuster.id, turned))),
    [{ asked: [], clicks: {} }],
  );
}

interface NamedClicks {
  readonly id: AdjusterId;
  readonly clicks: readonly number[];
}

function namedClicks(entry: string, build: Build): NamedClicks {
  const [, name, list] = /^\s*([a-z-]+)=(\d+(?:\/\d+)*)\s*$/.exec(entry) ?? [];
  const got = `--${CLICKS}: got ${JSON.stringify(entry)}`;
  if (name === undefined)
    throw new UsageError(`${got}, wanted NAME=CLICKS such as needle=8, or needle=0/6/12 for several`);
  const id = ADJUSTER_IDS.find((known) => known === name);
  if (id === undefined) throw new UsageError(`${got}; ${namesOf(build)}`);
  return { id, clicks: list.split('/').map(Number) };
}

function namesOf(build: Build): string {
  const names = adjustersOf(build).map(({ id }) => id);
  return names.length > 0
    ? `the adjusters of build ${build.id} are ${names.join(', ')}`
    : `build ${build.id} has no adjuster`;
}

const also = ({ asked, clicks }: Turned, id: AdjusterId, turned: number): Turned => ({
  asked: [...asked, named(id, turned)],
  clicks: { ...(clicks as Clicks), [id]: turned },
});

const bare = (value: number): Asked => ({ key: 'clicks', heading: 'clicks', value, words: `${value} clicks` });

/** `base-needle` is `baseNeedleClicks` in JSON and CSV. */
const named = (id: AdjusterId, value: number): Asked => ({
  key: `${id.replace(/-[a-z]/g, (letter) => letter[1].toUpperCase())}Clicks`,
  heading: `${id} clicks`,
  value,
  words: `${id} at ${value} clicks`,
});
