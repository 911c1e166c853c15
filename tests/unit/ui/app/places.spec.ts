import { beforeEach, describe, expect, it } from 'vitest';
import { position_m, position_mm, setPosition } from '../../../../src/ui/app/conditions.ts';
import { changeLayout, NOTHING_ASIDE } from '../../../../src/ui/app/layout-change.ts';
import { bodyAt, directionOf, placesOf, stackOf, valvingAt } from '../../../../src/ui/app/places.ts';
import {
  commit,
  direction,
  place,
  places,
  project,
  replaceProject,
  selectedBuild,
  selectedValving,
  showPlace,
  startWith,
  undoEdit,
} from '../../../../src/ui/app/store.ts';
import { FORK, REAR, readDemo } from '../helpers/demos.ts';

describe('the places of stacks', () => {
  it('are those of the layout, each with its direction and its stack', () => {
    expect(placesOf('monotube')).toEqual(['pistonCompression', 'pistonRebound']);
    expect(placesOf('twin-tube').map((each) => [each, directionOf(each), stackOf(each)])).toEqual([
      ['pistonCompression', 1, 'compression'],
      ['pistonRebound', -1, 'rebound'],
      ['baseCompression', 1, 'base'],
    ]);
  });

  it('of a base valve that is not there is a mistake, and no empty stack', () => {
    const rear = readDemo(REAR);
    expect(() => valvingAt(rear.builds[0], 'baseCompression')).toThrow('baseCompression');
    expect(() => bodyAt(rear.damper, 'baseCompression')).toThrow('baseCompression');
  });
});

describe('the place on show', () => {
  beforeEach(() => {
    startWith(readDemo(FORK), 'fork');
    showPlace('baseCompression');
  });

  it('is the stack of the base valve where there is one', () => {
    expect(selectedValving.value).toBe(selectedBuild.value.valves.baseCompression);
    expect(direction.value).toBe(1);
  });

  it('goes back to the piston when the layout loses the base valve, and returns with it', () => {
    commit(changeLayout(project.value, 'monotube', NOTHING_ASIDE).project, { label: 'layout' });
    expect([places.value.length, place.value]).toEqual([2, 'pistonCompression']);
    expect(selectedValving.value).toBe(selectedBuild.value.valves.pistonCompression);
    undoEdit();
    expect(place.value).toBe('baseCompression');
  });
});

describe('the place in the stroke', () => {
  beforeEach(() => startWith(readDemo(REAR), 'rear'));

  it('is mid-stroke until it is set, and again when it is emptied', () => {
    expect(position_mm.value).toBeUndefined();
    setPosition(20);
    expect([position_mm.value, position_m.value]).toEqual([20, 0.02]);
    setPosition(undefined);
    expect(position_m.value).toBeUndefined();
  });

  it('is left when the travel no longer reaches it, and in another project', () => {
    setPosition(project.value.damper.travel_mm);
    commit({ ...project.value, damper: { ...project.value.damper, travel_mm: 50 } }, { label: 'travel' });
    expect(position_mm.value).toBeUndefined();
    setPosition(30);
    replaceProject(readDemo(FORK), 'open', 'another');
    expect(position_mm.value).toBeUndefined();
  });
});
