/** Rules of the house that a file can break by itself. Each finds breaches in a text, so that tests can plant one. */
import ts from 'typescript';
import { parse, type Sources } from './import-graph.ts';

export const MAX_FILE_LINES = 250;
export const MAX_FUNCTION_LINES = 60;

/** Tables of data may be long: constants, fixtures in words, texts of the page. */
const TABLE = /(-tables?\.ts|^src\/ui\/text\/.+)$/;

export type Rule = (path: string, text: string) => string[];

export const breachesIn = (sources: Sources, rule: Rule): string[] =>
  [...sources].flatMap(([path, text]) => rule(path, text).map((breach) => `${path}: ${breach}`));

export const fileLength: Rule = (path, text) => {
  const lines = text.trimEnd().split('\n').length;
  return lines > MAX_FILE_LINES && !TABLE.test(path) ? [`${lines} lines`] : [];
};

export const functionLength: Rule = (path, text) => {
  const source = parse(path, text);
  const lineOf = (position: number) => source.getLineAndCharacterOfPosition(position).line;
  return nodesOf(source)
    .filter((node) => isFunctionWithBody(node) && !isGroupOfTests(node))
    .map((node) => [lineOf(node.getStart()) + 1, lineOf(node.getEnd()) - lineOf(node.getStart()) + 1])
    .filter(([, lines]) => lines > MAX_FUNCTION_LINES)
    .map(([line, lines]) => `a function of ${lines} lines at line ${line}`);
};

/** Chance and clocks make a result that nobody can repeat. */
export const noChanceNoClock: Rule = (path, text) =>
  nodesOf(parse(path, text))
    .map((node) => node.getText())
    .filter((code) => /^(Math\.random|Date\.now|performance\.now|new Date\(\))$/.test(code));

/** Mathematics in single letters wants the table that says what they mean. */
export const symbolTable: Rule = (path, text) => {
  if (/symbol[ |]+unit[ |]+meaning/.test(text)) return [];
  const letters = new Set(nodesOf(parse(path, text)).filter(ts.isBinaryExpression).flatMap(lettersMultiplied));
  return letters.size > 0 ? [`no symbol table for ${[...letters].sort().join(', ')}`] : [];
};

/** Letters that count things; every other single letter in a product or a quotient is a symbol of mathematics. */
const COUNTERS = new Set(['i', 'j', 'k', 'n', 'm']);
const PRODUCTS = new Set([ts.SyntaxKind.AsteriskToken, ts.SyntaxKind.SlashToken, ts.SyntaxKind.AsteriskAsteriskToken]);

function lettersMultiplied({ left, operatorToken, right }: ts.BinaryExpression): string[] {
  if (!PRODUCTS.has(operatorToken.kind)) return [];
  const names = [left, right].filter(ts.isIdentifier).map((operand) => operand.text);
  return names.filter((name) => /^[A-Za-zα-ω][0-9]?$/.test(name) && !COUNTERS.has(name));
}

/** Factors between units that belong to src/units alone. */
const UNIT_FACTORS = new Set([
  25.4, 0.0254, 6894.757293168, 6.894757, 6894.757, 4.4482216152605, 4.448222, 1.3558179483314,
]);
const UNIT_OFFSETS = new Set([273.15, 101325, 459.67]);

export const noUnitFactors: Rule = (path, text) =>
  nodesOf(parse(path, text))
    .filter(ts.isNumericLiteral)
    .filter(({ text: digits }) => UNIT_FACTORS.has(Number(digits)) || UNIT_OFFSETS.has(Number(digits)))
    .map((node) => `the unit factor ${node.getText()}`);

/** Attributes of an element that a person reads or hears. */
const READ_ALOUD =
  /^(aria-(label|description|roledescription|valuetext|placeholder)|title|placeholder|alt|label|message)$/;
const LETTER = /\p{L}/u;
const TWO_WORDS = /\p{L}{2,} \p{L}{2,}/u;

type Written = ts.StringLiteralLike | ts.TemplateLiteralLikeNode;
const isWritten = (node: ts.Node): node is Written =>
  ts.isStringLiteralLike(node) || ts.isTemplateHead(node) || ts.isTemplateMiddle(node) || ts.isTemplateTail(node);

/** What stands nearest around a text and says what it is for: an attribute, an error thrown, or nothing of these. */
function purposeOf(node: ts.Node): string {
  for (let at = node.parent; at && !ts.isStatement(at); at = at.parent) {
    if (ts.isJsxAttribute(at)) return at.name.getText();
    if (ts.isNewExpression(at)) return at.expression.getText();
    if (ts.isPropertyAssignment(at) && at.initializer === node) return at.name.getText();
    if (ts.isCallExpression(at) && /\.(querySelector(All)?|closest|matches)$/.test(at.expression.getText()))
      return 'selector';
    // Arguments and what is compared with are names within the program, but for sentences.
    if (ts.isFunctionLike(at) || ts.isCallExpression(at) || ts.isBinaryExpression(at)) return '';
  }
  return '';
}

/** Names of classes, and faults of the program that nobody is meant to see. */
const NOT_READ = /^(selector|class|className|d|style|transform|Error|DOMException|TypeError|RangeError)$/;

/** A value of a style, such as a mixed colour. */
const STYLE_FUNCTION = /^[a-z-]+\(/;

/** Words of the bench stand in its catalogue, so that a translation is one folder. */
export const noWords: Rule = (path, text) =>
  nodesOf(parse(path, text)).flatMap((node) => {
    if (ts.isJsxText(node)) return LETTER.test(node.text) ? [`the words ${JSON.stringify(node.text.trim())}`] : [];
    if (!isWritten(node) || STYLE_FUNCTION.test(node.text)) return [];
    const purpose = purposeOf(node);
    const isRead = READ_ALOUD.test(purpose)
      ? LETTER.test(node.text)
      : TWO_WORDS.test(node.text) && !NOT_READ.test(purpose);
    return isRead ? [`the words ${JSON.stringify(node.text)}`] : [];
  });

/** Of the texts of the bench, from which a phrase could be joined. */
const STEPPING = /^(editOrTell|editStack|replaceProject|openAsNew)$/;
const FROM_CATALOGUE = /^(text|words|\w+Words)\./;

/** A step that undo names is one phrase of the catalogue: words joined in a program keep their order in every language. */
export const wholeSteps: Rule = (path, text) =>
  nodesOf(parse(path, text)).flatMap((node) => {
    const { parent } = node;
    if (!ts.isTemplateExpression(node)) return [];
    const isStep = ts.isCallExpression(parent)
      ? STEPPING.test(parent.expression.getText()) && parent.arguments[1] === node
      : ts.isPropertyAssignment(parent) && parent.name.getText() === 'label';
    if (!isStep) return [];
    const joined = node.templateSpans.some(({ expression }) => FROM_CATALOGUE.test(expression.getText()));
    return joined ? [`a step joined of words: ${node.getText()}`] : [];
  });

function nodesOf(root: ts.Node): ts.Node[] {
  const found: ts.Node[] = [];
  const visit = (node: ts.Node): void => {
    found.push(node);
    ts.forEachChild(node, visit);
  };
  visit(root);
  return found;
}

const isFunctionWithBody = (node: ts.Node): node is ts.FunctionLikeDeclaration =>
  ts.isFunctionLike(node) && 'body' in node && node.body !== undefined;

/** `describe(…, () => { … })` groups tests and is no function of its own. */
const isGroupOfTests = ({ parent }: ts.Node): boolean =>
  ts.isCallExpression(parent) && /^describe\b/.test(parent.expression.getText());
