/** Every demo with its page and what it is called in the tables. */
import type { Project } from '../../../src/model/project.ts';
import { oilFromDocument } from '../../../src/solver/index.ts';
import { matterCases } from '../what-matters/cases.ts';
import { type DamperByHand, damperByHand } from './dampers.ts';
import { type ProgramPoints, programPoints } from './program.ts';

export interface HandDemo {
  readonly name: string;
  /** Under docs. */
  readonly page: string;
  readonly project: Project;
  readonly hand: DamperByHand;
  /** Of the strokes by hand, in their order. */
  readonly program: readonly ProgramPoints[];
}

const NAMES: Readonly<Record<string, Pick<HandDemo, 'name' | 'page'>>> = {
  'larkspur-trail-rear': { name: 'monotube', page: 'hand-monotube.md' },
  'larkspur-trail-fork': { name: 'cartridge', page: 'hand-cartridge.md' },
  'wagtail-hill-climb-rear': { name: 'twin-tube', page: 'hand-twin-tube.md' },
  'dunnock-mountain-bike-rear': { name: 'reservoir', page: 'hand-reservoir.md' },
};

/** At the speeds of the page on what matters. @throws Error for a demo without a page */
export const handDemos = (): HandDemo[] =>
  matterCases().map(({ id, project, speeds_m_s }) => {
    const named = NAMES[id];
    if (!named) throw new Error(`the demo ${id} has no page of its calculation by hand`);
    const hand = damperByHand(project, speeds_m_s, viscosityAt100(project));
    const speeds = hand.strokes.map(({ direction, speed }) => (direction === 'rebound' ? -speed : speed));
    return { ...named, project, hand, program: programPoints(project, speeds) };
  });

/** [mm2/s] */
function viscosityAt100({ fluid }: Project): number {
  const { density_kg_m3, dynamicViscosity_Pa_s } = oilFromDocument({ ...fluid, temperature_degC: 100 });
  return (dynamicViscosity_Pa_s / density_kg_m3) * 1e6;
}
