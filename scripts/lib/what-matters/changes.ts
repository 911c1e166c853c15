/** What may differ between a damper as it is drawn and as it is built, filled and known: each with a lower and an upper side. */
import { adjustersOf, withClicks } from '../../../src/model/adjusters.ts';
import type { Build, Damper, Project, ValvePlace } from '../../../src/model/project.ts';
import { COEFFICIENT_TABLE, type CoefficientName, type Coefficients } from '../../../src/solver/index.ts';

/** A project with one thing changed, or the solver with one coefficient changed. */
export interface Side {
  readonly project: Project;
  readonly coefficients?: Partial<Coefficients>;
  /** Directions in which nothing can be changed to this side: 1 in compression, -1 in rebound. */
  readonly without?: readonly number[];
}

export interface Change {
  readonly label: string;
  readonly lower?: Side;
  readonly upper?: Side;
}

interface Parts {
  readonly project: Project;
  readonly damper: Damper;
  readonly build: Build;
}

/** All that counts for the baseline build of a project. A side that is not there is one that the damper cannot take. */
export const changesOf = (project: Project): Change[] => [
  ...coefficientChanges(project),
  ...settingChanges(project),
  ...holeChanges(project),
  ...valveChanges(project, 'piston', ['pistonCompression', 'pistonRebound']),
  ...(project.damper.valves.baseCompression ? valveChanges(project, 'base', ['baseCompression']) : []),
  ...clearanceChanges(project),
];

function coefficientChanges(project: Project): Change[] {
  return (Object.keys(COEFFICIENT_TABLE) as CoefficientName[]).map((name) => {
    const { low, high, unit } = COEFFICIENT_TABLE[name];
    const label = `${inWords(name)} ${low} – ${high}${unit === '-' ? '' : ` ${unit}`}`;
    return {
      label,
      lower: { project, coefficients: { [name]: low } },
      upper: { project, coefficients: { [name]: high } },
    };
  });
}

/** `longOrificeFactor` is `long orifice factor`; a unit at the end of a name is told beside the numbers. */
const inWords = (name: string): string =>
  name.replace(/_.*$/, '').replace(/[A-Z]/g, (letter) => ` ${letter.toLowerCase()}`);

const TEMPERATURE_DEGC = 15;
const GAS_BAR = 1;
const OIL_LEVEL_MM = 10;
const FRICTION_SHARE = 0.2;

function settingChanges(project: Project): Change[] {
  const build = baselineOf(project);
  const adjusters = adjustersOf(build).map(({ id, clicks, clickCount }) => ({
    label: `${id.replace('-', ' ')}, one click`,
    lower: clicks > 0 ? { project: withBuild(project, withClicks(build, id, clicks - 1)) } : undefined,
    upper: clicks < clickCount ? { project: withBuild(project, withClicks(build, id, clicks + 1)) } : undefined,
  }));
  const { gaugePressure_bar } = project.gas;
  const gas = bothSides(project, `gas ± ${GAS_BAR} bar`, (sign) => ({ project: { gas } }) => {
    gas.gaugePressure_bar += sign * GAS_BAR;
  });
  return [
    bothSides(project, `oil ± ${TEMPERATURE_DEGC} °C`, (sign) => ({ project: { fluid } }) => {
      fluid.temperature_degC += sign * TEMPERATURE_DEGC;
    }),
    gaugePressure_bar < GAS_BAR ? { ...gas, lower: undefined } : gas,
    ...(project.gas.airGap ? [oilLevelChange(project)] : []),
    ...adjusters,
    bothSides(project, `friction ± ${FRICTION_SHARE * 100} %`, (sign) => ({ damper }) => {
      const factor = 1 + sign * FRICTION_SHARE;
      damper.sealFriction_N *= factor;
      if (!damper.frictionLaw) return;
      damper.frictionLaw.breakaway_N *= factor;
      damper.frictionLaw.viscous_N_s_m *= factor;
    }),
  ];
}

/** The level is counted from the top of the tube. */
const oilLevelChange = (project: Project): Change =>
  bothSides(project, `oil level ± ${OIL_LEVEL_MM} mm (+ is more oil)`, (sign) => ({ project: { gas } }) => {
    if (gas.airGap) gas.airGap.level_mm -= sign * OIL_LEVEL_MM;
  });

const BLEED_MM = 0.05;

function holeChanges(project: Project): Change[] {
  const bleeds = [
    ['bleed', 'bleed'],
    ['baseBleed', 'base bleed'],
  ] as const;
  return bleeds.flatMap(([key, name]) =>
    baselineOf(project)[key]
      ? [
          bothSides(project, `${name} ± ${BLEED_MM} mm`, (sign) => ({ build }) => {
            const bleed = build[key];
            if (bleed) bleed.diameter_mm += sign * BLEED_MM;
          }),
        ]
      : [],
  );
}

