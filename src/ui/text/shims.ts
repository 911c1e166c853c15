/** Words about what each shim of a stack does, in English. */
export const shimsWords = {
  shims: {
    quantityChoice: { lift: 'Lift', stress: 'Stress', life: 'Life', yield: 'Yield' },
    quantityLong: {
      lift: 'Lift: how far the rim of each shim rises',
      stress: 'Stress: the most at a surface of each shim',
      life: 'Life: share of the limit of endless life that each shim uses',
      yield: 'Yield: share of the stress used at which each shim takes a set',
    },
    quantity: 'What of each shim',
    axis: {
      lift: (unit: string) => `Rim lift, ${unit}`,
      stress: (unit: string) => `Stress, ${unit}`,
      life: (unit: string) => `Used of endless life, ${unit}`,
      yield: (unit: string) => `Used of yield, ${unit}`,
    },
    /** Of shims that wave: a line and the area round it. */
    axisWaves: (unit: string) => `Rim lift, mean within trough to crest, ${unit}`,
    /** Under the mean, at the cursor. */
    fromTo: (trough: string, crest: string) => `${trough} to ${crest}`,
    meanLift: 'Rim lift, mean',
    wavesNote: 'Lift: the mean round the circle, and from trough to crest. Stress: the most at any angle.',
    line: (numbers: string) => (numbers.includes('–') ? `shims ${numbers}` : `shim ${numbers}`),
    ofBuild: (place: string, build: string) => `${place}, ${build}`,
    limit: 'limit',
    caption: (stack: string, speed: string) => `${stack}, at ${speed}`,
    shim: 'Shim, from the piston',
    size: (diameter: string, thickness: string) => `${diameter} × ${thickness}`,
    lift: 'Rim lift',
    stress: 'Stress',
    life: 'Life reserve',
    yield: 'Yield reserve',
    over: (reserve: string) => `${reserve}, over the limit`,
    note: 'The bars of the reserves show the share that is used; the mark is the limit, a reserve of 1.',
    unknown: 'The strength of some metal is not known: it has no reserve.',
    notSolved: 'This stack is not solved at the cursor.',
    pictureSvg: 'Shims at the cursor as SVG',
    picturePng: 'Shims at the cursor as PNG',
    csv: 'Shims at the cursor as CSV',
  },
};
