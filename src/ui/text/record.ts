/** Words about the teardown record, in English. Order of work, tools and traps are common practice of the workshop. */
import type { FirstOff, RecordStep, TeardownRecord, Verdict, WearPart } from '../../model/record.ts';
import { plural } from './plural.ts';

interface StepWords {
  readonly name: string;
  /** What is done. */
  readonly act: string;
  readonly tools: string;
  readonly trap: string;
  readonly caution?: string;
}

const STACK_TOOLS = 'Wire or long screw, micrometer to 0.01 mm, caliper to 0.05 mm, clean cloth.';
const STACK_TRAP =
  'Two thin shims stuck together by oil measure as one thick one: slide them apart. Do not turn the stack over on the bench.';
const FACE_TOOLS = 'Caliper to 0.05 mm, depth gauge, a soft pencil and squared paper for shaped ports.';
const FACE_TRAP =
  'Measure the land on which the shim lies, not the chamfer beside it, and count only the ports of this direction.';

const steps: Record<RecordStep, StepWords> = {
  machine: {
    name: 'Machine and condition',
    act: 'Write down what it came out of, how long it has run and what it looks like, before it is cleaned.',
    tools: 'Pen, camera.',
    trap: 'A leak is easiest to place while it is still dirty: take a photo first.',
  },
  clicks: {
    name: 'Adjuster clicks as found',
    act: 'Turn each adjuster gently closed (clockwise), count the clicks, write them down; then open it fully before anything comes apart.',
    tools: 'The right screwdriver or key, two fingers.',
    trap: 'Count from closed, and stop at the first resistance: a needle that is forced cuts its seat and counts one click less ever after.',
  },
  gas: {
    name: 'Gas let out',
    act: 'Read the pressure with the damper cold and fully extended, write it down, then let all of it out.',
    tools: 'Pressure gauge with a small hose volume, valve tool, eye protection.',
    trap: 'The gauge itself takes some gas when it is screwed on: with a small reservoir the reading is low by what the hose holds.',
    caution:
      'Gas under pressure can kill. Point the valve away from people, let the gas out slowly and completely, and make sure that the floating piston moves freely before anything is unscrewed. If it cannot be let out, stop: this is work for a qualified workshop. The maker’s manual and local rules come first.',
  },
  head: {
    name: 'Cap or seal head',
    act: 'Mark how tight and how far in it sat, then open it.',
    tools: 'Pin or cap tool, torque wrench, circlip pliers, soft drift.',
    trap: 'Clean round the thread first: one grain that falls in scores the tube.',
    caution:
      'Springs under the cap push it off at its last thread: hold it down with your weight, face away. Loosen only when the gas is out.',
  },
  springs: {
    name: 'Springs',
    act: 'Take the springs out, in order with their spacers, and measure each.',
    tools: 'Spring compressor made for it, caliper, rule to 1 mm, scales for the rate.',
    trap: 'What is printed on a spring is its rate when new and of its maker’s rounding: say whether the rate was measured or read.',
    caution:
      'A compressed spring stores enough to maim. Use the maker’s tool, never loose hooks, and keep out of its line.',
  },
  oil: {
    name: 'Oil: level, volume, look',
    act: 'Measure the level where the layout has one, then drain into a clean measuring glass, working the rod until no more comes.',
    tools: 'Measuring glass to 1 mL, level tool to 1 mm, thermometer, white paper.',
    trap: 'Some oil stays on the walls and in the cartridge: wait ten minutes, and expect 2 to 5 % less than was poured in.',
    caution: 'Wear gloves; used oil goes to where used oil is taken, not into a drain.',
  },
  rod: {
    name: 'Rod and piston nut',
    act: 'Draw the rod out, check it for straightness and wear, and note how tight the nut was when it broke loose.',
    tools: 'Soft jaws, torque wrench, micrometer to 0.01 mm, bore gauge, rule.',
    trap: 'A nut that is peened or glued must be dressed first, or it takes the thread with it. It is replaced, not used again, where its maker says so.',
  },
  reboundStack: {
    name: 'Rebound stack, shim by shim',
    act: 'Slide nut, washer and shims onto a wire in the order in which they come off, and measure each.',
    tools: STACK_TOOLS,
    trap: STACK_TRAP,
  },
  compressionStack: {
    name: 'Compression stack, shim by shim',
    act: 'Take the piston off, mark its upper side, and slide the shims behind it onto a second wire as they come off.',
    tools: STACK_TOOLS,
    trap: STACK_TRAP,
  },
  pistonFaces: {
    name: 'Piston: ports, seats',
    act: 'Measure ports, pressure zone and seat land on both faces.',
    tools: FACE_TOOLS,
    trap: FACE_TRAP,
  },
  baseStack: {
    name: 'Base valve stack, shim by shim',
    act: 'Unscrew the base valve, open its nut, and slide the shims onto a wire as they come off.',
    tools: STACK_TOOLS,
    trap: STACK_TRAP,
  },
  baseFace: {
    name: 'Base valve: ports, seat',
    act: 'Measure ports, pressure zone and seat land of the base valve.',
    tools: FACE_TOOLS,
    trap: FACE_TRAP,
  },
  refillCheck: {
    name: 'Refill check',
    act: 'Measure the check plate, its spring and how far it lifts.',
    tools: 'Caliper, feeler gauges, kitchen scales for the spring.',
    trap: 'Its spring is weak and easily bent: measure it before it is handled.',
  },
  wear: {
    name: 'Seals, bushings, rod, wear',
    act: 'Measure what wears by the sizes that a new one is found by: inner × outer × width, and give each a verdict.',
    tools: 'Caliper to 0.05 mm, micrometer, magnifier, fingernail along the rod.',
    trap: 'A used seal has spread: measure the groove and the rod that it runs on as well.',
  },
};

