/** What the page on what matters looks at: the stock build of every demo, at a slow, a middle and a fast shaft speed. */
import { DEMOS } from '../../../src/demo/index.ts';
import type { Project } from '../../../src/model/project.ts';
import { demoProject } from '../demo-project.ts';

export interface MatterCase {
  readonly id: string;
  readonly title: string;
  readonly project: Project;
  /** Rising; each is taken in both directions. */
  readonly speeds_m_s: readonly number[];
}

/** Slow: where the bleed has most to say. Fast: a hard hit; a wheel of a light bicycle is thrown up faster than that of a car. */
const SPEEDS: Readonly<Record<string, readonly number[]>> = {
  'larkspur-trail-rear': [0.05, 0.3, 1],
  'larkspur-trail-fork': [0.1, 0.5, 1.5],
  'wagtail-hill-climb-rear': [0.1, 0.3, 1],
  'dunnock-mountain-bike-rear': [0.05, 0.3, 1.5],
};

/** @throws Error for a demo without speeds or one that does not read */
export function matterCases(): MatterCase[] {
  return DEMOS.map(({ id, title }) => {
    const speeds_m_s = SPEEDS[id];
    if (!speeds_m_s) throw new Error(`the demo ${id} has no speeds`);
    return { id, title, project: demoProject(id), speeds_m_s };
  });
}
