/** What a page says to the service worker that waits. */
export type UpdateMessage = 'take-the-new-version';
