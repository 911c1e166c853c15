/** The paths side by side through one valve. */
import type { PathFlows } from './types.ts';

/** What passes in all [m3/s]. */
export const totalFlow = ({
  ports_m3_s,
  bleed_m3_s,
  leakage_m3_s,
  poppet_m3_s = 0,
  check_m3_s = 0,
}: PathFlows): number => ports_m3_s + bleed_m3_s + leakage_m3_s + poppet_m3_s + check_m3_s;
