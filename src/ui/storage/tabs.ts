/** What the tabs of one browser tell one another. Nothing leaves the machine. */
export type TabMessage =
  | { readonly kind: 'saved' | 'shelf-changed'; readonly project: string }
  /** `asker` wants to write; the tab that writes saves first, then answers. */
  | {
      readonly kind: 'hand-over' | 'handed-over' | 'not-handed-over';
      readonly project: string;
      readonly asker: string;
    };

export const tabId = crypto.randomUUID();

const channel = typeof BroadcastChannel === 'undefined' ? undefined : new BroadcastChannel('shimwright.tabs');

export const tellTabs = (message: TabMessage): void => channel?.postMessage(message);

export function listenToTabs(listener: (message: TabMessage) => void): () => void {
  const onMessage = ({ data }: MessageEvent<TabMessage>): void => listener(data);
  channel?.addEventListener('message', onMessage);
  return () => channel?.removeEventListener('message', onMessage);
}
