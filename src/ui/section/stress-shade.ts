/** Shades of stress: one hue from pale to deep, so that it reads in print and without colour; the deep end is the limit. */
import type { ShimOutline } from './geometry.ts';
import type { ShimStresses } from './shape-at.ts';

export interface StressScale {
  /** At the deep end of the shades [Pa]. */
  readonly top_Pa: number;
  /** Least yield strength of the shims, where one is known [Pa]. */
  readonly limit_Pa?: number;
  /** Greatest equivalent stress of the state [Pa]. */
  readonly most_Pa: number;
}

/** Steps of the deep end where no limit is known: 1, 2, 5, 10 … times a power of ten. */
function roundUp(value: number): number {
  const power = 10 ** Math.floor(Math.log10(value));
  return power * ([1, 2, 5].find((step) => step * power >= value) ?? 10);
}

export function stressScale({ equivalent_Pa, yield_Pa }: ShimStresses): StressScale {
  const limits = yield_Pa.filter((limit) => limit !== null);
  const most_Pa = Math.max(0, ...equivalent_Pa.map((along) => Math.max(...along)));
  if (limits.length === 0) return { top_Pa: roundUp(Math.max(most_Pa, 1)), most_Pa };
  return { top_Pa: Math.max(...limits), limit_Pa: Math.min(...limits), most_Pa };
}

/** Of the scale, 0 to 1; what lies above the deep end has its shade. */
export const shareOf = (stress_Pa: number, { top_Pa }: StressScale): number =>
  Math.min(Math.max(stress_Pa / top_Pa, 0), 1);

/** The colour of a share, of the hue of the build; the style sheet has the two ends and the middle. */
export function shadeColour(share: number): string {
  const [from, to, part] =
    share < 0.5 ? ['--stress-low', '--stress-mid', share * 2] : ['--stress-mid', '--stress-high', share * 2 - 1];
  return `color-mix(in srgb, var(${to}) ${(part * 100).toFixed(1)}%, var(${from}))`;
}

export interface ShadeStop {
  readonly r: number;
  readonly share: number;
}

/**
 * Along a shim, at the nodes that its stresses belong to: the last of its outline, which begins at the bore. Nothing is
 * known of what lies within the clamp, and it has no shade.
 */
export function shadeStops({ bottom }: ShimOutline, equivalent_Pa: Float64Array, scale: StressScale): ShadeStop[] {
  const nodes = bottom.slice(-equivalent_Pa.length);
  const along = nodes.map(({ r }, i) => ({ r, share: shareOf(equivalent_Pa[i], scale) }));
  return bottom.length > nodes.length ? [{ r: nodes[0].r, share: 0 }, ...along] : along;
}

/** The greatest equivalent stress of one shim and the radius it stands at. */
export function peakOf({ bottom }: ShimOutline, equivalent_Pa: Float64Array): { stress_Pa: number; r: number } {
  const i = equivalent_Pa.indexOf(Math.max(...equivalent_Pa));
  return { stress_Pa: equivalent_Pa[i], r: bottom.slice(-equivalent_Pa.length)[i].r };
}
