/**
 * Writes the axisymmetric continuum model of a stack as an input deck of CalculiX (units mm, N, MPa).
 * Every shim is held at the clamp radius through its thickness; faces touch without friction by linear penalty.
 */
import type { StackFile } from '../../src/model/project.ts';
import { SPRING_STEEL } from '../../src/solver/from-model.ts';
import type { AxisymmetricTheory } from '../../src/solver/types.ts';
import { type Body, bodiesOf, isElastic, topOf } from './bodies.ts';
import { type ContactPair, contactPairs } from './contact-pairs.ts';
import { type BodyMesh, type Element, meshBodies } from './mesh.ts';

export interface ModelOptions {
  readonly theory: AxisymmetricTheory;
  /** Rising; a first 0 stands for the preloaded stack before any pressure. */
  readonly pressures_MPa: readonly number[];
  readonly penalty_MPa_mm: number;
  /** Longest element along the radius; at the clamp half the thinnest shim. */
  readonly elementSize_mm: number;
}

export interface Model {
  readonly deck: string;
  readonly meshes: readonly BodyMesh[];
  readonly pairs: readonly ContactPair[];
  /** Pressure at the end of each step, in order. */
  readonly steps_MPa: readonly number[];
  /** Sizes of the model over those of the stack: displacements are those of the stack, stresses this many times less, forces more. */
  readonly enlargement: number;
  /** Mid-surface node of the face shim at the outer edge of the pressure zone. */
  readonly zoneEdgeNode: number;
}

/**
 * The program follows the deflected faces in its contacts even without large displacements. The small-deflection limit
 * is therefore run on a stack a hundred times larger in all but its gaps and prescribed displacements, under pressures
 * and contact stiffness a hundred times smaller: displacements come out as those of the stack, and small beside it.
 */
const LIMIT_ENLARGEMENT = 100;
/** First, total, least and largest increment of a step: the whole step at once, less where that does not converge. */
const INCREMENTS = '1.,1.,1e-6,1.';
/**
 * Force left over and last correction, as shares of the mean force and of the largest displacement of the increment, at
 * which an increment is taken as solved. With its own ones the program takes upper stages, which carry little, unsolved.
 */
const CONVERGENCE = '1e-6,1e-5,,,1e-6,1e-6';
/**
 * Change in the number of contact points that still counts as settled, two factors of the program's own, and the iterations
 * that an increment may take: zones of contact between many shims settle slowly, but do; smaller increments do not help.
 */
const CONTACT_CONTROL = '0.001,0.1,100,200';
/** Results are printed at every so many increments and at the last one of each step. */
const LAST_ONLY = 'FREQUENCY=100000';
/** Gap below which faces touch. */
const TOUCHING_MM = 1e-7;
/** Faces of an element as the program counts them, for the node order of the mesh. */
const PISTON_FACE = 1;
const OUTER_FACE = 3;

/** @throws Error when the stack holds what the model does not carry, or the pressures do not rise from above 0 */
export function writeModel(stack: StackFile, options: ModelOptions): Model {
  const bodies = bodiesOf(stack);
  const { innerDiameter_mm, outerDiameter_mm } = stack.pressureZone;
  const zone = { from_mm: innerDiameter_mm / 2, to_mm: outerDiameter_mm / 2 };
  const clamp_mm = stack.clampDiameter_mm / 2;
  const edges = [Math.max(zone.from_mm, clamp_mm), zone.to_mm];
  const thinnest_mm = Math.min(...bodies.filter(isElastic).map(({ thickness_mm }) => thickness_mm));
  const grading = { clamp_mm, size_mm: options.elementSize_mm, sizeAtClamp_mm: thinnest_mm / 2 };
  const meshes = meshBodies(bodies, edges, grading);
  const pairs = contactPairs(bodies);
  const enlargement = options.theory === 'small-deflection' ? LIMIT_ENLARGEMENT : 1;
  const steps_MPa = stepPressures(bodies, options.pressures_MPa);
  const face = meshes.find(({ body }) => isElastic(body)) as BodyMesh;
  const loaded = face.elements.filter((e) => isWithin(e, [zone]));
  const zoneEdge = face.midSurface.find(({ radius_mm }) => Math.abs(radius_mm - zone.to_mm) < 1e-6);
  if (!zoneEdge) throw new Error(`the face shim ends inside the pressure zone`);
  const text = [
    meshText(meshes, enlargement),
    materialText(stack, meshes),
    contactText(meshes, pairs, options.penalty_MPa_mm, enlargement),
    `*NSET, NSET=LIFTS\n${[...rims(meshes), zoneEdge.id].map((id) => `${id},\n`).join('')}`,
    `*ELSET, ELSET=LOADED\n${loaded.map(({ id }) => `${id},\n`).join('')}`,
    boundaryText(meshes),
    ...steps_MPa.map((p, i) =>
      stepText(meshes, { pressure_MPa: p, first: i === 0, theory: options.theory, enlargement }),
    ),
  ];
  return { deck: text.join(''), meshes, pairs, steps_MPa, enlargement, zoneEdgeNode: zoneEdge.id };
}

