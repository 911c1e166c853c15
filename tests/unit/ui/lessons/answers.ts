/** A stored answer to every lesson, and answers that miss it: edits of the person's own build or of the bench's document. */
import type { Build, Project } from '../../../../src/model/project.ts';
import { changeBuild } from '../../../../src/ui/app/edits.ts';
import { OWN_BUILD } from '../../../../src/ui/lessons/document.ts';
import type { LessonId } from '../../../../src/ui/lessons/lesson.ts';

type Edit = (start: Project) => Project;

const own =
  (change: (build: Build) => void): Edit =>
  (start) =>
    changeBuild(start, OWN_BUILD, (build) => {
      const copy = structuredClone(build);
      change(copy);
      return copy;
    });

const compression = (build: Build) => build.valves.pistonCompression;
const rebound = (build: Build) => build.valves.pistonRebound;

const shimThickness = (row: number, thickness_mm: number): Edit =>
  own((build) => {
    compression(build).shims[row].thickness_mm = thickness_mm;
  });
const clamp = (clampDiameter_mm: number): Edit =>
  own((build) => {
    compression(build).clampDiameter_mm = clampDiameter_mm;
  });
const bleed = (diameter_mm: number): Edit =>
  own((build) => {
    build.bleed.diameter_mm = diameter_mm;
  });
const seat = (seatHeight_mm: number): Edit =>
  own((build) => {
    compression(build).seatHeight_mm = seatHeight_mm;
  });
const temperature =
  (temperature_degC: number): Edit =>
  (start) => ({ ...start, fluid: { ...start.fluid, temperature_degC } });
const gas =
  (gaugePressure_bar: number): Edit =>
  (start) => ({ ...start, gas: { ...start.gas, gaugePressure_bar } });
const reboundPorts =
  (area_mm2: number): Edit =>
  (start) => {
    const copy = structuredClone(start);
    copy.damper.valves.pistonRebound.ports.area_mm2 = area_mm2;
    return copy;
  };
const both =
  (first: Edit, second: Edit): Edit =>
  (start) =>
    second(first(start));

export interface Answers {
  readonly right: Edit;
  /** Each with what the check must find: a goal missed, by its number, or a part that was to be left alone. */
  readonly wrong: readonly { edit: Edit; finds: Readonly<Record<number, 'too-low' | 'too-high'>> | string }[];
}

export const ANSWERS: Readonly<Record<LessonId, Answers>> = {
  curve: {
    right: reboundPorts(25),
    wrong: [
      { edit: reboundPorts(10), finds: { 0: 'too-high' } },
      { edit: both(reboundPorts(25), bleed(2)), finds: 'bleed' },
    ],
  },
  face: {
    right: shimThickness(0, 0.25),
    wrong: [
      { edit: shimThickness(0, 0.28), finds: { 0: 'too-high' } },
      { edit: shimThickness(0, 0.2), finds: { 0: 'too-low' } },
      { edit: clamp(10), finds: 'compression-clamp' },
    ],
  },
  crossover: {
    right: shimThickness(1, 0.25),
    wrong: [
      { edit: shimThickness(1, 0.15), finds: { 0: 'too-high' } },
      { edit: shimThickness(1, 0.8), finds: { 1: 'too-low' } },
      { edit: shimThickness(2, 0.2), finds: 'compression-shims' },
    ],
  },
  clamp: {
    right: clamp(10),
    wrong: [
      { edit: clamp(11), finds: { 0: 'too-high' } },
      { edit: shimThickness(0, 0.25), finds: 'compression-face-thickness' },
    ],
  },
  taper: {
    right: own((build) => rebound(build).shims.splice(1, 0, { outerDiameter_mm: 26, thickness_mm: 0.2 })),
    wrong: [
      { edit: own((build) => rebound(build).shims.splice(2, 1)), finds: { 0: 'too-low' } },
      {
        edit: own((build) => {
          rebound(build).shims[0].count = 3;
        }),
        finds: 'rebound-face',
      },
    ],
  },
  bleed: {
    right: bleed(1.8),
    wrong: [
      { edit: bleed(2), finds: { 0: 'too-low', 1: 'too-low' } },
      { edit: bleed(1.2), finds: { 0: 'too-high', 1: 'too-high' } },
    ],
  },
  preload: {
    right: seat(0.15),
    wrong: [
      { edit: seat(0.05), finds: { 0: 'too-low' } },
      { edit: seat(0.25), finds: { 0: 'too-high', 1: 'too-high' } },
    ],
  },
  temperature: {
    right: temperature(20),
    wrong: [
      { edit: temperature(80), finds: { 0: 'too-low' } },
      { edit: temperature(0), finds: { 0: 'too-high', 1: 'too-high' } },
    ],
  },
  gas: {
    right: gas(10),
    wrong: [
      { edit: gas(8), finds: { 0: 'too-low' } },
      { edit: gas(14), finds: { 0: 'too-high' } },
    ],
  },
};