const PORT_SHARE = 0.05;
const THICKNESS_MM = 0.01;
const CLAMP_MM = 0.5;
const SEAT_MM = 0.02;
const FLOAT_MM = 0.05;

/** Of a piston both valves are changed: only that of the direction works. */
function valveChanges(project: Project, name: string, places: readonly ValvePlace[]): Change[] {
  const change = (label: string, edit: ValveEdit): Change =>
    bothSides(project, `${name}: ${label}`, (sign) => (parts) => {
      for (const place of places) edit(sign, parts, place);
    });
  const build = baselineOf(project);
  const floats = places.some((place) => build.valves[place]?.float);
  return [
    change(`port area ± ${PORT_SHARE * 100} %`, growPorts),
    change(`all shims ± ${THICKNESS_MM} mm`, thickenShims),
    faceShimChange(project, name, places),
    change(`clamp ± ${CLAMP_MM} mm`, (sign, { build }, place) => {
      valvingAt(build, place).clampDiameter_mm += sign * CLAMP_MM;
    }),
    change(`seat ± ${SEAT_MM} mm`, (sign, { build }, place) => {
      valvingAt(build, place).seatHeight_mm += sign * SEAT_MM;
    }),
    ...(floats ? [change(`float ± ${FLOAT_MM} mm`, growFloat)] : []),
  ];
}

type ValveEdit = (sign: number, parts: Parts, place: ValvePlace) => void;

const growPorts: ValveEdit = (sign, { damper }, place) => {
  const ports = damper.valves[place]?.ports;
  if (!ports) return;
  const factor = 1 + sign * PORT_SHARE;
  if (ports.area_mm2 !== undefined) ports.area_mm2 *= factor;
  if (ports.diameter_mm !== undefined) ports.diameter_mm *= Math.sqrt(factor);
};

const thickenShims: ValveEdit = (sign, { build }, place) => {
  for (const row of valvingAt(build, place).shims) row.thickness_mm += sign * THICKNESS_MM;
};

const growFloat: ValveEdit = (sign, { build }, place) => {
  const { float } = valvingAt(build, place);
  if (float) float.travel_mm += sign * FLOAT_MM;
};

/** A valve whose only face shim is taken away would be another valve: it has no lower side. */
function faceShimChange(project: Project, name: string, places: readonly ValvePlace[]): Change {
  const build = baselineOf(project);
  const alone = places.filter((place) => faceCount(build, place) === 1);
  const { label, lower, upper } = bothSides(project, `${name}: one face shim less, more`, (sign) => (parts) => {
    for (const place of places) {
      const count = faceCount(parts.build, place) + sign;
      if (count > 0) valvingAt(parts.build, place).shims[0].count = count;
    }
  });
  return { label, lower: lower && { ...lower, without: alone.map(directionOf) }, upper };
}

const directionOf = (place: ValvePlace): number => (place === 'pistonRebound' ? -1 : 1);

const faceCount = (build: Build, place: ValvePlace): number => valvingAt(build, place).shims[0]?.count ?? 1;

const CLEARANCE_MM = 0.005;

function clearanceChanges(project: Project): Change[] {
  if (!project.damper.pistonBand) return [];
  const change = bothSides(project, `piston clearance ± ${CLEARANCE_MM} mm`, (sign) => ({ damper: { pistonBand } }) => {
    if (pistonBand) pistonBand.clearance_mm += sign * CLEARANCE_MM;
  });
  return [change];
}

function bothSides(project: Project, label: string, edit: (sign: number) => (parts: Parts) => void): Change {
  const side = (sign: number): Side => {
    const copy = structuredClone(project);
    edit(sign)({ project: copy, damper: copy.damper, build: baselineOf(copy) });
    return { project: copy };
  };
  return { label, lower: side(-1), upper: side(1) };
}

const withBuild = (project: Project, build: Build): Project => ({
  ...project,
  builds: project.builds.map((other) => (other.id === build.id ? build : other)),
});

function baselineOf({ builds, baselineBuild }: Project): Build {
  const build = builds.find(({ id }) => id === baselineBuild);
  if (!build) throw new Error(`no build is called ${baselineBuild}`);
  return build;
}

function valvingAt({ valves }: Build, place: ValvePlace) {
  const valving = valves[place];
  if (!valving) throw new Error(`the build has no valve ${place}`);
  return valving;
}
