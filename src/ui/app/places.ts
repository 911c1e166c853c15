/** Where the stacks of a damper are: which places its layout has, and what each belongs to. */
import type { Build, Damper, Layout, ValveBody, ValvePlace, Valving } from '../../model/project.ts';
import type { StackPlace } from './solved.ts';

export type Direction = 1 | -1;

const PISTON: readonly ValvePlace[] = ['pistonCompression', 'pistonRebound'];
const PISTON_AND_BASE: readonly ValvePlace[] = [...PISTON, 'baseCompression'];

export const hasBase = (layout: Layout): boolean => layout !== 'monotube';

export const placesOf = (layout: Layout): readonly ValvePlace[] => (hasBase(layout) ? PISTON_AND_BASE : PISTON);

/** The direction of motion in which the stack of a place works. */
export const directionOf = (place: ValvePlace): Direction => (place === 'pistonRebound' ? -1 : 1);

const STACKS: Record<ValvePlace, StackPlace> = {
  pistonCompression: 'compression',
  pistonRebound: 'rebound',
  baseCompression: 'base',
};

/** The same place as the solver names it. */
export const stackOf = (place: ValvePlace): StackPlace => STACKS[place];

function present<Item>(item: Item | undefined, place: ValvePlace): Item {
  if (item === undefined) throw new Error(`there is nothing at ${place}`);
  return item;
}

/** @param place that the layout of the damper has: the document was checked for it */
export const valvingAt = (build: Build, place: ValvePlace): Valving => present(build.valves[place], place);

/** @param place that the layout of the damper has: the document was checked for it */
export const bodyAt = (damper: Damper, place: ValvePlace): ValveBody => present(damper.valves[place], place);
