/** A drawing of the page made to stand alone: its styles written into its elements, for a light page. */
import { onLight } from '../app/palette.ts';
import { onLightPage } from './light-inks.ts';

/** What the style sheet decides about a drawing. */
const PROPERTIES = [
  'fill',
  'fill-opacity',
  'stroke',
  'stroke-width',
  'stroke-opacity',
  'stroke-dasharray',
  'stroke-linecap',
  'stroke-linejoin',
  'stop-color',
  'opacity',
  'paint-order',
  'visibility',
  'font-family',
  'font-size',
  'font-weight',
  'text-anchor',
] as const;

/** Of no use outside the page. */
const PAGE_ONLY = /^(class|role|tabindex|data-.+|aria-.+)$/;

/** `color(srgb 0.5 0 1)`, which programs for drawings do not read, to `rgb(128, 0, 255)`. */
export const plainColour = (value: string): string =>
  value.replace(
    /color\(srgb ([\d.e-]+) ([\d.e-]+) ([\d.e-]+)(?: \/ ([\d.e-]+))?\)/g,
    (_, red: string, green: string, blue: string, alpha?: string) => {
      const [r, g, b] = [red, green, blue].map((share) => Math.round(Math.min(Math.max(Number(share), 0), 1) * 255));
      return alpha === undefined ? `rgb(${r}, ${g}, ${b})` : `rgba(${r}, ${g}, ${b}, ${alpha})`;
    },
  );

const styleOf = (computed: CSSStyleDeclaration): string =>
  PROPERTIES.map((name) => `${name}:${plainColour(computed.getPropertyValue(name))}`).join(';');

/** Builds wear the colours of the screen in their own styles. */
function lighten(element: SVGElement, asShown: ReadonlyMap<string, string>): void {
  const build = element.style.getPropertyValue('--build').trim();
  if (build !== '') element.style.setProperty('--build', onLight(build));
  const light = asShown.get(element.style.stroke);
  if (light !== undefined) element.style.stroke = light;
}

/** Colours as a browser writes them back, each with its partner on a light page. */
function partnersOf(colours: readonly string[]): ReadonlyMap<string, string> {
  const probe = document.createElement('i');
  return new Map(
    colours.map((colour) => {
      probe.style.color = colour;
      return [probe.style.color, onLight(colour)];
    }),
  );
}

/** A copy of a drawing with every style in itself; the drawing on the page stays as it is. */
export function withOwnStyles(drawing: SVGSVGElement, buildColours: readonly string[]): SVGSVGElement {
  const copy = drawing.cloneNode(true) as SVGSVGElement;
  // Beside the original, under the same rules of the style sheet; gone before anything is painted.
  drawing.parentElement?.append(copy);
  const all = [copy, ...copy.querySelectorAll<SVGElement>('*')];
  const partners = partnersOf(buildColours);
  for (const element of all) {
    element.classList.remove('active');
    lighten(element, partners);
  }
  const styles = onLightPage(() => all.map((element) => styleOf(getComputedStyle(element))));
  copy.remove();
  all.forEach((element, i) => {
    for (const { name } of [...element.attributes]) if (PAGE_ONLY.test(name)) element.removeAttribute(name);
    element.setAttribute('style', styles[i]);
  });
  return copy;
}
