/**
 * Structured meshes of eight-node axisymmetric elements, one element through the thickness.
 * All bodies take their radii from one list, so that facing elements match.
 */
import type { Body } from './bodies.ts';

export interface Element {
  readonly id: number;
  /** Corners counter-clockwise from the inner piston-side one (x = radius, y = axis), then the midsides in that order. */
  readonly nodes: readonly number[];
  readonly innerRadius_mm: number;
  readonly outerRadius_mm: number;
}

export interface Node {
  readonly id: number;
  readonly radius_mm: number;
  readonly z_mm: number;
}

export interface BodyMesh {
  readonly body: Body;
  readonly nodes: readonly Node[];
  readonly elements: readonly Element[];
  /** Nodes of the inner edge, and the mid-surface node at each element edge, by radius from the inside. */
  readonly innerEdge: readonly number[];
  readonly midSurface: readonly Node[];
}

const SAME_RADIUS_MM = 1e-6;

/** Longest element along the radius, and how it shrinks toward the clamp, where the stress of the corner decays. */
export interface Grading {
  readonly clamp_mm: number;
  readonly size_mm: number;
  readonly sizeAtClamp_mm: number;
}

/** Growth of the element length per length away from the clamp. */
const GROWTH = 0.15;

const sizeAt = (r: number, { clamp_mm, size_mm, sizeAtClamp_mm }: Grading): number =>
  Math.min(size_mm, sizeAtClamp_mm + GROWTH * Math.max(r - clamp_mm, 0));

/** Element edges from the innermost to the outermost of `edges`, each of them met, in between as the grading says. */
export function commonRadii(edges: readonly number[], grading: Grading): number[] {
  const sorted = [...edges].sort((a, b) => a - b);
  const distinct = sorted.filter((r, i) => i === 0 || r - sorted[i - 1] > SAME_RADIUS_MM);
  return distinct.flatMap((r, i) => (i === 0 ? [r] : steps(distinct[i - 1], r, grading)));
}

/** Edges behind `from` up to `to`: marched by the grading, then shrunk to end at `to`. */
function steps(from: number, to: number, grading: Grading): number[] {
  const marched: number[] = [];
  let r = from;
  while (r < to - SAME_RADIUS_MM) {
    r += sizeAt(r, grading);
    marched.push(r);
  }
  const scale = (to - from) / (r - from);
  return marched.map((at, i) => (i === marched.length - 1 ? to : from + scale * (at - from)));
}

/** Numbers nodes and elements from `firstNode` and `firstElement` on. */
export function meshBody(body: Body, radii: readonly number[], firstNode: number, firstElement: number): BodyMesh {
  const edges = radii.filter(
    (r) => r > body.innerRadius_mm - SAME_RADIUS_MM && r < body.outerRadius_mm + SAME_RADIUS_MM,
  );
  const halves = edges.flatMap((r, i) => (i === 0 ? [r] : [(edges[i - 1] + r) / 2, r]));
  const row = (ids: number, along: readonly number[], height: number): Node[] =>
    along.map((radius_mm, i) => ({ id: ids + i, radius_mm, z_mm: body.bottom_mm + height * body.thickness_mm }));
  const bottom = row(firstNode, halves, 0);
  const middle = row(firstNode + bottom.length, edges, 0.5);
  const top = row(firstNode + bottom.length + middle.length, halves, 1);
  const elements = edges.slice(1).map((outerRadius_mm, e): Element => {
    const k = 2 * e;
    const corners = [bottom[k], bottom[k + 2], top[k + 2], top[k]];
    const midsides = [bottom[k + 1], middle[e + 1], top[k + 1], middle[e]];
    const nodes = [...corners, ...midsides].map(({ id }) => id);
    return { id: firstElement + e, nodes, innerRadius_mm: edges[e], outerRadius_mm };
  });
  const innerEdge = [bottom[0].id, middle[0].id, top[0].id];
  return { body, nodes: [...bottom, ...middle, ...top], elements, innerEdge, midSurface: middle };
}

/** All bodies on common radii, numbered through. */
export function meshBodies(bodies: readonly Body[], edges: readonly number[], grading: Grading): BodyMesh[] {
  const radii = commonRadii([...edges, ...bodies.flatMap((b) => [b.innerRadius_mm, b.outerRadius_mm])], grading);
  const meshes: BodyMesh[] = [];
  let [node, element] = [1, 1];
  for (const body of bodies) {
    const mesh = meshBody(body, radii, node, element);
    meshes.push(mesh);
    node += mesh.nodes.length;
    element += mesh.elements.length;
  }
  return meshes;
}
