/** The parts that a build may have beside its stacks. Starting values are our own: plausible, to be replaced by measured ones. */
import type {
  Bleed,
  Build,
  CoilSpring,
  Needle,
  Poppet,
  PreloadAdjuster,
  Project,
  ValvePlace,
} from '../../model/project.ts';
import { buildOf, changeBuild } from './edits.ts';
import { keyPut, type OptionalPart } from './optional-parts.ts';
import { bodyAt, valvingAt } from './places.ts';

const NEEDLE: Needle = { coneAngle_deg: 20, travelPerClick_mm: 0.1, clicks: 10, clickCount: 20 };
/** At its softest it has taken off about what its spring is pressed by. */
const adjusterOf = (rate_N_mm: number, preload_N: number): PreloadAdjuster => ({
  travelPerClick_mm: Math.max(0.01, Number((preload_N / rate_N_mm / 20).toFixed(3))),
  clicks: 0,
  clickCount: 20,
});

function ofBuild<T extends object>(
  buildId: string,
  name: string,
  of: (build: Build) => T | undefined,
  put: (build: Build, part: T | undefined) => Build,
  start: (build: Build, project: Project) => T,
): OptionalPart<T> {
  return {
    id: `${buildId}:${name}`,
    of: (project) => of(buildOf(project, buildId)),
    put: (project, part) => changeBuild(project, buildId, (build) => put(build, part)),
    start: (project) => start(buildOf(project, buildId), project),
  };
}

export const needleOf = (buildId: string): OptionalPart<Needle> =>
  ofBuild(
    buildId,
    'needle',
    ({ bleed }) => bleed.needle,
    (build, needle) => ({ ...build, bleed: keyPut(build.bleed, 'needle', needle) }),
    () => NEEDLE,
  );

export const baseBleedOf = (buildId: string): OptionalPart<Bleed> =>
  ofBuild(
    buildId,
    'baseBleed',
    ({ baseBleed }) => baseBleed,
    (build, bleed) => keyPut(build, 'baseBleed', bleed),
    () => ({ count: 1, diameter_mm: 1.5, length_mm: 5 }),
  );

/** @param buildId of a build with a base bleed */
export const baseNeedleOf = (buildId: string): OptionalPart<Needle> =>
  ofBuild(
    buildId,
    'baseNeedle',
    ({ baseBleed }) => baseBleed?.needle,
    (build, needle) => (build.baseBleed ? { ...build, baseBleed: keyPut(build.baseBleed, 'needle', needle) } : build),
    () => NEEDLE,
  );

/** A third as wide as the ports of the base valve reach. */
export const poppetOf = (buildId: string): OptionalPart<Poppet> =>
  ofBuild(
    buildId,
    'poppet',
    ({ basePoppet }) => basePoppet,
    (build, poppet) => keyPut(build, 'basePoppet', poppet),
    (_build, { damper }) => ({
      seatDiameter_mm: Number((bodyAt(damper, 'baseCompression').seat.outerDiameter_mm / 3).toFixed(1)),
      coneAngle_deg: 90,
      rate_N_mm: 30,
      preload_N: 40,
      travel_mm: 1,
    }),
  );

/** @param buildId of a build with a poppet */
export const poppetAdjusterOf = (buildId: string): OptionalPart<PreloadAdjuster> =>
  ofBuild(
    buildId,
    'poppetAdjuster',
    ({ basePoppet }) => basePoppet?.adjuster,
    (build, adjuster) =>
      build.basePoppet ? { ...build, basePoppet: keyPut(build.basePoppet, 'adjuster', adjuster) } : build,
    ({ basePoppet }) => adjusterOf(basePoppet?.rate_N_mm ?? 1, basePoppet?.preload_N ?? 1),
  );

/** @param place where the build has a coil spring */
export function coilAdjusterOf(buildId: string, place: ValvePlace): OptionalPart<PreloadAdjuster> {
  const springOf = (build: Build): CoilSpring | undefined => valvingAt(build, place).coilSpring;
  return ofBuild(
    buildId,
    `${place}:coilAdjuster`,
    (build) => springOf(build)?.adjuster,
    (build, adjuster) => {
      const valving = valvingAt(build, place);
      if (!valving.coilSpring) return build;
      const coilSpring = keyPut(valving.coilSpring, 'adjuster', adjuster);
      return { ...build, valves: { ...build.valves, [place]: { ...valving, coilSpring } } };
    },
    (build) => adjusterOf(springOf(build)?.rate_N_mm ?? 1, springOf(build)?.preload_N ?? 1),
  );
}
