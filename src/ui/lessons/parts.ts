/** What a person has changed since the start of a lesson, told by parts of a damper. Names and notes are no part. */
import type { Build, Project } from '../../model/project.ts';

type Way = 'compression' | 'rebound';
type StackPart = 'face-thickness' | 'face' | 'second-thickness' | 'shims' | 'clamp' | 'seat' | 'stack';

export type Part =
  | `${Way}-${StackPart}`
  | 'rebound-ports'
  | 'bleed'
  | 'build'
  | 'other-build'
  | 'damper'
  | 'temperature'
  | 'oil'
  | 'gas-pressure'
  | 'gas';

/** Of the damper with its oil and gas, which all builds share. */
export const SHARED_PARTS: readonly Part[] = ['rebound-ports', 'damper', 'temperature', 'oil', 'gas-pressure', 'gas'];

/** The first pattern that fits a place in the document names its part; the last one of a group takes what is left of it. */
const STACK_PATTERNS: readonly [RegExp, StackPart][] = [
  [/^shims\.0\.thickness_mm$/, 'face-thickness'],
  [/^shims\.0\./, 'face'],
  [/^shims\.1\.thickness_mm$/, 'second-thickness'],
  [/^shims\./, 'shims'],
  [/^clampDiameter_mm$/, 'clamp'],
  [/^seatHeight_mm$/, 'seat'],
];
const PATTERNS: readonly [RegExp, Part][] = [
  [/^own\.bleed\./, 'bleed'],
  [/^own\./, 'build'],
  [/^other\./, 'other-build'],
  [/^damper\.valves\.pistonRebound\.ports\./, 'rebound-ports'],
  [/^damper\./, 'damper'],
  [/^fluid\.temperature_degC$/, 'temperature'],
  [/^fluid\./, 'oil'],
  [/^gas\.gaugePressure_bar$/, 'gas-pressure'],
  [/^gas\./, 'gas'],
];

function partOf(path: string): Part | undefined {
  const stack = /^own\.valves\.piston(Compression|Rebound)\.(.*)$/.exec(path);
  if (!stack) return PATTERNS.find(([pattern]) => pattern.test(path))?.[1];
  const way = stack[1] === 'Compression' ? 'compression' : 'rebound';
  return `${way}-${STACK_PATTERNS.find(([pattern]) => pattern.test(stack[2]))?.[1] ?? 'stack'}`;
}

/** Every number and word of an object by its path. */
function leaves(value: unknown, path: string, found: Map<string, string>): Map<string, string> {
  if (typeof value !== 'object' || value === null) return found.set(path, JSON.stringify(value));
  for (const [key, part] of Object.entries(value))
    if (part !== undefined) leaves(part, path === '' ? key : `${path}.${key}`, found);
  return found;
}

const valvingOnly = ({ valves, bleed, baseBleed, basePoppet }: Build) => ({ valves, bleed, baseBleed, basePoppet });

function leavesOf({ damper, fluid, gas, builds }: Project, ownId: string, otherId: string): Map<string, string> {
  const [own, other] = [ownId, otherId].map((id) => builds.find((build) => build.id === id));
  const compared = {
    own: own && valvingOnly(own),
    other: other && valvingOnly(other),
    damper: { ...damper, name: undefined },
    fluid: { ...fluid, name: undefined },
    gas,
  };
  return leaves(compared, '', new Map());
}

/** The parts that differ, each once. A shim whose count is written as 1 is the same as one without a count. */
export function changedParts(start: Project, now: Project, ownId: string, otherId: string): Part[] {
  const [before, after] = [start, now].map((document) => leavesOf(document, ownId, otherId));
  const isOnce = (path: string, value: string | undefined): boolean => /\.count$/.test(path) && value === '1';
  const told = (path: string, value: string | undefined) => (isOnce(path, value) ? undefined : value);
  const paths = [...new Set([...before.keys(), ...after.keys()])];
  const changed = paths.filter((path) => told(path, before.get(path)) !== told(path, after.get(path)));
  return [...new Set(changed.flatMap((path) => partOf(path) ?? []))];
}
