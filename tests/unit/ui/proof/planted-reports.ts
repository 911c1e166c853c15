/** Reports as the worker would send them, with deviations chosen by hand. */
import type { CaseReport, JudgedCase, ReportedQuantity, Tolerance } from '../../../../workers/proof-client.ts';

const WIDE: Tolerance = { relative: 0.08, reason: 'held by the shim above' };
const TIGHT: Tolerance = { absolute: 0.5, reason: 'two printed digits' };

export function quantity(part: Partial<ReportedQuantity> = {}): ReportedQuantity {
  return {
    name: 'shim 1 clampStress',
    unit: 'MPa',
    expected: 200,
    computed: 204,
    deviation: 4,
    allowed: 16,
    share: 0.25,
    passed: true,
    tolerance: 'wide',
    ...part,
  };
}

export function judged(part: Partial<JudgedCase> = {}): JudgedCase {
  const quantities = part.quantities ?? [quantity()];
  return {
    status: 'judged',
    folder: 'stack/two-shims',
    title: 'Two shims',
    kind: 'own',
    source: '# Two shims\n\nA source.',
    tolerances: { wide: WIDE, tight: TIGHT },
    passed: quantities.every(({ passed }) => passed),
    quantities,
    ...part,
  };
}

export const outside = quantity({ name: 'force', computed: 260, deviation: 60, share: 3.75, passed: false });
export const uncomputed = quantity({
  name: 'nothing',
  computed: undefined,
  deviation: Number.POSITIVE_INFINITY,
  share: Number.POSITIVE_INFINITY,
  passed: false,
});

export const unreadable: CaseReport = { status: 'unreadable', folder: 'gas/spoilt', reason: 'half a file' };

export const run: readonly CaseReport[] = [
  judged({ folder: 'plate/a', title: 'A', kind: 'exact', quantities: [quantity({ share: 0.1 }), quantity()] }),
  judged({ folder: 'plate/b', title: 'B', kind: 'printed', quantities: [quantity({ share: 0.9 }), outside] }),
  judged({ folder: 'stack/c', title: 'C', kind: 'own' }),
  unreadable,
  judged({ folder: 'gas/d', title: 'D', kind: 'exact', failure: 'no root', quantities: [uncomputed, uncomputed] }),
];
