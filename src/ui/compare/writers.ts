/** Numbers of the comparison in the units on show. */

import type { Writer } from '../../sheet/settings.ts';
import { showField, showLength, writeField } from '../app/quantities.ts';
import type { Writers } from './comparison-text.ts';

export const write: Writer = showField;
export const bare: Writer = writeField;
export const WRITERS: Writers = { write, bare, length: showLength };
