/** Words about builds and what tells them apart, in English. */
import { plural } from './plural.ts';

export const buildsWords = {
  builds: {
    title: 'Builds',
    count: (n: number) => plural(n, 'build', 'builds'),
    baseline: 'baseline',
    sameAsBaseline: 'same valving as the baseline',
    select: (name: string) => `Show ${name}`,
    show: (name: string) => `${name} on the charts`,
    edit: 'Edit',
    editDone: 'Done',
    rename: 'Name',
    notes: 'Notes',
    notesHint: 'Why this build, what it should change',
    duplicate: 'Duplicate',
    /** Steps, as undo names them. */
    duplicateLabel: (name: string) => `Duplicate ${name}`,
    deleteLabel: (name: string) => `Delete ${name}`,
    setBaseline: 'Make baseline',
    delete: 'Delete',
    lastBuild: 'The only build stays.',
    deleted: (name: string) => `${name} deleted.`,
    copyOf: (name: string) => `${name} copy`,
  },

  difference: {
    size: (diameter: string, thickness: string) => `${diameter} × ${thickness}`,
    several: (count: number, size: string) => `${count} of ${size}`,
    count: (from: number, to: number, size: string, face: boolean) => `${face ? 'face ' : ''}${from}→${to} of ${size}`,
    altered: (diameter: string, thickness: string) => `${diameter} × ${thickness} altered`,
    other: 'other settings',
    change: (from: string, to: string) => `${from}→${to}`,
    thickness: (what: string, face: boolean) => `${face ? 'face ' : ''}${what}`,
    added: (what: string, face: boolean) => `+ ${face ? 'face ' : ''}${what}`,
    removed: (what: string, face: boolean) => `− ${face ? 'face ' : ''}${what}`,
    moved: (what: string, _face: boolean) => `moved ${what}`,
    none: 'none',
    setting: (name: string, from: string, to: string) => `${name} ${from}→${to}`,
    bleed: (count: number, diameter: string) => (count === 0 ? 'closed' : `${count} × ⌀${diameter}`),
    poppet: (diameter: string) => `⌀${diameter}`,
    stack: 'stack',
    otherwise: (name: string) => `${name} altered`,
    clicks: (name: string, from: number, to: number) => `${name} ${from}→${to} clicks`,
    inPlace: (place: string, parts: string) => `${place}: ${parts}`,
  },
};
