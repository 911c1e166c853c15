/**
 * What a run of the continuum model says about the stack at the end of each step.
 *
 * Lift = axial displacement of the mid-surface node, plus the height a propped body began above its place. Stress at
 * the clamp from the radial stress at the stress points of the first element, nearly linear through the thickness t:
 * M = ∫ σ z dz, N = ∫ σ dz at its two radial stations, drawn on to the clamp; largest surface stress |6 M/t²| + N/t.
 * At the points the radial direction is within one degree of the printed x.
 */
import type { BodyMesh } from './mesh.ts';
import { type PrintBlock, readPrintFile } from './print-file.ts';
import { type Model, rims } from './write-model.ts';

export interface StackResult {
  readonly pressure_MPa: number;
  /** Of each shim and ring, piston side first. */
  readonly shimEdgeLift_mm: readonly number[];
  readonly zoneEdgeLift_mm: number;
  /** Largest radial surface stress at the clamp of each shim; none for a ring. */
  readonly clampStress_MPa: readonly (number | undefined)[];
  /** Force of the shims on the clamp and on the plate, of the seat on the face shim; all along z. */
  readonly clampForce_N: number;
  readonly plateForce_N: number;
  readonly seatForce_N: number;
}

/** The program models two degrees of the full circle. */
const SECTORS = 180;
const GAUSS = 1 / Math.sqrt(3);

/** @throws Error naming the pressure at which the run ended before its last step */
export function readResults(text: string, model: Model): StackResult[] {
  const blocks = readPrintFile(text);
  return model.steps_MPa.map((pressure_MPa, i) => {
    const step = blocks.filter(({ time }) => Math.abs(time - (i + 1)) < 1e-6);
    if (step.length === 0) throw new Error(`the run did not converge at ${pressure_MPa} MPa`);
    return readStep(step, model, pressure_MPa);
  });
}

function readStep(
  blocks: readonly PrintBlock[],
  { meshes, zoneEdgeNode, enlargement }: Model,
  pressure_MPa: number,
): StackResult {
  const elastic = meshes.filter(({ body }) => body.role === 'shim' || body.role === 'ring');
  const lifts = rowsOf(blocks, 'displacements', 'LIFTS');
  const liftAt = (node: number): number => {
    const row = lifts.find(([id]) => id === node);
    if (!row) throw new Error(`print file: no displacement of node ${node}`);
    return row[2];
  };
  const force = (role: BodyMesh['body']['role']): number =>
    meshes
      .filter(({ body }) => body.role === role)
      .reduce(
        (sum, { body }) => sum + (SECTORS / enlargement) * rowsOf(blocks, 'total force', `H${body.name}`)[0][1],
        0,
      );
  return {
    pressure_MPa,
    shimEdgeLift_mm: rims(meshes).map((node, i) => liftAt(node) - elastic[i].body.shift_mm),
    zoneEdgeLift_mm: liftAt(zoneEdgeNode),
    clampStress_MPa: elastic.map((mesh) =>
      mesh.body.role === 'shim' ? enlargement * clampStress(blocks, mesh) : undefined,
    ),
    // Printed reactions hold the body; the shims push on clamp and plate the other way.
    clampForce_N: -force('shim'),
    plateForce_N: -force('plate'),
    seatForce_N: force('seat'),
  };
}

function rowsOf(blocks: readonly PrintBlock[], quantity: PrintBlock['quantity'], set: string): PrintBlock['rows'] {
  const block = blocks.find((candidate) => candidate.quantity === quantity && candidate.set === set);
  if (!block || block.rows.length === 0) throw new Error(`print file: no ${quantity} for set ${set}`);
  return block.rows;
}

/** Points 1 and 2 lie on the piston side, 3 and 4 on the outer side, each pair from the inside; 5 to 8 mirror them. */
function clampStress(blocks: readonly PrintBlock[], { body, elements: [first] }: BodyMesh): number {
  const rows = rowsOf(blocks, 'stresses', 'ATCLAMP').filter(([element]) => element === first.id);
  const radialStress = (point: number): number => {
    const both = rows.filter(([, at]) => at === point || at === point + 4);
    if (both.length !== 2) throw new Error(`print file: no stress at point ${point} of element ${first.id}`);
    return (both[0][2] + both[1][2]) / 2;
  };
  const t = body.thickness_mm;
  const stations = [1, 2].map((inner) => {
    const [piston, outer] = [radialStress(inner), radialStress(inner + 2)];
    return { M: (GAUSS * t * t * (outer - piston)) / 4, N: (t * (outer + piston)) / 2 };
  });
  const [M, N] = (['M', 'N'] as const).map((key) => toInnerEdge(stations[0][key], stations[1][key]));
  return Math.abs((6 * M) / (t * t)) + N / t;
}

/** Values at the stations -1/√3 and 1/√3 of an element, drawn on in a straight line to its inner edge at -1. */
const toInnerEdge = (inner: number, outer: number): number => (inner + outer) / 2 - (outer - inner) / (2 * GAUSS);
