/** Where the dialog for a file of a test bench stands, over whichever page is open. */
import type { JSX } from 'preact';
import { ImportDialog } from './open-file.ts';

export function ImportGate(): JSX.Element | null {
  const Dialog = ImportDialog.value;
  return Dialog ? <Dialog /> : null;
}
