/** The three files of a reference case made from a run of the continuum model. */
import type { StackFile } from '../../src/model/project.ts';
import type { Tolerance } from '../../src/proof/proof-case.ts';
import type { AxisymmetricTheory } from '../../src/solver/types.ts';
import { isElastic } from './bodies.ts';
import { type NamedQuantity, namedQuantities, type QuantityKind } from './quantities.ts';
import type { StackResult } from './read-results.ts';
import type { Model, ModelOptions } from './write-model.ts';

export interface CaseRequest {
  readonly id: string;
  readonly title: string;
  readonly stack: StackFile;
  readonly options: ModelOptions;
  readonly model: Model;
  readonly results: readonly StackResult[];
  readonly version: string;
}

export type CaseFiles = Readonly<Record<'case.json' | 'expected.json' | 'SOURCE.md', string>>;

/** Lift over the thickness of the face shim above which axisymmetric states are known to ruffle. */
const WAVY = 2;
const THEORY_WORDS: Readonly<Record<AxisymmetricTheory, string>> = {
  'small-deflection': 'small deflection',
  'large-deflection': 'large deflection',
};

export function caseFiles(request: CaseRequest): CaseFiles {
  return { 'case.json': caseJson(request), 'expected.json': expectedJson(request), 'SOURCE.md': sourceText(request) };
}

function caseJson({ id, title, stack, options: { theory }, results }: CaseRequest): string {
  const document = {
    id,
    field: 'stack',
    title: `Continuum elements: ${title}, ${THEORY_WORDS[theory]}`,
    kind: 'own',
    evaluator: 'stack-lift',
    input: { theory, pressures_MPa: results.map(({ pressure_MPa }) => pressure_MPa), stack },
  };
  return `${JSON.stringify(document, undefined, 2)}\n`;
}

/** Below `small` a relative bound would ask for less than the penalty contact gives away: its size there is kept. */
const BOUNDS: Readonly<Record<QuantityKind, { relative: number; small: number; reason: string }>> = {
  lift: {
    relative: 0.015,
    small: 0.01,
    reason:
      'shear and the thickness of the continuum, which a thin plate leaves out, and the penalty contact of the elements; 1.5 % is the aim of the stack solver',
  },
  stress: {
    relative: 0.04,
    small: 20,
    reason:
      'clamp stress of the continuum is read from the moment extrapolated to a singular corner; 4 % is the aim of the stack solver',
  },
  force: {
    relative: 0.04,
    small: 5,
    reason:
      'seat and plate forces are small differences of load and stiffness; pressure follows the faces of the elements, which turn',
  },
};

function expectedJson({ results, stack }: CaseRequest): string {
  const quantities = namedQuantities(results, {
    seat: stack.seat !== undefined,
    plate: stack.backingPlate !== undefined,
  });
  const names = [...new Set(quantities.map(toleranceName))];
  const tolerances = names.map((name) => `    ${JSON.stringify(name)}: ${JSON.stringify(toleranceOf(name))}`);
  const lines = quantities.map((quantity) => {
    const entry = {
      value: Number(quantity.value.toPrecision(7)),
      unit: quantity.unit,
      tolerance: toleranceName(quantity),
    };
    return `    ${JSON.stringify(quantity.name)}: ${JSON.stringify(entry)}`;
  });
  return `{\n  "tolerances": {\n${tolerances.join(',\n')}\n  },\n  "quantities": {\n${lines.join(',\n')}\n  }\n}\n`;
}

const toleranceName = ({ kind, value }: NamedQuantity): string =>
  Math.abs(value) < BOUNDS[kind].small ? `small ${kind}` : kind;

function toleranceOf(name: string): Tolerance {
  const { relative, small, reason } = BOUNDS[name.replace('small ', '') as QuantityKind];
  if (!name.startsWith('small ')) return { relative, reason };
  return { absolute: Number((relative * small).toPrecision(3)), reason: `as above, of a value of ${small}` };
}

function sourceText({ title, stack, options, model, results, version }: CaseRequest): string {
  const { theory, penalty_MPa_mm } = options;
  const { meshes } = model;
  const shims = meshes.filter(({ body }) => isElastic(body));
  const elements = shims.reduce((sum, mesh) => sum + mesh.elements.length, 0);
  const paragraphs = [
    `# Continuum elements: ${title}, ${THEORY_WORDS[theory]}`,
    `Made by \`npm run reference:fem\` with the general-purpose finite-element program CalculiX ${version}; the stack is invented.
Axisymmetric continuum elements (CAX8R, ${elements} in the shims, 1 through the thickness, ${shims[0].elements.length} along the face shim), frictionless surface-to-surface
penalty contact (${penalty_MPa_mm.toExponential()} MPa/mm), every shim on the clamp held at the clamp radius through its thickness. ${analysis(theory, model)}`,
    `Lifts are those of the mid-surface. The clamp stress is the largest surface stress from moment and membrane force, the moment ∫σ z dz taken
at the stress points of the first element and drawn on to the clamp, not the nodal peak at the corner.`,
    ...(shims.some(({ body }) => body.role === 'ring') ? [RING] : []),
    ...(stack.seat || stack.backingPlate ? ['Seat and backing plate are rigid.'] : []),
    ...(theory === 'large-deflection' && results.some((r) => r.shimEdgeLift_mm[0] > WAVY * stack.shims[0].thickness_mm)
      ? [BEYOND]
      : []),
  ];
  return `${paragraphs.join('\n\n')}\n`;
}

const analysis = (theory: AxisymmetricTheory, { enlargement }: Model): string =>
  theory === 'large-deflection'
    ? 'Large displacements;\npressure follows the faces.'
    : `Limit of small displacements:
a stack ${enlargement} times larger in all but its gaps and preload, under pressures and contact stiffness ${enlargement} times smaller.`;
const RING = `The preload ring is free: it starts on the shim below, the shims above start propped up by it and are drawn down to their
place on the hub in the first step. Its lift counts from where it lies on the flat shim.`;
const BEYOND = `Rows with a face lift above two shim thicknesses lie beyond the onset of waviness: the axisymmetric state is no longer stable there,
so they test the axisymmetric solver and not hardware.`;
