/** Reads the imports of TypeScript sources and walks the graph they make. Works on texts, so that tests can plant files. */
import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { dirname, join, posix, relative, sep } from 'node:path';
import { fileURLToPath } from 'node:url';
import ts from 'typescript';

export const ROOT = fileURLToPath(new URL('../..', import.meta.url));

/** - `worker`: started in another thread, so what it needs does not come into this one. */
export type ImportKind = 'value' | 'type' | 'worker';

export interface Import {
  readonly kind: ImportKind;
  /** A path from the root of the repository, or the name of a package. */
  readonly target: string;
  readonly isPackage: boolean;
}

export type Sources = ReadonlyMap<string, string>;
export type Graph = ReadonlyMap<string, readonly Import[]>;

/** Every TypeScript file below the folders, by its path from the root. */
export function readSources(...folders: string[]): Sources {
  const files = folders
    .filter((folder) => existsSync(join(ROOT, folder)))
    .flatMap((folder) => filesBelow(join(ROOT, folder)));
  return new Map(files.map((file) => [relative(ROOT, file).split(sep).join('/'), readFileSync(file, 'utf8')]));
}

function filesBelow(folder: string): string[] {
  return readdirSync(folder, { withFileTypes: true }).flatMap((entry) => {
    const path = join(folder, entry.name);
    if (entry.isDirectory()) return filesBelow(path);
    return /\.(ts|tsx|mts|mjs|js)$/.test(entry.name) ? [path] : [];
  });
}

export const buildGraph = (sources: Sources): Graph =>
  new Map([...sources].map(([path, text]) => [path, importsOf(path, text)]));

export function importsOf(path: string, text: string): Import[] {
  const source = parse(path, text);
  const found: Import[] = [];
  const visit = (node: ts.Node): void => {
    const reference = referenceOf(node);
    if (reference) found.push(resolve(path, ...reference));
    ts.forEachChild(node, visit);
  };
  visit(source);
  return found;
}

export const parse = (path: string, text: string): ts.SourceFile =>
  ts.createSourceFile(path, text, ts.ScriptTarget.ES2022, true);

type Reference = [kind: ImportKind, specifier: string];

function referenceOf(node: ts.Node): Reference | undefined {
  if (ts.isImportDeclaration(node)) return [isTypeImport(node) ? 'type' : 'value', textOf(node.moduleSpecifier)];
  if (ts.isExportDeclaration(node) && node.moduleSpecifier) {
    return [isTypeExport(node) ? 'type' : 'value', textOf(node.moduleSpecifier)];
  }
  if (ts.isImportTypeNode(node) && ts.isLiteralTypeNode(node.argument)) return ['type', textOf(node.argument.literal)];
  if (ts.isCallExpression(node) && node.expression.kind === ts.SyntaxKind.ImportKeyword) {
    return ['value', textOf(node.arguments[0])];
  }
  if (ts.isNewExpression(node) && isUrlBesideThisFile(node)) return ['worker', textOf(node.arguments![0])];
  return undefined;
}

/** A dynamic import or address that is no plain text cannot be followed, so it counts as an import of nothing known. */
const textOf = (node: ts.Node | undefined): string => (node && ts.isStringLiteralLike(node) ? node.text : '(computed)');

function isTypeImport({ importClause }: ts.ImportDeclaration): boolean {
  if (!importClause) return false;
  if (importClause.isTypeOnly) return true;
  const names = importClause.namedBindings;
  return !importClause.name && names !== undefined && ts.isNamedImports(names) && allTypes(names.elements);
}

function isTypeExport({ isTypeOnly, exportClause }: ts.ExportDeclaration): boolean {
  return (
    isTypeOnly || (exportClause !== undefined && ts.isNamedExports(exportClause) && allTypes(exportClause.elements))
  );
}

const allTypes = (elements: ts.NodeArray<ts.ImportSpecifier | ts.ExportSpecifier>): boolean =>
  elements.length > 0 && elements.every((element) => element.isTypeOnly);

/** `new URL('…', import.meta.url)`: how a worker is named. */
const isUrlBesideThisFile = ({ expression, arguments: args }: ts.NewExpression): boolean =>
  expression.getText() === 'URL' && args?.length === 2 && args[1].getText() === 'import.meta.url';

function resolve(from: string, kind: ImportKind, specifier: string): Import {
  if (!specifier.startsWith('.')) return { kind, target: packageOf(specifier), isPackage: true };
  return { kind, target: posix.normalize(posix.join(dirname(from), specifier.replace(/\?.*$/, ''))), isPackage: false };
}

const packageOf = (specifier: string): string =>
  specifier.startsWith('node:') ? 'node' : specifier.split('/', specifier.startsWith('@') ? 2 : 1).join('/');

/** From `start`, every file and package that comes along as values, each with the way to it. */
export function reachedFrom(graph: Graph, start: string): ReadonlyMap<string, readonly string[]> {
  const ways = new Map<string, readonly string[]>([[start, [start]]]);
  for (const [file, way] of ways) {
    for (const { kind, target } of graph.get(file) ?? []) {
      if (kind === 'value' && !ways.has(target)) ways.set(target, [...way, target]);
    }
  }
  return ways;
}

/** Circles of imports, types included, each named once by its files in order. */
export function cyclesOf(graph: Graph): string[][] {
  const done = new Set<string>();
  const cycles: string[][] = [];
  const walk = (file: string, trail: readonly string[]): void => {
    const at = trail.indexOf(file);
    if (at >= 0) cycles.push([...trail.slice(at), file]);
    if (at >= 0 || done.has(file)) return;
    for (const { kind, target, isPackage } of graph.get(file) ?? []) {
      if (!isPackage && kind !== 'worker') walk(target, [...trail, file]);
    }
    done.add(file);
  };
  for (const file of graph.keys()) walk(file, []);
  return cycles;
}
