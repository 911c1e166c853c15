/** Seeds fast-check: from FC_SEED, or a fixed number, printed by fast-check itself on a failure. CI has to name its seed. */
import fc from 'fast-check';
import { seedFrom } from './helpers/seed.ts';

fc.configureGlobal({ seed: seedFrom(process.env) });
