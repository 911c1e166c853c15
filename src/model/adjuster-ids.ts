/** The names of what a person turns by clicks, in the order in which they are told. */
export const ADJUSTER_IDS = [
  'needle',
  'base-needle',
  'poppet',
  'compression-spring',
  'rebound-spring',
  'base-spring',
] as const;

export type AdjusterId = (typeof ADJUSTER_IDS)[number];
