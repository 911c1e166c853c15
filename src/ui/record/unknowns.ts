/**
 * What of a damper is not known, each with the document as it would be at either end of what is plausible. The ranges are common practice
 * for what a person cannot tell without measuring, from memory: wider than the precision of a tool, narrower than the trade makes parts.
 */
import { adjustersOf, withClicks } from '../../model/adjusters.ts';
import type { Project } from '../../model/project.ts';
import { isAssumed } from '../app/assumed-parts.ts';
import { PISTON_BAND } from '../app/damper-parts.ts';
import { baselineOf } from '../app/edits.ts';
import { placesOf } from '../app/places.ts';
import { showField } from '../app/quantities.ts';
import { text } from '../text/en.ts';
import { recordWords } from '../text/record.ts';
import { stepsOf } from './steps.ts';
import { bothWays, changed, type Draft, inPercent, type Parts, type Reason, type Unknown } from './unknown-draft.ts';
import { faceDrafts, refillDrafts, stackDrafts } from './valve-unknowns.ts';

const { items, spread } = recordWords.missing;

const BORE_MM = 0.25;
const ROD_MM = 0.25;
const FRICTION_SHARE = 0.5;
const TEMPERATURE_DEGC = 15;
const VISCOSITY_SHARE = 0.2;
const GAS_BAR = 2;
const AIR_BAR = 0.3;
const LEVEL_MM = 10;
const CLICKS = 3;
const BLEED_MM = 0.2;
const BAND_MM = 0.05;

function sizeDrafts(project: Project): Draft[] {
  const { damper } = project;
  const band = damper.pistonBand;
  return [
    {
      id: 'bore',
      step: 'rod',
      label: items.bore,
      range: spread(showField('length', BORE_MM)),
      ends: bothWays(project, (sign) => (parts) => {
        parts.project.damper.boreDiameter_mm += sign * BORE_MM;
      }),
    },
    {
      id: 'rod',
      step: 'rod',
      label: items.rodDiameter,
      range: spread(showField('length', ROD_MM)),
      ends: bothWays(project, (sign) => (parts) => {
        parts.project.damper.rodDiameter_mm += sign * ROD_MM;
      }),
    },
    {
      id: 'friction',
      step: 'wear',
      label: items.friction,
      range: inPercent(FRICTION_SHARE),
      ends: bothWays(project, (sign) => (parts) => {
        const factor = 1 + sign * FRICTION_SHARE;
        parts.project.damper.sealFriction_N *= factor;
        if (parts.project.damper.frictionLaw) parts.project.damper.frictionLaw.breakaway_N *= factor;
      }),
    },
    {
      id: 'band',
      step: 'wear',
      label: band ? items.band : items.bandAbsent,
      range: spread(showField('length', BAND_MM)),
      isDefault: band === undefined,
      ends: (band ? [-1, 1] : [1]).map((sign) =>
        changed(project, (parts) => {
          const from = band ?? { ...PISTON_BAND.start(project), clearance_mm: 0 };
          parts.project.damper.pistonBand = {
            ...from,
            clearance_mm: Math.max(0.001, from.clearance_mm + sign * BAND_MM),
          };
        }),
      ),
    },
  ];
}

function thicker({ project }: Parts, factor: number): void {
  const { viscosity } = project.fluid;
  if (viscosity.kind === 'two-point') for (const point of viscosity.points) point.kinematicViscosity_cSt *= factor;
  if (viscosity.kind === 'viscosity-index') viscosity.kinematicViscosity40_cSt *= factor;
  if (viscosity.kind === 'iso-grade') {
    const { isoGrade, viscosityIndex } = viscosity;
    project.fluid.viscosity = {
      kind: 'viscosity-index',
      kinematicViscosity40_cSt: isoGrade * factor,
      viscosityIndex,
    };
  }
}

