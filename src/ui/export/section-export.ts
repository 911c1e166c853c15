/** Section and plan as they stand on the page, bent at the speed cursor, as picture files. */
import { lineOf } from '../app/lines.ts';
import { project } from '../app/store.ts';
import { DRAWINGS, type DrawingName } from '../section/section-choices.ts';
import { text } from '../text/en.ts';
import { type PictureFormat, PNG_SCALE, savePicture } from './chart-pictures.ts';
import type { ExportChoice } from './export-menu.tsx';
import { lightInks } from './light-inks.ts';
import { withOwnStyles } from './own-styles.ts';
import { rasterise } from './rasterise.ts';
import { laySection, type SheetLayout, type SheetWords } from './section-sheet.ts';

const words = text.export;
const SVG = 'http://www.w3.org/2000/svg';

function drawn(name: string, attributes: Readonly<Record<string, string | number>>): SVGElement {
  const element = document.createElementNS(SVG, name);
  for (const [key, value] of Object.entries(attributes)) element.setAttribute(key, String(value));
  return element;
}

const NOTES: Readonly<Record<DrawingName, string>> = { section: text.section.scaleWhy, plan: text.plan.note };

function wordsOf(which: DrawingName, sheet: Element, drawing: Element): SheetWords {
  const { name, invented } = project.value;
  const cells = [...sheet.querySelectorAll('.title-block > div')].map(
    (cell) => [cell.querySelector('dt')?.textContent ?? '', cell.querySelector('dd')?.textContent ?? ''] as const,
  );
  const beyond = [...sheet.querySelectorAll('.sheet-note')].map((note) => note.textContent ?? '');
  return {
    title: words.title(name, drawing.getAttribute('aria-label') ?? text.section.title),
    cells,
    notes: [...beyond, NOTES[which], `${text.chart.estimate} ${words.madeWith}`, ...(invented ? [words.invented] : [])],
  };
}

function compose(copy: SVGSVGElement, { width, height, drawingX, drawingY, lines }: SheetLayout): string {
  const inks = lightInks();
  const root = drawn('svg', { width, height, viewBox: `0 0 ${width} ${height}` });
  copy.setAttribute('x', String(drawingX));
  copy.setAttribute('y', String(drawingY));
  const { fontFamily } = getComputedStyle(document.body);
  const lettering = drawn('g', { 'font-family': fontFamily });
  for (const { words: line, x, y, size, tone } of lines) {
    const element = drawn('text', { x, y, 'font-size': size, fill: inks[tone] });
    element.textContent = line;
    lettering.append(element);
  }
  root.append(drawn('rect', { width, height, fill: inks.sheet }), copy, lettering);
  return new XMLSerializer().serializeToString(root);
}

interface SectionPicture {
  readonly svg: string;
  readonly width: number;
  readonly height: number;
}

const figureOf = (which: DrawingName): Element | null =>
  document.querySelector(`.sheet.section [data-figure="${which}"]`);

/** @throws Error when the drawing is not on the page */
function picture(which: DrawingName): SectionPicture {
  const sheet = figureOf(which);
  const drawing = sheet?.querySelector<SVGSVGElement>('.drawing svg');
  if (!sheet || !drawing) throw new Error(words.noDrawing);
  const size = { width: drawing.width.baseVal.value, height: drawing.height.baseVal.value };
  const layout = laySection(size, wordsOf(which, sheet, drawing));
  const colours = project.value.builds.map(({ id }) => lineOf(id).colour);
  return { svg: compose(withOwnStyles(drawing, colours), layout), width: layout.width, height: layout.height };
}

const saveDrawing = (which: DrawingName, format: PictureFormat): Promise<void> =>
  savePicture(words.files[which], format, async () => {
    const { svg, width, height } = picture(which);
    return format === 'svg' ? svg : rasterise(svg, width, height, PNG_SCALE);
  });

/** Of the drawings on the page: one beside the bench, both in the large view. */
export const sectionChoices = (): ExportChoice[] =>
  DRAWINGS.filter((which) => figureOf(which) !== null).flatMap((which) => [
    { id: `${which}-svg`, label: words.drawingSvg[which], run: () => void saveDrawing(which, 'svg') },
    { id: `${which}-png`, label: words.drawingPng[which], run: () => void saveDrawing(which, 'png') },
  ]);
