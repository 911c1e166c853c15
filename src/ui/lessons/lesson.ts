/** What a guided lesson is: a start on an invented damper, and goals that the person's own build must reach. No words here. */
import type { Project, ValvePlace } from '../../model/project.ts';
import type { Direction } from '../app/places.ts';
import type { Part } from './parts.ts';

export type LessonId = 'curve' | 'face' | 'crossover' | 'clamp' | 'taper' | 'bleed' | 'preload' | 'temperature' | 'gas';

interface AtSpeed {
  readonly way: Direction;
  /** Without sign [m/s]. */
  readonly speed_m_s: number;
}

/** Force without that of the gas, against that of the start: from `least` to `most` [-]. */
export interface ForceGoal extends AtSpeed {
  readonly kind: 'force';
  readonly least: number;
  readonly most: number;
}

/** Pressure of the lowest chamber over the air-release pressure: from `least_Pa` to `most_Pa`. */
export interface MarginGoal extends AtSpeed {
  readonly kind: 'margin';
  readonly least_Pa: number;
  readonly most_Pa: number;
}

export type Goal = ForceGoal | MarginGoal;

export interface Lesson {
  readonly id: LessonId;
  /** Stack on show when the lesson opens, and where the speed cursor stands [m/s]. */
  readonly place: ValvePlace;
  readonly cursor_m_s: number;
  /** Makes the start from the demo; the start is the demo where it is absent. */
  readonly setUp?: (demo: Project) => Project;
  readonly goals: readonly Goal[];
  /** What may differ from the start; whatever else does is told. */
  readonly mayChange: readonly Part[];
}