/** Mid-surface node at the rim of each shim and ring, piston side first. */
export const rims = (meshes: readonly BodyMesh[]): number[] =>
  meshes.filter(({ body }) => isElastic(body)).map(({ midSurface }) => midSurface[midSurface.length - 1].id);

function stepPressures(bodies: readonly Body[], pressures_MPa: readonly number[]): number[] {
  const preloaded = bodies.some(({ shift_mm }) => shift_mm !== 0);
  const loads = pressures_MPa[0] === 0 ? pressures_MPa.slice(1) : pressures_MPa;
  const rising = loads.every((p, i) => p > (i === 0 ? 0 : loads[i - 1]));
  if (loads.length === 0 || !rising) throw new Error('pressures must rise, from above 0');
  if (pressures_MPa[0] === 0 && !preloaded) throw new Error('a stack without preload is flat at 0 MPa');
  return preloaded ? [0, ...loads] : [...loads];
}

const isWithin = ({ innerRadius_mm, outerRadius_mm }: Element, spans: ContactPair['spans'], margin_mm = 0): boolean => {
  const middle = (innerRadius_mm + outerRadius_mm) / 2;
  return spans.some(({ from_mm, to_mm }) => middle > from_mm - margin_mm && middle < to_mm + margin_mm);
};

/** Digits that tell a radius from its neighbour and still fit the twenty columns of the program. */
const digits = (value: number): string => String(Number(value.toPrecision(12)));

function meshText(meshes: readonly BodyMesh[], enlargement: number): string {
  const nodes = meshes
    .flatMap((m) => m.nodes)
    .map(({ id, radius_mm, z_mm }) => `${id},${digits(enlargement * radius_mm)},${digits(enlargement * z_mm)}\n`);
  const elements = meshes.map(({ body, elements }) => {
    const lines = elements.map(({ id, nodes }) => `${[id, ...nodes].join(',')}\n`);
    return `*ELEMENT, TYPE=CAX8R, ELSET=${body.name}\n${lines.join('')}`;
  });
  return `*NODE, NSET=ALL\n${nodes.join('')}${elements.join('')}`;
}

function materialText({ material = SPRING_STEEL }: StackFile, meshes: readonly BodyMesh[]): string {
  const { youngsModulus_GPa, poissonsRatio } = material;
  const sections = meshes.map(({ body }) => `*SOLID SECTION, ELSET=${body.name}, MATERIAL=STRIP\n`);
  return `*MATERIAL, NAME=STRIP\n*ELASTIC\n${digits(1000 * youngsModulus_GPa)},${poissonsRatio}\n${sections.join('')}`;
}

function contactText(
  meshes: readonly BodyMesh[],
  pairs: readonly ContactPair[],
  penalty: number,
  enlargement: number,
): string {
  if (pairs.length === 0) return '';
  const behaviour = `*SURFACE INTERACTION, NAME=TOUCH\n*SURFACE BEHAVIOR, PRESSURE-OVERCLOSURE=LINEAR\n${penalty / enlargement}\n`;
  return behaviour + pairs.map((pair, i) => pairText(meshes, pair, i + 1, enlargement)).join('');
}

