/** Words of the proof. They come with its page and not with the bench. */
import { plural } from './plural.ts';

const cases = (n: number): string => plural(n, 'case', 'cases');
const quantities = (n: number): string => plural(n, 'quantity', 'quantities');
const inSeconds = (seconds: number): string => `${seconds.toFixed(1)} s`;

export const proofWords = {
  title: 'Proof',
  intro:
    'Each reference case is computed in this browser, by the solver that draws the curves, and held against its source. The sources are textbooks, publications, closed forms and separate calculations by other methods.',
  limits:
    'Within tolerance means that the solver solves its equations as the sources do. It does not mean that a real damper follows the equations: shims, ports and oil scatter, and the discharge coefficients are known to about ± 10 %.',

  kinds: {
    exact: 'exact',
    printed: 'printed',
    curve: 'off a curve',
    own: 'own',
    regression: 'regression',
  },
  kindsWhy: {
    exact: 'a mathematical solution, recomputed',
    printed: 'digits of a publication, with its rounding and its slips',
    curve: 'read off a diagram',
    own: 'our own derivation by another method, or our own run of a general-purpose program such as continuum elements',
    regression: 'an earlier number of this program: it flags a change and validates nothing',
  },
  kindsTitle: 'What the kinds mean',

  fields: {
    plate: 'Plates',
    stack: 'Stacks',
    fluid: 'Oil',
    gas: 'Gas',
    hydraulics: 'Hydraulics',
    cycle: 'Cycles',
  } as Readonly<Record<string, string>>,

  run: {
    again: 'Run again',
    stop: 'Stop',
    csv: 'Save CSV',
    csvWhy: 'Save every result as a table, one line a quantity',
    json: 'Save JSON',
    jsonWhy: 'Save every result with sources, browser and time',
    progress: 'Cases run',
    starting: 'Loading the cases…',
    running: (done: number, total: number) => `${done} of ${total} cases run`,
    allWithin: (n: number, q: number, seconds: number) =>
      `All ${cases(n)} within tolerance: ${quantities(q)} in ${inSeconds(seconds)}.`,
    someOutside: (outside: number, n: number, seconds: number) =>
      `${outside} of ${cases(n)} outside their tolerance, in ${inSeconds(seconds)}.`,
    stopped: (done: number, total: number) => `Stopped after ${done} of ${cases(total)}.`,
    broken: (done: number, total: number, why: string) =>
      total > 0 ? `The run broke off after ${done} of ${cases(total)}: ${why}` : `The run broke off: ${why}`,
    finished: (when: string) => `Run on ${when}`,
    nothing: 'no case to run',
  },

  totals: {
    title: 'By field',
    field: 'Field',
    cases: 'Cases',
    quantities: 'Quantities',
    outside: 'Outside',
    worst: 'Most of a tolerance used',
    worstCase: 'Where',
    all: 'All',
    none: 'none',
    of: (name: string, title: string) => `${title}: ${name}`,
  },

  filter: {
    title: 'Show',
    field: 'Field',
    kind: 'Kind',
    all: 'All',
    onlyOutside: 'Only those outside',
    shown: (shown: number, run: number) => (shown === run ? cases(run) : `${shown} of ${cases(run)}`),
    nothing: 'No case fits this choice.',
    nothingOutside: 'No case is outside its tolerance.',
    expandAll: 'Open all',
    collapseAll: 'Close all',
  },

  cases: {
    title: 'Cases',
    caption: 'Reference cases, by field. Each opens to its quantities, tolerances and source.',
    case: 'Case',
    kind: 'Kind',
    quantities: 'Quantities',
    tolerance: 'Tolerance',
    used: 'Most used',
    result: 'Result',
    noted: (n: number) => `${n} with a note`,
    within: 'within',
    outside: 'outside',
    outsideOf: (outside: number, all: number) => `${outside} of ${all} outside`,
    failed: 'failed',
    unreadable: 'unreadable',
    failure: (why: string) => `Nothing was computed: ${why}`,
    unreadableWhy: (why: string) => `The case could not be read: ${why}`,
    none: 'none',
  },

  details: {
    quantitiesOf: (title: string) => `Quantities of ${title}`,
    quantity: 'Quantity',
    expected: 'Expected',
    computed: 'Computed',
    unit: 'Unit',
    deviation: 'Deviation',
    tolerance: 'Tolerance',
    used: 'Used',
    result: 'Result',
    noNumber: 'none',
    tolerances: 'Tolerances and their reasons',
    toleranceFor: (amount: string, n: number) => `${amount} for ${quantities(n)}`,
    notes: 'Notes',
    noteMark: (mark: string) => `note ${mark}`,
    source: 'Source',
    kind: (kind: string, why: string) => `Kind: ${kind}, ${why}.`,
    stored: (folder: string) => `Stored as reference-cases/${folder}.`,
  },
} as const;
