/** Words of the build sheet, in English. A translation is one folder beside this file, of the same shape. */
import type { AdjusterId } from '../../model/adjuster-ids.ts';
import type { Layout, ValvePlace } from '../../model/project.ts';

const plural = (n: number, singular: string, many: string): string => `${n} ${n === 1 ? singular : many}`;

const PLACES: Record<ValvePlace, string> = {
  pistonCompression: 'Piston, compression stack',
  pistonRebound: 'Piston, rebound stack',
  baseCompression: 'Base valve stack',
};

export const sheetWords = {
  language: 'en',
  title: 'Build sheet',
  windowTitle: (build: string, machine: string) => `Build sheet: ${build}, ${machine}`,
  invented: 'Invented: no such machine, maker or rider exists',
  head: { machine: 'Machine', damper: 'Damper', build: 'Build', date: 'Date', by: 'Built by' },
  unnamed: 'without a name',
  estimate: 'Computed values are estimates. They do not replace the maker’s manual, local rules or a qualified person.',
  common: 'common practice',

  placeOf: (layout: Layout, place: ValvePlace): string =>
    layout === 'cartridge' && place === 'pistonCompression' ? 'Mid-valve stack' : PLACES[place],

  drawing: {
    scale: (diameters: string, heights: string) =>
      `Printed at 100 %: diameters ${diameters}, heights ${heights}. Laid on, not yet clamped.`,
    clamp: (diameter: string) => `clamp Ø ${diameter}`,
    plate: 'backing plate',
    body: { piston: 'piston', base: 'base valve' },
    label: (place: string, shims: number) => `${place}: section of ${plural(shims, 'shim', 'shims')} to scale`,
    row: (numbers: string, size: string) => `${numbers}   ${size}`,
  },

  shims: {
    number: 'No.',
    size: (family: 'metric' | 'imperial') => (family === 'metric' ? 'Ø × thickness, mm' : 'Ø × thickness, in'),
    count: 'Count',
    done: 'On',
    numbers: (from: number, to: number) => (from === to ? String(from) : `${from}–${to}`),
    total: (shims: number, height: string, clamp: string) =>
      `${plural(shims, 'shim', 'shims')}, ${height} high on a clamp of ${clamp}`,
    order: {
      'before-piston': 'Goes on before the piston: the face shim comes last and lies against the piston.',
      'after-piston': 'Goes on after the piston: No. 1 is the face shim and lies on the piston.',
      'from-face':
        'No. 1 is the face shim and lies on its seat. Where this stack goes on first, lay it from the last number down to 1.',
    },
    ring: (bore: string) => `ring, bore ${bore}: centre it`,
    dish: (dish: string) => `dished ${dish}: rim away from the seat`,
    dishTowards: (dish: string) => `dished ${dish}: rim towards the seat`,
    notches: (count: number, width: string) => `${plural(count, 'notch', 'notches')} of ${width}`,
    material: 'other material',
    preload: (height: string) => `Seat ${height} above the hub: clamping bends the face shim.`,
    sunk: (height: string) => `Seat ${height} below the hub: no face shim reaches it unloaded.`,
    plate: (gap: string) => `Backing plate ${gap} above the last shim.`,
    spring: (rate: string, diameter: string) => `Coil spring ${rate} on Ø ${diameter} against the last shim.`,
    float: (travel: string) => `The clamped stack floats ${travel} on its check spring.`,
  },
  facing:
    'Look at every shim first: flat, no burr, no scratch, measured one by one. A stamped shim has a rounded and a sharp edge: lay all of a stack the same way up, as they came off.',

  picking: {
    title: 'Picking list',
    shim: 'Shim',
    needed: 'Need',
    has: 'Drawer has',
    missing: 'Missing',
    baseline: 'In baseline',
    bore: (bore: string) => `bore ${bore}`,
    inDrawer: (count: number, bore: string) => `drawer: ${count} with bore ${bore}`,
    noBore: (count: number) => `drawer: ${count} without a bore written down`,
    special: 'dished, notched or of other material',
    noDrawer: 'The drawer of this project is empty.',
    note: 'The drawer leaves out shims that are in a damper; those of the baseline may be used again if they are sound. Take the bore of the shaft.',
  },

  changes: {
    title: (baseline: string) => `Changes from ${baseline}`,
    isBaseline: 'This is the baseline: nothing changes.',
    none: 'Nothing changes: the valving is that of the baseline.',
    signs: { kept: '=', added: '+', removed: '−', moved: '↕', changed: '≠' },
    shim: (count: number, size: string) => `${count} × ${size}`,
    added: 'put in',
    removed: 'take out',
    moved: 'moved here',
    count: (from: number, to: number) => `${from} → ${to}`,
    altered: 'altered',
    setting: (name: string, from: string, to: string) => `${name}: ${from} → ${to}`,
    groups: { bleed: 'Bleed', baseBleed: 'Base bleed', basePoppet: 'Poppet' },
    stackAdded: 'the whole stack is new',
    stackRemoved: 'the whole stack goes',
  },

  fill: {
    title: 'Clamp, oil, gas, adjusters',
    pistonTorque: 'Piston clamp torque',
    baseTorque: 'Base valve torque',
    torqueSource: 'Torque from',
    manual: 'maker’s manual, page',
    threadLocker: 'Thread-locker',
    oil: 'Oil',
    temperature: 'Oil temperature of the curve',
    level: 'Oil level, compressed, spring out',
    volume: 'Oil volume',
    gas: 'Gas pressure, cold, extended',
    gasSafe: 'nitrogen, with the right tool, at most the maker’s pressure',
    airPressure: 'Air pressure, cold, extended',
    gasVolume: 'Gas volume, extended',
    clicks: (name: string) => `${name}, clicks from closed`,
    of: (clicks: number, all: number) => `${clicks} of ${all}`,
    noAdjuster: 'No adjuster',
    notes: 'Notes',
  },
  adjusters: {
    needle: 'Bleed needle',
    'base-needle': 'Compression needle',
    poppet: 'Poppet spring',
    'compression-spring': 'Compression spring',
    'rebound-spring': 'Rebound spring',
    'base-spring': 'Base valve spring',
  } satisfies Record<AdjusterId, string>,

  curve: {
    title: 'Force at the shaft',
    label: (build: string, baseline: string) => `Force against shaft speed of ${build} and of ${baseline}`,
    alone: (build: string) => `Force against shaft speed of ${build}`,
    compression: 'compression',
    rebound: 'rebound',
    speed: (unit: string) => `shaft speed, ${unit}`,
    force: (unit: string) => `force, ${unit}`,
    build: 'build',
    baseline: 'baseline',
    measured: 'measured',
    unsolved: 'not solved',
    at: (temperature: string) => `At mid-stroke, with friction and gas, oil at ${temperature}.`,
    theories: {
      'small-deflection': 'small deflection',
      'large-deflection': 'large deflection',
      'port-periodic': 'port-periodic',
    },
    stacks: { compression: 'compression', rebound: 'rebound', base: 'base valve' },
    by: (what: string, theories: string) => `Shims of the ${what} by ${theories}.`,
    solving: 'The curve is being solved.',
    failed: (what: string, why: string) => `No curve of the ${what}: ${why}`,
    partly: (what: string, why: string) => `Some speeds of the ${what} did not solve: ${why}`,
    measuredAt: 'Measured at',
    measuredFields: ['Oil temperature', 'Gas pressure', 'Position', 'Test bench'],
  },

  signatures: { title: 'Done and checked', built: 'Built by', checked: 'Checked by', date: 'Date' },
  link: {
    title: 'Back to this build',
    follow: 'Open this build on the bench',
    whole: 'A link with the whole build in it; nothing is sent to open it.',
    fragment: 'Put this behind the address of your bench:',
    long: 'Too long to print in full: open this sheet as a file, or on the bench, to follow it.',
    none: 'This build is too long for a link: keep its project file with the sheet.',
  },
};
