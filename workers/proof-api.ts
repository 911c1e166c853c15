/** The worker's side of the proof: one case after the other, each handed over as soon as it is judged. No numerics. */
import { type ProxyMethods, releaseProxy } from 'comlink';
import { holdLifeline } from './lifeline.ts';
import type { CaseReport, OnReport, ProofApi } from './proof-protocol.ts';

/** @param loadCases the stored texts of every case @param reportOn reads, computes and judges one of them */
export function createProofApi<Texts>(
  loadCases: () => Promise<readonly Texts[]>,
  reportOn: (texts: Texts) => CaseReport,
): ProofApi {
  return {
    hello: (lifeline) => holdLifeline(lifeline),
    async run(onReport) {
      try {
        const cases = await loadCases();
        for (const texts of cases) await onReport(reportOn(texts), cases.length);
        return cases.length;
      } finally {
        (onReport as OnReport & Partial<ProxyMethods>)[releaseProxy]?.();
      }
    },
  };
}
