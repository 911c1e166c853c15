/** Seeds fast-check: from FC_SEED, or a fixed number, printed by fast-check itself on a failure. */
import fc from 'fast-check';

fc.configureGlobal({ seed: Number(process.env.FC_SEED ?? 20260611) });
