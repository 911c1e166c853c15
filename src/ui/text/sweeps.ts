/** Words about the force at the speed cursor under other settings, in English. */
export const sweepWords = {
  sweep: {
    temperatureAxis: (unit: string) => `Oil temperature, ${unit}`,
    temperatureNote: (low: string, high: string) =>
      `The oil alone changes: gas and sizes stay. Its viscosity is known from ${low} to ${high}; in the shaded parts it is carried on by the Walther law.`,
    positionAxis: (unit: string) => `Place in the stroke from full extension, ${unit}`,
    positionNote:
      'The speed is that of the cursor at every place. What changes along the stroke is the push of the gas, and how well it keeps the oil together.',
    positionStop: {
      compression: (length: string) =>
        `Over the last ${length} before full compression the hydraulic stop adds its force.`,
      rebound: (length: string) => `Over the first ${length} from full extension the hydraulic stop adds its force.`,
    },
    clicksAxis: (adjuster: string) => `Clicks of the ${adjuster} from closed`,
    clicksNote:
      'All else stays as it is. Where the line of a build meets the level of another, so many clicks do what its shims do, at this speed only.',
    clicks: (n: number) => (n === 1 ? '1 click' : `${n} clicks`),
    adjuster: 'Adjuster',
    level: (build: string) => `${build} (does not turn)`,
    noAdjusters:
      'No build on show has anything to turn. A needle in the bleed, in the bleed of the base valve, or an adjuster on a spring is added beneath the shim table.',
    addNeedle: 'Go to the needle in the bleed',
    answers: (build: string, adjuster: string, speed: string, unit: string) =>
      `${build}: what the ${adjuster} does at ${speed}, ${unit}`,
    setting: 'Setting',
    asSet: (clicks: number) => `As set, ${clicks} from closed`,
    closer: 'One click towards closed',
    opener: 'One click open',
    closed: 'Closed',
    open: (clicks: number) => `Open, ${clicks} clicks`,
    equalTo: (build: string) => `As firm as ${build} is set`,
    clicksFrom: (clicks: string) => `${clicks} clicks`,
    outOfReach: 'out of reach',
    change: (force: string, share: string) => `${force} (${share})`,
    set: (where: string) => `set ${where}`,
    running: 'solving…',
    table: 'Numbers of this chart',
    caption: (way: string, unit: string, speed: string) => `${way}: force, ${unit}, at ${speed}`,
    span: (low: string, high: string) => `${low} to ${high}`,
    troubled: (build: string, where: string, why: string) => `${build} did not solve everywhere at ${where}: ${why}`,
    failed: (why: string) => `The sweep could not be solved: ${why}`,
  },
};
