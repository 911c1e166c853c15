/** Words about what each shim of a stack does to the force, in English. */
export const effectsWords = {
  effects: {
    caption: (stack: string, build: string, speed: string, unit: string) =>
      `What each shim does: ${stack}, ${build}, at ${speed}, change of force in ${unit}`,
    shim: 'Shim, from the piston',
    thicker: (step: string) => `${step} thicker`,
    wider: (step: string) => `${step} wider`,
    out: 'Taken out',
    refused: 'cannot be',
    inWords: 'What changes if …',
    name: (n: number, size: string) => `Shim ${n}, ${size}`,
    firmer: (force: string) => `${force} firmer`,
    softer: (force: string) => `${force} softer`,
    same: 'no change',
    sentence: (thick: string, thickDoes: string, wide: string, wideDoes: string, without: string) =>
      `${thick} thicker: ${thickDoes}; ${wide} wider: ${wideDoes}; ${without}.`,
    without: (does: string) => `taken out: ${does}`,
    needed: 'without it there is no stack that covers the seat',
    unknown: 'not known',
    note: 'Thickness and diameter: the slope of the force where the stack is now, by differences with two steps, carried on over the step named. Taken out: the difference of two builds, whose curves are each good to about 1 %. + is firmer.',
    error: (force: string) => `The two steps agree within ${force} on every slope at this speed.`,
    running: (percent: string) => `solving, ${percent}`,
    waiting: 'Not solved yet.',
    failed: (why: string) => `What the shims do could not be solved: ${why}`,
    csv: 'What each shim does, as CSV',
    file: 'what each shim does',
    speed: 'Shaft speed',
    byThickness: 'Force by thickness',
    byDiameter: 'Force by diameter',
    error1: 'Error',
    change: 'Change when taken out',
  },
};
