/**
 * A worker that ends without an error says nothing to its page. So it holds a lock while it lives: the browser gives the
 * lock away when the worker is gone, and the page, which waits for it, knows. Where there are no locks (an insecure
 * address, Node) only error events tell.
 */
const locks = (): LockManager | undefined => (globalThis as { navigator?: { locks?: LockManager } }).navigator?.locks;

/** The worker's end: settles once the lock is held, and never lets go of it. */
export function holdLifeline(name: string): Promise<void> {
  const manager = locks();
  if (!manager) return Promise.resolve();
  return new Promise((held, refused) => {
    const forEver = () => {
      held();
      return new Promise<never>(() => {});
    };
    manager.request(name, forEver).catch(refused);
  });
}

/** The page's end: calls `gone` once the worker that holds the lock has ended, however it ended. */
export function watchLifeline(name: string, gone: () => void): void {
  // A refused request only means that this sign is missing; error events still tell.
  locks()
    ?.request(name, gone)
    .catch(() => {});
}
