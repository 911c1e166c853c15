/** Keeps the bench for use without a network, and offers a new version when there is one. Never forces it. */
import { signal } from '@preact/signals';
import { flushEverything } from '../storage/autosave.ts';
import type { UpdateMessage } from './update-message.ts';

/**
 * - `waiting`: a new version is here and waits to be taken;
 * - `taken`: another tab has taken it, and this one shows the version before.
 */
export const update = signal<'waiting' | 'taken' | undefined>(undefined);

/** How often a page that stays open asks for a new version, when the person comes back to it [ms]. */
const ASK_AGAIN_MS = 60 * 60 * 1000;

let registration: ServiceWorkerRegistration | undefined;
let isAskedFor = false;

/** Takes the new version: the work is kept first, then the page opens anew. */
export async function takeUpdate(): Promise<void> {
  await flushEverything();
  if (update.value === 'taken' || !registration?.waiting) return location.reload();
  isAskedFor = true;
  registration.waiting.postMessage('take-the-new-version' satisfies UpdateMessage);
}

export const putUpdateOff = (): void => {
  update.value = undefined;
};

function offerWaiting(found: ServiceWorkerRegistration): void {
  // Without a version before it there is nothing to replace.
  if (found.waiting && navigator.serviceWorker.controller) update.value = 'waiting';
}

function follow(found: ServiceWorkerRegistration): void {
  offerWaiting(found);
  found.addEventListener('updatefound', () => {
    const { installing } = found;
    installing?.addEventListener('statechange', () => offerWaiting(found));
  });
}

function askNowAndThen(found: ServiceWorkerRegistration): void {
  let askedAt = Date.now();
  document.addEventListener('visibilitychange', () => {
    if (document.hidden || Date.now() - askedAt < ASK_AGAIN_MS) return;
    askedAt = Date.now();
    // Without a network there is no answer, and none is needed.
    found.update().catch(() => undefined);
  });
}

async function register(): Promise<void> {
  const hadVersion = navigator.serviceWorker.controller !== null;
  navigator.serviceWorker.addEventListener('controllerchange', () => {
    if (isAskedFor) location.reload();
    else if (hadVersion) update.value = 'taken';
  });
  try {
    registration = await navigator.serviceWorker.register('./service-worker.js', { scope: './' });
  } catch {
    // A browser may forbid it, as in some private windows: the bench then needs its server each time.
    return;
  }
  // A browser that blocks service workers may answer with nothing.
  if (!registration) return;
  follow(registration);
  askNowAndThen(registration);
}

/** The files are fetched once the bench is at rest. While developing there are no built files to keep. */
export function startOffline(): void {
  if (!import.meta.env.PROD || !('serviceWorker' in navigator)) return;
  const begin = (): void => void register();
  if ('requestIdleCallback' in window) requestIdleCallback(begin, { timeout: 5000 });
  else setTimeout(begin, 2000);
}
