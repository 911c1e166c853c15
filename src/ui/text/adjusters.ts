/** Words for what a person turns by clicks, by the layout of the damper, in English. */
import type { AdjusterId } from '../../model/adjusters.ts';
import type { Layout } from '../../model/project.ts';

const PISTON: Record<AdjusterId, string> = {
  needle: 'bleed needle',
  'base-needle': 'compression needle',
  poppet: 'poppet spring',
  'compression-spring': 'compression spring',
  'rebound-spring': 'rebound spring',
  'base-spring': 'base valve spring',
};

const NAMES: Record<Layout, Record<AdjusterId, string>> = {
  monotube: PISTON,
  'monotube-reservoir': PISTON,
  'twin-tube': PISTON,
  cartridge: { ...PISTON, needle: 'rebound needle', 'compression-spring': 'mid-valve spring' },
};

export const adjusterWords = {
  adjusterOf: (layout: Layout, id: AdjusterId): string => NAMES[layout][id],

  adjusters: {
    title: 'Adjusters',
    fromClosed: 'clicks from closed',
    clicks: (name: string) => `${name}, clicks from closed`,
    of: (count: number) => `/ ${count}`,
    closer: (name: string) => `${name}: one click towards closed`,
    opener: (name: string) => `${name}: one click open`,
    keys: 'Arrow keys turn it by a click',
    turn: (name: string) => `Turn ${name}`,
    wanted: (count: number) => `a whole number from 0 to ${count}`,
  },
};
