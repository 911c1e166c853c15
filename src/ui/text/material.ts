/** Words about the metal of shims, in English. The numbers in them are those that the solver assumes; a test holds them together. */
export const materialWords = {
  material: {
    title: 'Material',
    ofStack: 'Material of the stack',
    ofRow: (row: number) => `Material of row ${row}`,
    why: 'Other than the spring steel that is assumed',
    springSteel: 'spring steel, assumed',
    summary: (modulus: string, ratio: string) => `${modulus}, Poisson ${ratio}`,
    youngsModulus: 'Young’s modulus',
    youngsModulusWhy: 'Stiffness of the metal: force goes with it',
    poissonsRatio: 'Poisson’s ratio',
    poissonsRatioWhy: 'A little stiffness across; steels are near 0.3',
    yieldStrength: 'Yield strength',
    yieldStrengthWhy: 'Above it a shim takes a set',
    tensileStrength: 'Tensile strength',
    tensileStrengthWhy: 'At which it breaks; it is part of the reserve against fatigue',
    enduranceLimit: 'Endurance limit',
    enduranceLimitWhy: 'Stress in reversed bending that it bears for ever',
    assumed: 'assumed',
    unknown: 'unknown',
    defaults: (none: boolean) =>
      `${none ? 'Nothing is given, so it is' : 'What is left empty is taken from'} spring steel strip: 206 GPa and 0.3 (DIN 2093, EN 16984; from memory); tensile 1500 MPa, a middle value of C67S and C75S (EN 10132-4 gives about 1200 to 1900), yield 0.85 of it, endurance 0.4 of it but at most 700 MPa (common practice). The strengths are assumed for metals of 190 to 215 GPa only; of any other metal all three are needed, or it gets no reserve.`,
    curve: 'Modulus and ratio bend the curve; the strengths move only the reserves of life and yield.',
  },
};
