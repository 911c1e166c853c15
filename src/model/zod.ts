/** The one import of zod: without its just-in-time compiler, so that no page or worker ever tries eval. */
import * as z from 'zod';

z.config({ jitless: true });

export { z };