function fillDrafts(project: Project): Draft[] {
  const isFork = project.damper.layout === 'cartridge';
  const gas_bar = isFork ? AIR_BAR : GAS_BAR;
  return [
    {
      id: 'temperature',
      step: 'oil',
      label: items.temperature,
      range: spread(showField('temperature', TEMPERATURE_DEGC)),
      ends: bothWays(project, (sign) => (parts) => {
        parts.project.fluid.temperature_degC += sign * TEMPERATURE_DEGC;
      }),
    },
    {
      id: 'viscosity',
      step: 'oil',
      label: items.viscosity,
      range: inPercent(VISCOSITY_SHARE),
      ends: bothWays(project, (sign) => (parts) => thicker(parts, 1 + sign * VISCOSITY_SHARE)),
    },
    {
      id: 'gas',
      step: 'gas',
      label: isFork ? items.airPressure : items.gasPressure,
      range: spread(showField('gasPressure', gas_bar)),
      ends: bothWays(project, (sign) => (parts) => {
        const { gas } = parts.project;
        gas.gaugePressure_bar = Math.max(0, gas.gaugePressure_bar + sign * gas_bar);
      }),
    },
    ...(project.gas.airGap
      ? [
          {
            id: 'oil-level',
            step: 'gas' as const,
            label: items.oilLevel,
            range: spread(showField('length', LEVEL_MM)),
            ends: bothWays(project, (sign) => (parts) => {
              if (parts.project.gas.airGap) parts.project.gas.airGap.level_mm += sign * LEVEL_MM;
            }),
          },
        ]
      : []),
  ];
}

function adjusterDrafts(project: Project): Draft[] {
  const build = baselineOf(project);
  return adjustersOf(build).map(({ id, clicks, clickCount }) => ({
    id: `clicks-${id}`,
    step: 'clicks',
    label: items.clicks(text.adjusterOf(project.damper.layout, id)),
    range: spread(String(CLICKS)),
    ends: [-CLICKS, CLICKS].map((by) => {
      const turned = withClicks(build, id, Math.min(clickCount, Math.max(0, clicks + by)));
      return { ...project, builds: project.builds.map((each) => (each.id === build.id ? turned : each)) };
    }),
  }));
}

function bleedDrafts(project: Project): Draft[] {
  const build = baselineOf(project);
  const holes = [
    ['bleed', 'compressionStack', items.bleed],
    ['baseBleed', 'baseStack', items.baseBleed],
  ] as const;
  return holes.flatMap(([key, step, label]) => {
    if (!build[key] || build[key].count === 0) return [];
    const ends = bothWays(project, (sign) => (parts) => {
      const bleed = parts.build[key];
      if (bleed) bleed.diameter_mm = Math.max(0.001, bleed.diameter_mm + sign * BLEED_MM);
    });
    return [{ id: key, step, label, range: spread(showField('length', BLEED_MM)), ends }];
  });
}

function reasonOf(project: Project, { step, isDefault }: Draft): Reason | undefined {
  const isBase = step === 'baseStack' || step === 'baseFace';
  if (isBase && isAssumed(project, 'baseCompression')) return 'assumed';
  if (step === 'refillCheck' && isAssumed(project, 'refillCheck')) return 'assumed';
  const state = project.record?.steps?.[step]?.state ?? 'open';
  if (state !== 'done') return state;
  return isDefault ? 'default' : undefined;
}

/** All that is open, skipped, assumed or a default, in the order of the steps. */
export function unknownsOf(project: Project): Unknown[] {
  const places = placesOf(project.damper.layout);
  const drafts = [
    ...adjusterDrafts(project),
    ...fillDrafts(project),
    ...sizeDrafts(project),
    ...bleedDrafts(project),
    ...places.flatMap((place) => [...stackDrafts(project, place), ...faceDrafts(project, place)]),
    ...refillDrafts(project),
  ];
  const order = stepsOf(project.damper);
  return drafts
    .flatMap((draft) => {
      const reason = reasonOf(project, draft);
      return reason ? [{ ...draft, reason }] : [];
    })
    .sort((a, b) => order.indexOf(a.step) - order.indexOf(b.step));
}
