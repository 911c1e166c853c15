/** What a person writes down about putting one build together: it belongs on the build sheet and changes no curve. */

/** Which stack of the piston goes on the shaft first, before the piston. */
export const FIRST_STACKS = ['pistonCompression', 'pistonRebound'] as const;
export type FirstStack = (typeof FIRST_STACKS)[number];

export interface Assembly {
  /** When absent nobody has said, and the shims are told from the piston outwards. */
  firstStack?: FirstStack;
  /** Of what clamps the stacks on the piston's shaft. */
  pistonTorque_N_m?: number;
  /** Of what clamps the stack on the base valve. */
  baseTorque_N_m?: number;
  /** Where the torques come from, such as the page of the maker's manual. */
  torqueSource?: string;
  threadLocker?: string;
  notes?: string;
}
