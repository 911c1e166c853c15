/** Which way imports may run. Every file belongs to one zone; every import must be in the zone's row. */
import { type Graph, type Import, reachedFrom } from './import-graph.ts';

const ZONES = [
  ['units base', /^src\/units\/(fault|si)\.ts$/],
  ['units', /^src\/units\//],
  ['model', /^src\/model\//],
  ['measured', /^src\/measured\//],
  ['solver door', /^src\/solver\/index\.ts$/],
  ['solver adapter', /^src\/solver\/from-model(\/[a-z-]+)?\.ts$/],
  ['solver core', /^src\/solver\//],
  ['sheet', /^src\/sheet\//],
  ['proof', /^src\/proof\//],
  ['demo', /^src\/demo\//],
  ['cli', /^src\/cli\//],
  ['ui', /^src\/ui\//],
  ['protocol', /^workers\/(protocol|page-jobs|cycle-protocol)\.ts$/],
  ['client', /^workers\/client\.ts$/],
  ['page side', /^workers\/(dispatcher|solver-error|spawn|ticket|worker-end|worker-link)\.ts$/],
  [
    'worker side',
    /^workers\/(solver\.worker|solver|solver-api|solver-functions|cycle-for-build|forces-for-build)\.ts$/,
  ],
  ['both sides', /^workers\/lifeline\.ts$/],
  ['proof protocol', /^workers\/proof-protocol\.ts$/],
  ['proof client', /^workers\/proof-client\.ts$/],
  ['proof spawn', /^workers\/proof-spawn\.ts$/],
  ['proof worker', /^workers\/(proof\.worker|proof-api|proof-cases)\.ts$/],
  ['package', /^package\.json$/],
] as const;

export type Zone = (typeof ZONES)[number][0];

interface Row {
  readonly values: readonly Zone[];
  readonly types?: readonly Zone[];
  readonly workers?: readonly Zone[];
  readonly packages?: readonly string[];
}

const ROWS: Record<Zone, Row> = {
  'units base': { values: ['units base'] },
  units: { values: ['units base', 'units'], packages: ['mathjs'] },
  model: { values: ['units base', 'units', 'model'], packages: ['jsonc-parser', 'zod'] },
  measured: { values: ['measured', 'units base', 'units', 'model'], packages: ['papaparse'] },
  sheet: { values: ['sheet', 'units base', 'units', 'model'] },
  'solver core': {
    values: ['units base', 'solver core'],
    packages: ['ml-matrix', 'ml-levenberg-marquardt', 'pure-rand'],
  },
  'solver adapter': { values: ['units base', 'units', 'model', 'solver core', 'solver adapter'] },
  'solver door': { values: ['units base', 'solver core', 'solver adapter'] },
  proof: { values: ['proof', 'units base', 'units', 'model', 'solver core', 'solver adapter', 'solver door'] },
  package: { values: [] },
  demo: { values: ['demo'], types: ['model'] },
  cli: {
    values: ['cli', 'units base', 'units', 'model', 'measured', 'sheet', 'solver door', 'package'],
    packages: ['node'],
  },
  protocol: { values: [], types: ['units base', 'model', 'solver door', 'protocol'] },
  'both sides': { values: [] },
  'worker side': { values: ['worker side', 'both sides', 'protocol', 'solver door'], packages: ['comlink'] },
  'page side': {
    values: ['page side', 'both sides', 'protocol'],
    types: ['model'],
    workers: ['worker side'],
    packages: ['comlink'],
  },
  client: { values: ['page side', 'protocol'], types: ['model'] },
  'proof protocol': { values: [], types: ['proof'] },
  'proof client': {
    values: ['page side', 'both sides', 'proof spawn'],
    types: ['proof protocol'],
    packages: ['comlink'],
  },
  'proof spawn': { values: [], types: ['page side'], workers: ['proof worker'] },
  'proof worker': { values: ['proof worker', 'both sides', 'proof'], types: ['proof protocol'], packages: ['comlink'] },
  ui: {
    values: ['ui', 'units base', 'units', 'model', 'measured', 'sheet', 'demo', 'package', 'client', 'proof client'],
    types: ['protocol', 'proof protocol'],
    packages: ['@preact/signals', 'idb', 'plotly.js-dist', 'preact'],
  },
};

export const zoneOf = (path: string): Zone | undefined => ZONES.find(([, pattern]) => pattern.test(path))?.[0];

/** Every import that the rows do not allow, in words. */
export function breachesOf(graph: Graph): string[] {
  return [...graph].flatMap(([file, imports]) => {
    const zone = zoneOf(file);
    if (!zone) return [`${file} belongs to no zone`];
    return imports.filter((found) => !isAllowed(ROWS[zone], found)).map((found) => describe(file, zone, found));
  });
}

function isAllowed(row: Row, { kind, target, isPackage }: Import): boolean {
  if (isPackage) return (row.packages ?? []).includes(target);
  const zone = zoneOf(target);
  if (!zone) return false;
  if (kind === 'worker') return (row.workers ?? []).includes(zone);
  return row.values.includes(zone) || (kind === 'type' && (row.types ?? []).includes(zone));
}

const describe = (file: string, zone: Zone, { kind, target, isPackage }: Import): string =>
  `${file} (${zone}) may not import ${target} (${isPackage ? 'package' : (zoneOf(target) ?? 'no zone')}, ${kind})`;

/** What must not come along, however long the way: a shared file is how leaks happen. */
const KEPT_OUT: readonly { readonly from: RegExp; readonly out: RegExp }[] = [
  {
    from: /^src\/(units|model|measured|sheet|solver)\//,
    out: /^(node|preact|@preact\/.+|plotly.*|idb|comlink|src\/(ui|cli|demo)\/.*|workers\/.*)$/,
  },
  { from: /^src\/solver\//, out: /^(mathjs|zod|jsonc-parser)$/ },
  { from: /^workers\/(solver|proof)\.worker\.ts$/, out: /^(node|preact|@preact\/.+|plotly.*|idb|src\/(ui|cli)\/.*)$/ },
  { from: /^(src\/ui|workers\/(proof-)?client)/, out: /^(node|src\/(solver|proof|cli)\/.*)$/ },
  { from: /^src\/cli\//, out: /^(preact|@preact\/.+|plotly.*|idb|comlink|src\/ui\/.*|workers\/.*)$/ },
];

/** Leaks through any number of files, each with its way. */
export function leaksOf(graph: Graph): string[] {
  return [...graph.keys()].flatMap((file) => {
    const out = KEPT_OUT.filter(({ from }) => from.test(file)).map((rule) => rule.out);
    if (out.length === 0) return [];
    const reached = [...reachedFrom(graph, file)];
    return reached.filter(([target]) => out.some((rule) => rule.test(target))).map(([, way]) => way.join(' → '));
  });
}
