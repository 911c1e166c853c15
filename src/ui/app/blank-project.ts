/**
 * A project to write a damper of one's own into. Every size of it is a starting value of our own, no machine's, and marked as an
 * assumption; the assumed faces of the piston follow the face shims that are written in, so that a list from paper fits at once.
 */
import type { Gas, Layout, Project, ShimRow, ValveBody, ValvePlace, Valving } from '../../model/project.ts';
import { text } from '../text/en.ts';
import { isAssumed } from './assumed-parts.ts';
import { changeBuild } from './edits.ts';
import { changeLayout, NOTHING_ASIDE } from './layout-change.ts';
import { hasBase, valvingAt } from './places.ts';

interface Sizes {
  readonly bore_mm: number;
  readonly rod_mm: number;
  readonly travel_mm: number;
  readonly clamp_mm: number;
  readonly gas: Gas;
}

/** Round numbers between the dampers of the layouts (own starting values). */
const SIZES: Readonly<Record<Layout, Sizes>> = {
  monotube: tube(40, { gaugePressure_bar: 10, volume_mL: 70, polytropicExponent: 1.2 }),
  'monotube-reservoir': tube(40, { gaugePressure_bar: 10, volume_mL: 100, polytropicExponent: 1.2 }),
  'twin-tube': tube(30, { gaugePressure_bar: 5, volume_mL: 150, polytropicExponent: 1.2 }),
  cartridge: {
    ...tube(24, { gaugePressure_bar: 1.5, volume_mL: 400, polytropicExponent: 1.2 }),
    travel_mm: 200,
    clamp_mm: 8,
  },
};

function tube(bore_mm: number, gas: Gas): Sizes {
  return { bore_mm, rod_mm: 12, travel_mm: 100, clamp_mm: 10, gas };
}

const halves = (value: number): number => Math.round(2 * value) / 2;

/** A land of 1 mm half a millimetre within the rim of the face shim, four ports that open a third of the ring within it. */
function pistonFor(face_mm: number, clamp_mm: number): ValveBody {
  const seat = { innerDiameter_mm: face_mm - 3, outerDiameter_mm: face_mm - 1 };
  const zone = {
    innerDiameter_mm: (clamp_mm + 2 * seat.innerDiameter_mm) / 3,
    outerDiameter_mm: seat.innerDiameter_mm,
  };
  const ring_mm2 = (Math.PI / 4) * (zone.outerDiameter_mm ** 2 - zone.innerDiameter_mm ** 2);
  return { ports: { count: 4, area_mm2: halves(ring_mm2 / 12), length_mm: 10 }, pressureZone: zone, seat };
}

/** Something to bend until the stack is written in: a plain taper, or what opens easily where a base valve makes the compression. */
function placeholder(face_mm: number, clamp_mm: number, opensEasily: boolean): Valving {
  const last = { outerDiameter_mm: clamp_mm + 4, thickness_mm: 0.2 };
  const middle = { outerDiameter_mm: halves((face_mm + clamp_mm) / 2 + 2), thickness_mm: 0.2 };
  const shims = opensEasily
    ? [{ outerDiameter_mm: face_mm, thickness_mm: 0.15 }, last]
    : [{ outerDiameter_mm: face_mm, thickness_mm: 0.2, count: 3 }, middle, last];
  return { clampDiameter_mm: clamp_mm, shims, seatHeight_mm: 0 };
}

const opensEasily = (layout: Layout, place: ValvePlace): boolean => place === 'pistonCompression' && hasBase(layout);

/** Whether a stack is what a blank project starts with. */
export function isPlaceholder(project: Project, place: ValvePlace, { clampDiameter_mm, shims }: Valving): boolean {
  if (!isAssumed(project, place) || place === 'baseCompression') return false;
  const [{ outerDiameter_mm }] = shims;
  const started = placeholder(outerDiameter_mm, clampDiameter_mm, opensEasily(project.damper.layout, place));
  return JSON.stringify(shims) === JSON.stringify(started.shims);
}

/** @returns a monotube, changed to the layout as any other would be, so that its base valve is an assumption too */
export function blankProject(layout: Layout): Project {
  const { bore_mm, rod_mm, travel_mm, clamp_mm, gas } = SIZES[layout];
  const [down, up] = [halves(0.8 * bore_mm), halves(0.7 * bore_mm)];
  const words = text.blank;
  const stock = {
    id: 'as-it-came-out',
    name: words.build,
    notes: '',
    valves: {
      pistonCompression: placeholder(down, clamp_mm, opensEasily(layout, 'pistonCompression')),
      pistonRebound: placeholder(up, clamp_mm, false),
    },
    bleed: { count: 1, diameter_mm: 1, length_mm: 5 },
  };
  const monotube: Project = {
    format: 'shimwright/project',
    version: 1,
    name: words.name(text.damper.layoutName[layout]),
    notes: '',
    damper: {
      name: words.damper,
      layout: 'monotube',
      boreDiameter_mm: bore_mm,
      rodDiameter_mm: rod_mm,
      travel_mm,
      sealFriction_N: 20,
      valves: { pistonCompression: pistonFor(down, clamp_mm), pistonRebound: pistonFor(up, clamp_mm) },
      assumedParts: ['sizes', 'pistonCompression', 'pistonRebound', 'oil', 'gas'],
    },
    fluid: {
      name: words.oil,
      viscosity: { kind: 'iso-grade', isoGrade: 15, viscosityIndex: 150 },
      densityAt15_kg_m3: 860,
      temperature_degC: 40,
    },
    gas,
    builds: [stock],
    baselineBuild: stock.id,
    measurements: [],
    chassis: {},
    drawer: [],
  };
  return changeLayout(monotube, layout, NOTHING_ASIDE).project;
}

/**
 * The list in place of a stack. As long as one build stands on an assumed piston, its faces follow the first shim of the list, the clamp its
 * smallest one, and an assumed bore makes room.
 */
export function withList(project: Project, buildId: string, place: ValvePlace, shims: ShimRow[]): Project {
  const replaced = (clamp_mm?: number): Project =>
    changeBuild(project, buildId, (build) => {
      const valving = valvingAt(build, place);
      const clampDiameter_mm = clamp_mm ?? valving.clampDiameter_mm;
      return { ...build, valves: { ...build.valves, [place]: { ...valving, clampDiameter_mm, shims } } };
    });
  if (place === 'baseCompression' || !isAssumed(project, place) || project.builds.length > 1) return replaced();
  const face_mm = shims[0].outerDiameter_mm;
  const before = valvingAt(project.builds[0], place).clampDiameter_mm;
  const smallest = Math.min(...shims.map(({ outerDiameter_mm }) => outerDiameter_mm));
  const clamp_mm = Math.min(before, halves(0.7 * smallest));
  const { damper } = project;
  const room_mm = isAssumed(project, 'sizes')
    ? Math.max(damper.boreDiameter_mm, Math.ceil(1.15 * face_mm))
    : damper.boreDiameter_mm;
  const valves = { ...damper.valves, [place]: pistonFor(face_mm, clamp_mm) };
  return { ...replaced(clamp_mm), damper: { ...damper, boreDiameter_mm: room_mm, valves } };
}