function pairText(meshes: readonly BodyMesh[], pair: ContactPair, number: number, enlargement: number): string {
  const { lower, upper, slave } = pair;
  const lowerFaces = facesText(meshes, pair, 'lower', `P${number}LOWER`);
  const upperFaces = facesText(meshes, pair, 'upper', `P${number}UPPER`);
  const [first, second] = slave === 'lower' ? ['LOWER', 'UPPER'] : ['UPPER', 'LOWER'];
  const [points, searched] = [`P${number}${first}`, `P${number}${second}`];
  const gap_mm = upper.bottom_mm - topOf(lower);
  // Enlarged with the rest, the gap is put back to its own size.
  const enlarged = enlargement !== 1 && gap_mm > TOUCHING_MM;
  const clearance = enlarged ? `*CLEARANCE, MASTER=${searched}, SLAVE=${points}, VALUE=${digits(gap_mm)}\n` : '';
  const contact = `*CONTACT PAIR, INTERACTION=TOUCH, TYPE=SURFACE TO SURFACE\n${points},${searched}\n`;
  return lowerFaces + upperFaces + contact + clearance;
}

function facesText(meshes: readonly BodyMesh[], pair: ContactPair, side: 'lower' | 'upper', name: string): string {
  const { elements } = meshes.find(({ body }) => body === pair[side]) as BodyMesh;
  const longest_mm = Math.max(...elements.map(({ innerRadius_mm, outerRadius_mm }) => outerRadius_mm - innerRadius_mm));
  // The searched face reaches a little farther, so that sliding contact points still find it.
  const chosen = elements.filter((e) => isWithin(e, pair.spans, side === pair.slave ? 0 : longest_mm));
  const face = side === 'lower' ? OUTER_FACE : PISTON_FACE;
  return `*SURFACE, NAME=${name}, TYPE=ELEMENT\n${chosen.map(({ id }) => `${id},S${face}\n`).join('')}`;
}

/** Nodes that are held: the clamp edge of a shim, all of a seat or plate, none of a ring. */
export function heldNodes({ body, nodes, innerEdge }: BodyMesh): readonly number[] {
  if (body.role === 'ring') return [];
  return body.role === 'shim' ? innerEdge : nodes.map(({ id }) => id);
}

const held = (meshes: readonly BodyMesh[]): BodyMesh[] => meshes.filter((mesh) => heldNodes(mesh).length > 0);

function boundaryText(meshes: readonly BodyMesh[]): string {
  const sets = held(meshes).map((mesh) => {
    const nodes = heldNodes(mesh).map((id) => `${id},\n`);
    return `*NSET, NSET=H${mesh.body.name}\n${nodes.join('')}`;
  });
  const stress = meshes.filter(({ body }) => body.role === 'shim').map(({ elements: [first] }) => `${first.id},\n`);
  const fixed = held(meshes).map(({ body }) => `H${body.name},1,2\n`);
  return `${sets.join('')}*ELSET, ELSET=ATCLAMP\n${stress.join('')}*BOUNDARY\n${fixed.join('')}`;
}

interface Step {
  readonly pressure_MPa: number;
  /** The step that moves what began elsewhere than it belongs. */
  readonly first: boolean;
  readonly theory: AxisymmetricTheory;
  readonly enlargement: number;
}

function stepText(meshes: readonly BodyMesh[], { pressure_MPa, first, theory, enlargement }: Step): string {
  const moved = first ? meshes.filter(({ body }) => body.shift_mm !== 0) : [];
  const load = pressure_MPa === 0 ? '' : `*DLOAD\nLOADED,P${PISTON_FACE},${digits(pressure_MPa / enlargement)}\n`;
  const reactions = held(meshes).map(({ body }) => `*NODE PRINT, NSET=H${body.name}, TOTALS=ONLY, ${LAST_ONLY}\nRF\n`);
  return [
    `*STEP, INC=2000${theory === 'large-deflection' ? ', NLGEOM' : ''}\n`,
    `*CONTROLS, PARAMETERS=FIELD\n${CONVERGENCE}\n*CONTROLS, PARAMETERS=CONTACT\n${CONTACT_CONTROL}\n`,
    `*STATIC\n${INCREMENTS}\n`,
    ...moved.map(({ body }) => `*BOUNDARY\nH${body.name},2,2,${digits(body.shift_mm)}\n`),
    load,
    `*NODE PRINT, NSET=LIFTS, ${LAST_ONLY}\nU\n`,
    ...reactions,
    `*EL PRINT, ELSET=ATCLAMP, ${LAST_ONLY}\nS\n*END STEP\n`,
  ].join('');
}
