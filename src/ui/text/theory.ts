/** Words of the bench about plate theories, in English. */
export const theoryWords = {
  theory: {
    'small-deflection': 'small deflection',
    'large-deflection': 'large deflection',
    'port-periodic': 'port-periodic',
  },
  theoryShort: {
    auto: 'Auto',
    'small-deflection': 'Small deflection',
    'large-deflection': 'Large deflection',
    'port-periodic': 'Port-periodic',
  },
  theoryChoice: 'Plate theory',
  theoryHint: {
    auto: 'Thin plates in contact: large deflection where shims stay round under many ports, port-periodic where they wave.',
    'small-deflection': 'Thin plates in contact. Small deflection holds to about 0.7 thicknesses of lift.',
    'large-deflection':
      'Thin plates in contact. Large deflection holds to about 2 thicknesses of lift, while shims stay round.',
    'port-periodic':
      'Thin plates in contact. Port-periodic follows the waves that ports and large lifts make of the rim.',
  },
  theories: {
    stacks: { compression: 'compression', rebound: 'rebound', base: 'base valve' },
    ofStacks: (theory: string, stacks: string) => `${theory} (${stacks})`,
    ofBuild: (build: string, theories: string) => `${build}: ${theories}`,
    /** Behind the choice: which theory gave what is on show. */
    used: (theories: string) => `Shown: ${theories}.`,
    following: 'Round shape shown, waves being solved…',
    /** In the title block. */
    followed: (theory: string) => `${theory}, waves being solved`,
    effects: 'Following the waves of every change would take too long.',
    fellBack: (build: string, stack: string, why: string) =>
      `${build}, ${stack}: the waves could not be followed (${why}). The round theory stands in.`,
    failed: (build: string, why: string) =>
      `${build}: the waves could not be solved (${why}). The round theory stands in.`,
    either: (theories: readonly string[]) => theories.join(' or '),
    none: 'not solved yet',
  },
};
