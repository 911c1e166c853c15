/** Every edit goes through here: it is tried on a copy, checked, and only then becomes the document. */
import type { Project } from '../../model/project.ts';
import { validateProject } from '../../model/validate.ts';
import { InputError, type InputFault } from '../../units/fault.ts';
import { text } from '../text/en.ts';
import { wantedInWords } from '../text/faults.ts';
import { keeping } from '../text/keeping.ts';
import { tell } from './notices.ts';
import { inFamily, inLocale } from './quantities.ts';
import { commit, type EditNote, readOnly } from './store.ts';

export interface EditFault {
  readonly code: string;
  readonly message: string;
}

/** A refusal in the person's own units. */
export function faultInWords(fault: InputFault): EditFault {
  // What was typed stands in quotes, and stays as it was typed.
  const locally = (words: string): string => (words.startsWith('"') ? words : inLocale(words));
  const withUnit = (words: string): string => (fault.unit ? inFamily(words, fault.unit) : locally(words));
  return { code: fault.code, message: text.fault(withUnit(fault.got), withUnit(wantedInWords(fault))) };
}

/** Makes the edit, or says why not; the document stays as it was then. */
export function editProject(edit: () => Project, note: EditNote): EditFault | undefined {
  if (readOnly.value) {
    tell(keeping.access.refused, { tone: 'problem' });
    return { code: 'project.read-only', message: keeping.access.refused };
  }
  try {
    const next = edit();
    const checked = validateProject(next);
    if (!checked.ok) return faultInWords(checked.faults[0]);
    commit(next, note);
    return undefined;
  } catch (error) {
    if (error instanceof InputError) return faultInWords(error.fault);
    throw error;
  }
}
