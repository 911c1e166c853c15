/** Words about the plan view of a shim, in English. */
import { plural } from './plural.ts';

export const planWords = {
  plan: {
    title: 'Plan',
    view: 'Drawing',
    drawing: { section: 'Section', plan: 'Plan' },
    drawingWhy: {
      section: 'Section: the stack cut through its axis',
      plan: 'Plan: one shim seen from above, its lift shaded over the whole circle',
    },
    shim: 'Shim',
    choose: 'Shim in the plan',
    option: (n: number, diameter: string, thickness: string) => `Shim ${n}: ${diameter} × ${thickness}`,
    legend: (unit: string) => `Lift, ${unit}`,
    rimOf: {
      crest: (lift: string) => `▲ crest ${lift}`,
      mean: (lift: string) => `mean ${lift}`,
      trough: (lift: string) => `▽ trough ${lift}`,
      round: (lift: string) => `rim ${lift}`,
    },
    ports: (count: number) => plural(count, 'port', 'ports'),
    covered: (share: string) => `open over ${share}`,
    groove: 'groove all round',
    waves: (waves: number) => plural(waves, 'wave', 'waves'),
    round: 'round, no waves',
    cutLetter: 'A',
    note: 'Edges below the shims are dashed. The section is cut along A–A.',
    anywhere: 'The groove is open all round: where the waves stand against the ports is not known.',
    describe: (n: number, build: string) => `Plan of shim ${n} of ${build}, seen from above.`,
    describeWaves: (waves: number) =>
      `Its lift waves ${waves} times round the circle; a table has crest, mean and trough on every circle.`,
    describeRound: 'Its lift is the same all round; a table has it on every circle.',
    table: (n: number) => `Lift of shim ${n} on its circles`,
    circle: 'Circle',
    lift: 'Lift',
    inUnit: (name: string, unit: string) => `${name}, ${unit}`,
    circles: {
      clamp: 'clamp',
      bore: 'bore',
      zoneInner: 'ring, inside',
      seatInner: 'seat, inside',
      seatOuter: 'seat, outside',
      rim: 'rim',
    },
    rimOfShim: (n: number) => `rim of shim ${n}`,
  },
};
