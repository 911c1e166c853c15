/** Links that carry the work itself: making one, and what a person is asked when the bench is opened by one. */
import { signal } from '@preact/signals';
import { projectOfBuild } from '../../model/link-form.ts';
import type { Project } from '../../model/project.ts';
import { faultInWords } from '../app/apply.ts';
import { openAsNew } from '../app/files.ts';
import { tell } from '../app/notices.ts';
import { project, selectedBuild } from '../app/store.ts';
import { canPack, type LinkRefusal, packLink, readLink } from '../storage/link.ts';
import { keeping } from '../text/keeping.ts';

const words = keeping.link;

/** The bar that offers links is open; with the address itself when the browser did not let it be copied. */
export const offer = signal<{ readonly address?: string } | undefined>(undefined);
/** Came with the address of this page and waits for a word. */
export const arrived = signal<Project | undefined>(undefined);

export type Share = 'build' | 'project';

const SHOWN_FAULTS = 6;

export function offerLink(): void {
  if (canPack()) offer.value = {};
  else tell(words.notHere, { tone: 'problem' });
}

export async function copyLink(share: Share): Promise<void> {
  const work = share === 'project' ? project.value : projectOfBuild(project.value, selectedBuild.value.id);
  const fragment = await packLink(work);
  if (!fragment) return tell(words.tooLong(share === 'build'), { tone: 'problem' });
  const address = location.href.replace(/#.*$/, '') + fragment;
  try {
    await navigator.clipboard.writeText(address);
    offer.value = undefined;
    tell(words.copied(share === 'build' ? selectedBuild.value.name : project.value.name, address.length));
  } catch {
    offer.value = { address };
  }
}

/** Takes the link out of the address, so that a reload does not ask again. */
function forgetLink(): void {
  history.replaceState(history.state, '', location.pathname + location.search);
}

function refuse(refusal: LinkRefusal): void {
  forgetLink();
  const faults = refusal.reason === 'faults' ? refusal.faults.slice(0, SHOWN_FAULTS) : [];
  const details = faults.map((fault) => `${fault.path}: ${faultInWords(fault).message}`);
  tell(words.refused[refusal.reason], { tone: 'problem', details });
}

async function readAddress(): Promise<void> {
  const fragment = location.hash;
  const content = await readLink(fragment);
  // The person may have gone on to another address meanwhile.
  if (fragment !== location.hash) return;
  if (content.kind === 'project') arrived.value = content.document;
  if (content.kind === 'refused') refuse(content);
}

export function openArrived(): void {
  const document = arrived.value;
  leaveArrived();
  if (document) openAsNew(document, words.openLabel, words.opened(document.name || keeping.unnamed));
}

export function leaveArrived(): void {
  arrived.value = undefined;
  forgetLink();
}

/** Looks at the address of the page, now and whenever another link is followed in this tab. */
export function followLinks(): void {
  window.addEventListener('hashchange', () => void readAddress());
  void readAddress();
}
