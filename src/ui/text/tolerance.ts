/** Words about how a built damper scatters, in English. */
import { plural } from './plural.ts';

export const toleranceWords = {
  tolerance: {
    names: {
      thickness: 'Thickness of the shims',
      diameter: 'Diameter of the shims',
      clamp: 'Diameter of the clamp edge',
      seat: 'Height of the seat',
      portEdge: 'Diameter of the port edge',
      ports: 'Diameter of the ports',
      bleed: 'Diameter of the bleed',
      viscosity: 'Viscosity of the oil',
      temperature: 'Temperature of the oil',
      gas: 'Pressure of the gas',
    },
    meaning: {
      thickness: 'Every shim by itself lies off its thickness by so much at most',
      diameter: 'Outer diameter; shims of one size are punched alike and lie off together',
      clamp: 'Diameter of the edge that clamps each stack, from which its shims bend',
      seat: 'Height of each seat over the hub: what preloads the face shim or lets it gape',
      portEdge:
        'Diameter of the edge at which the ports end under the face shim, where its lever and the opening begin',
      ports: 'Diameter of the ports of each valve, drilled alike',
      bleed: 'Diameter of each bleed hole',
      viscosity: 'Viscosity of the oil at its temperature, from bottle to bottle',
      temperature: 'How far the oil may be warmer or colder than the curves are made for',
      gas: 'How far the charged pressure may lie off the one that is wanted, gauge and handling together',
    },
    form: 'Tolerances',
    formWhy:
      'To both sides, as 95 of 100 parts keep. Put in what you measured; an empty box takes common practice in a careful workshop, which is no standard.',
    label: (name: string) => `${name}, ±`,
    common: 'common practice',
    own: (common: string) => `own; common practice is ± ${common}`,
    reset: 'All back to common practice',

    title: 'What the scatter comes from',
    caption: (build: string, way: string) => `${build}, ${way}: share of the scatter of the force`,
    column: 'Tolerance',
    atSpeed: (speed: string) => `At ${speed}`,
    overRange: (top: string) => `Up to ${top}`,
    sort: 'Sorted by',
    sorts: { cursor: 'At the cursor', range: 'Whole range' },
    range: (low: string, high: string) => `${low} to ${high}`,
    noPart: 'not in this build',
    noForce: 'no force',
    legend:
      'Solid: what a tolerance makes of the scatter by itself. Outlined: together with others. Thin line: between its ends the outlined share lies with 95 % by these samples. Shares are of the variance; over the whole range every speed counts by its own.',

    verdict: (name: string, share: string, low: string, high: string, where: string) =>
      `${name} makes ${share} of the scatter ${where} (${low} to ${high} by these samples).`,
    where: (speed: string, way: string) => `at ${speed} in ${way}`,
    whereAll: (top: string, way: string) => `in ${way} up to ${top}`,
    next: (name: string, share: string) => `${name} comes next, with ${share}.`,
    tied: (name: string, share: string) =>
      `${name}, ${share}, cannot be told from it by so few samples: either may matter more.`,
    exact: (name: string, now: string, then: string) =>
      `${name} held exactly, the band of ± ${now} would be about ± ${then}.`,
    nothing: 'Nothing scatters here: every tolerance is 0 or has no part in this build.',
    band: (low: string, high: string, drawn: string) =>
      `90 of 100 such dampers lie between ${low} and ${high}; as drawn: ${drawn}.`,
    withoutForce: (samples: number, why: string) =>
      `${plural(samples, 'sample has', 'samples have')} no force and ${samples === 1 ? 'is' : 'are'} left out: ${why}`,

    samples: 'Samples',
    bySamples: (samples: string) => `From ${samples}.`,
    samplesOf: (n: number) => plural(n, 'sample', 'samples'),
    samplesWhy: (n: string) => `${n} samples: each is two dampers and one more for every tolerance`,
    seed: 'Seed',
    seedWhy: 'The same seed gives the same samples; another one shows how far the answer hangs on them',
    seedWanted: 'a whole number from 0 to 1000000',
    progress: 'Samples solved',
    standing: (done: number, goal: number) => `${done} of ${goal} samples`,
    running: (done: number, goal: number) => `Solving: ${done} of ${goal} samples. The band narrows down as they come.`,
    waiting: 'Waits for the curves.',
    stopped: (done: number, goal: number) => `Stopped at ${done} of ${goal} samples.`,
    failed: (why: string) => `The scatter could not be solved: ${why}`,
    stale: 'Of the build as it was before the last change.',
    stop: 'Stop',
    goOn: 'Go on',
    retry: 'Try again',

    hatched: (build: string, samples: string) =>
      `Hatched: 90 of 100 dampers built as ${build} within their tolerances (p5 to p95), by ${samples}.`,
    hatchedStale: 'The hatched band is of the build as it was.',
    hatchedGas: 'What the gas scatters stays in the band.',
    noHatched: (build: string) => `The tolerance band of ${build} is not solved yet.`,
    open: 'Tolerances, and which matters most',

    csv: 'Scatter and shares at every speed, as CSV',
    pictureSvg: 'Shares as SVG',
    picturePng: 'Shares as PNG',
    picture: (build: string, where: string) => `What scatters ${build}, ${where}`,
    pictureAxis: 'Share of the scatter, %',
    pictureFirst: 'By itself',
    pictureTotal: 'Together with others, with its 95 % interval',
    file: 'tolerance',
    columns: {
      speed: 'Shaft speed',
      drawn: 'As drawn',
      p5: 'p5',
      p50: 'p50',
      p95: 'p95',
      deviation: 'Standard deviation',
      samples: 'Samples',
      without: 'Samples without a force',
      bandLow: 'tolerance p5',
      bandHigh: 'tolerance p95',
      first: (name: string) => `${name}: share by itself`,
      total: (name: string) => `${name}: share with others`,
      low: (of: string) => `${of}, from`,
      high: (of: string) => `${of}, to`,
    },
  },
};
