/**
 * Another layout for the damper, with all that the new layout needs and none of what it does not have. What is taken out is
 * laid aside, so that it comes back with the next layout that has it. Pure: the document in, the document out.
 */
import type {
  AssumedPart,
  Build,
  Damper,
  Gas,
  Layout,
  Project,
  RefillCheck,
  ValveBody,
  Valving,
} from '../../model/project.ts';
import { BASE_PARTS } from '../../model/project.ts';
import { type GasShape, gasBy, measureOf } from './gas-measures.ts';
import { hasBase } from './places.ts';

/** What is at the base of one build. */
interface BuildBase {
  readonly valving?: Valving;
  readonly baseBleed?: Build['baseBleed'];
  readonly basePoppet?: Build['basePoppet'];
}

export interface LaidAside {
  readonly body?: ValveBody;
  readonly refillCheck?: RefillCheck;
  /** Of these, what was an assumption. */
  readonly assumedParts?: readonly AssumedPart[];
  readonly legDiameter_mm?: number;
  /** How the air of a fork leg was known. */
  readonly air?: GasShape;
  /** By build id. */
  readonly builds: Readonly<Record<string, BuildBase>>;
}

export const NOTHING_ASIDE: LaidAside = { builds: {} };

/** A light plate over as many holes as the piston has, on a land of the same size (own starting values). */
export function startingRefillCheck({ ports, seat }: ValveBody): RefillCheck {
  const { coveredFraction: _c, ...holes } = ports;
  return { ports: holes, seat: { ...seat }, rate_N_mm: 0.3, preload_N: 1, travel_mm: 1.5 };
}

/**
 * One face shim of the piston's size, without preload (own starting value): it opens easily, so that until the base valve is
 * measured the piston makes the curve.
 */
function startingBaseStack({ valves }: Build): Valving {
  const { clampDiameter_mm, shims, material } = valves.pistonCompression;
  const [{ outerDiameter_mm, thickness_mm }] = shims;
  return {
    clampDiameter_mm,
    shims: [{ outerDiameter_mm, thickness_mm, count: 1 }],
    seatHeight_mm: 0,
    ...(material && { material }),
  };
}

function buildWithBase(build: Build, aside: BuildBase | undefined): Build {
  const { valving = startingBaseStack(build), baseBleed, basePoppet } = aside ?? {};
  return {
    ...build,
    valves: { ...build.valves, baseCompression: build.valves.baseCompression ?? valving },
    ...(baseBleed && { baseBleed }),
    ...(basePoppet && { basePoppet }),
  };
}

function buildWithoutBase({ baseBleed: _b, basePoppet: _p, ...build }: Build): Build {
  const { baseCompression: _v, ...valves } = build.valves;
  return { ...build, valves };
}

const baseOf = ({ valves, baseBleed, basePoppet }: Build): BuildBase => ({
  ...(valves.baseCompression && { valving: valves.baseCompression }),
  ...(baseBleed && { baseBleed }),
  ...(basePoppet && { basePoppet }),
});

function layAside({ damper, gas, builds }: Project, before: LaidAside): LaidAside {
  return {
    body: damper.valves.baseCompression ?? before.body,
    refillCheck: damper.refillCheck ?? before.refillCheck,
    assumedParts: hasBase(damper.layout) ? damper.assumedParts : before.assumedParts,
    legDiameter_mm: damper.legDiameter_mm ?? before.legDiameter_mm,
    air: measureOf(gas) === 'volume' ? before.air : shapeOf(gas),
    builds: hasBase(damper.layout)
      ? { ...before.builds, ...Object.fromEntries(builds.map((build) => [build.id, baseOf(build)])) }
      : before.builds,
  };
}

/** The base valve as it is, as it was laid aside, or else assumed, and then marked so. */
function baseOfDamper(
  { valves, refillCheck, assumedParts }: Damper,
  aside: LaidAside,
): { readonly body: ValveBody; readonly refillCheck: RefillCheck; readonly assumedParts: readonly AssumedPart[] } {
  const known = {
    baseCompression: valves.baseCompression ?? aside.body,
    refillCheck: refillCheck ?? aside.refillCheck,
  };
  const marked = assumedParts ?? aside.assumedParts ?? [];
  const assumed = BASE_PARTS.filter((part) => known[part] === undefined || marked.includes(part));
  return {
    body: known.baseCompression ?? valves.pistonCompression,
    refillCheck: known.refillCheck ?? startingRefillCheck(valves.pistonCompression),
    assumedParts: assumed,
  };
}

const isBasePart = (part: AssumedPart): boolean => BASE_PARTS.some((each) => each === part);
const marked = (parts: AssumedPart[]): Pick<Damper, 'assumedParts'> =>
  parts.length > 0 ? { assumedParts: parts } : {};

function damperWith(damper: Damper, layout: Layout, aside: LaidAside): Damper {
  const { legDiameter_mm = aside.legDiameter_mm, refillCheck: _r, assumedParts = [], valves, ...rest } = damper;
  const { baseCompression: _b, ...piston } = valves;
  const leg = layout === 'cartridge' && legDiameter_mm !== undefined && legDiameter_mm >= rest.rodDiameter_mm;
  const whole = { ...rest, layout, ...(leg && { legDiameter_mm }), valves: piston };
  const others = assumedParts.filter((part) => !isBasePart(part));
  if (!hasBase(layout)) return { ...whole, ...marked(others) };
  const { body, refillCheck, assumedParts: base } = baseOfDamper(damper, aside);
  return { ...whole, valves: { ...piston, baseCompression: body }, refillCheck, ...marked([...others, ...base]) };
}

/** The floating piston of a monotube runs in its tube. */
function fitSeparator(gas: Gas, { layout, boreDiameter_mm }: Damper): Gas {
  const { separator } = gas;
  if (layout !== 'monotube' || separator?.kind !== 'floating-piston') return gas;
  return { ...gas, separator: { ...separator, diameter_mm: Math.min(separator.diameter_mm, boreDiameter_mm) } };
}

const shapeOf = ({ airGap, oilFill }: Gas): GasShape => ({ ...(airGap && { airGap }), ...(oilFill && { oilFill }) });

function gasWith(gas: Gas, before: Damper, after: Damper, { air }: LaidAside): Gas {
  if (after.layout !== 'cartridge') return fitSeparator(gasBy('volume', gas, before), after);
  if (!air || measureOf(gas) !== 'volume') return gas;
  const { volume_mL: _v, ...rest } = gas;
  return { ...rest, ...air };
}

export function changeLayout(
  project: Project,
  layout: Layout,
  before: LaidAside,
): { readonly project: Project; readonly aside: LaidAside } {
  if (layout === project.damper.layout) return { project, aside: before };
  const aside = layAside(project, before);
  const damper = damperWith(project.damper, layout, aside);
  const builds = project.builds.map((build) =>
    hasBase(layout) ? buildWithBase(build, aside.builds[build.id]) : buildWithoutBase(build),
  );
  return { project: { ...project, damper, gas: gasWith(project.gas, project.damper, damper, aside), builds }, aside };
}