export const recordWords = {
  title: 'Teardown record',
  lead: 'From the damper on the bench to numbers in the project, in the order in which it comes apart.',
  railLabel: 'Steps of the record',
  ofBuild: (build: string) => `Values go into the damper, its oil and gas, and the baseline build “${build}”.`,
  progress: (done: number, skipped: number, all: number) =>
    `${done} of ${all} done${skipped > 0 ? `, ${skipped} skipped` : ''}`,
  stepOf: (n: number, all: number) => `Step ${n} of ${all}`,
  steps,
  states: { open: 'open', done: 'done', skipped: 'skipped' },
  markDone: 'Done, next step',
  markSkipped: 'Skip',
  reopen: 'Open again',
  back: 'Back',
  stepDone: (step: string) => `Done: ${step}`,
  stepSkipped: (step: string) => `Skip: ${step}`,
  stepReopened: (step: string) => `Open again: ${step}`,
  act: 'Do',
  tools: 'With',
  trap: 'Mind',
  caution: 'Caution',
  notes: 'Notes of this step',

  facts: {
    title: 'Found',
    machine: 'Machine',
    date: 'Date',
    recordedBy: 'Taken apart by',
    runTime: 'Run since last service',
    distance: 'Odometer',
    condition: 'Condition',
    oilTitle: 'Oil that came out',
    oilVolume: 'Volume out',
    oilLook: 'Look',
    oilLookHint: 'clear, grey, milky, metal in it',
    oilSmell: 'Smell',
  },
  clicks: {
    title: 'Clicks from closed, as found',
    found: (name: string) => `${name}: clicks as found`,
    none: 'The baseline build has no adjuster yet: put the needle or the spring adjuster in at the step of its stack, then come back.',
    why: 'What is typed also turns the adjuster of the baseline build.',
  },
  springs: {
    title: 'Springs as found',
    add: 'Add a spring',
    name: 'Spring',
    fresh: (n: number) => `Spring ${n}`,
    rate: 'Rate',
    rateFrom: 'Rate known from',
    sources: { unknown: '–', measured: 'measured', marked: 'marking on it' },
    freeLength: 'Free length',
    wire: 'Wire',
  },
  torques: {
    title: 'Tightness as found',
    add: 'Add a torque',
    name: 'Of',
    fresh: { head: 'Cap or seal head', rod: 'Piston nut' } as Partial<Record<RecordStep, string>>,
    freshElse: (n: number) => `Fastener ${n}`,
    torque: 'Torque to loosen',
    why: 'The torque that breaks it loose tells of thread-locker and wear. It is not the one to tighten to: that stands in the maker’s manual.',
  },
  wear: {
    title: 'Parts that wear',
    add: 'Add a part',
    name: 'Part',
    fresh: (n: number) => `Part ${n}`,
    kind: 'Kind',
    kinds: {
      seal: 'oil seal',
      wiper: 'wiper',
      'o-ring': 'O-ring',
      bushing: 'bushing',
      'piston-band': 'piston band',
      rod: 'rod surface',
      other: 'other',
    } satisfies Record<WearPart['kind'], string>,
    inner: 'Inner',
    outer: 'Outer',
    width: 'Width',
    verdict: 'Verdict',
    verdicts: { unknown: '–', good: 'good', worn: 'worn', replace: 'replace' } as Record<Verdict | 'unknown', string>,
    toMatch: (sizes: string) => `To match: ${sizes}`,
    entry: (name: string, what: string) => `${name}: ${what}`,
    notes: 'Remarks',
  },
  remove: (name: string) => `Delete ${name}`,
  removeShort: 'Delete',
  removed: (name: string) => `“${name}” is deleted.`,

  wire: {
    title: 'On the wire, as it comes off',
    why: 'Thread each shim on as it comes off and measure it. When all are on, take them over: the table below is then in order, piston side first.',
    firstOff: 'The first one off was',
    sides: {
      'far-from-piston': 'farthest from the piston (nut side)',
      'at-piston': 'next to the piston',
    } satisfies Record<FirstOff, string>,
    diameter: 'Diameter of the shim in hand',
    thickness: 'Thickness of the shim in hand',
    count: 'How many alike in a row',
    thread: 'Thread it on',
    threaded: (shim: string) => `On the wire: ${shim}`,
    shim: (n: number, diameter: string, thickness: string) => `${n} × ${diameter} × ${thickness}`,
    takeBack: 'Take the last one back',
    order: 'Shims in the order in which they came off',
    total: (n: number) => plural(n, 'shim on the wire', 'shims on the wire'),
    takeOver: 'Take over into the baseline build',
    takenOver: 'The stack of the baseline build is as it came off.',
    takeOverLabel: 'Take over what came off',
  },

  missing: {
    name: 'What is missing',
    title: 'What is missing, and what it does to the curve',
    why: (low: string, high: string) =>
      `Everything that is open, skipped or assumed, changed over what it may plausibly be, one at a time, and solved again. Shown is the larger change of the whole force as a share of the damping force at ${low} and ${high}, in either direction. Ranges are common practice for what cannot be told without measuring.`,
    first: (what: string, share: string) => `Measure this first: ${what} (${share}).`,
    none: 'Nothing is open: every step is done, and nothing is assumed.',
    solving: (done: number, all: number) => `Solving ${done} of ${all}…`,
    solved: (all: number) => `${plural(all, 'item', 'items')}, largest effect first.`,
    baseFailed: (why: string) => `The baseline build could not be solved, so that nothing can be told: ${why}`,
    failed: (why: string) => `not solved: ${why}`,
    waiting: 'waits',
    noEnd: 'at neither end of its range does the damper fit together',
    noBand: 'the coefficients have no state at one end of their ranges',
    columns: { item: 'Not known', why: 'Because', low: 'Slow', high: 'Fast', go: 'Step' },
    reasons: {
      open: 'not measured yet',
      skipped: 'skipped',
      assumed: 'assumed with the layout',
      default: 'a default stands in',
      coefficient: 'a coefficient, until a measured curve fits it',
    },
    measure: (step: string) => `Measure: ${step}`,
    measureShort: 'Measure',
    spread: (value: string) => `± ${value}`,
    items: {
      bore: 'Bore',
      rodDiameter: 'Rod',
      friction: 'Seal friction',
      temperature: 'Oil temperature',
      viscosity: 'Viscosity of the oil',
      gasPressure: 'Gas pressure',
      airPressure: 'Air pressure',
      oilLevel: 'Oil level',
      clicks: (name: string) => `Clicks: ${name}`,
      bleed: 'Bleed hole',
      baseBleed: 'Bleed hole at the base',
      ports: (place: string) => `Port area, ${place}`,
      covered: (place: string) => `Share of the circumference that ports open, ${place}`,
      shims: (place: string) => `Thickness of every shim, ${place}`,
      clamp: (place: string) => `Clamp edge, ${place}`,
      seatHeight: (place: string) => `Seat height, ${place}`,
      refill: 'Spring of the refill check',
      band: 'Leakage past the piston band',
      bandAbsent: 'Leakage past the piston band, taken as none',
      coefficients: 'Flow coefficients together',
    },
    share: (percent: string) => `± ${percent}`,
  },

  photos: {
    title: 'Photos',
    add: 'Add a photo',
    why: (pixels: number) =>
      `Photos stay on this machine with the project, at most ${pixels} pixels on their longer side. They are in no link and no project file.`,
    caption: (n: number) => `Caption of photo ${n}`,
    captionHint: 'what it shows',
    alt: (n: number, step: string) => `Photo ${n} of ${step}, without a caption`,
    remove: (n: number) => `Delete photo ${n}`,
    removed: 'The photo is deleted.',
    undo: 'Undo',
    unreadable: (file: string) => `“${file}” is no picture that this browser can read.`,
    full: 'There is no room left on this machine: the photo was not kept. Delete photos or old projects, then try again.',
    gone: 'The picture is no longer kept on this machine. Its caption is; add the photo again if you have it.',
    failed: 'The photo could not be kept on this machine.',
    facts: (width: number, height: number, size: string) => `${width} × ${height}, ${size}`,
  },

  sheet: {
    name: 'Record to print',
    print: 'Print',
    date: 'Date',
    notMeasured: '–',
    facts: 'Facts',
    damper: 'Damper, oil and gas',
    stacks: 'Stacks as they lie in the baseline build, piston side first',
    cameOff: 'As it came off',
    notes: 'Notes by step',
    photos: 'Photos',
    caution:
      'A record of what was found, and no instruction. Gas, springs, brakes and steering can hurt: the maker’s manual, local rules and a qualified person come first.',
  },
} as const;

/** The text facts of the record. */
export type TextFact = Extract<keyof TeardownRecord, 'machine' | 'recordedBy' | 'condition'>;
