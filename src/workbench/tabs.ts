/** Other tabs of this browser that have Quirewise open. */
export interface Tabs {
  readonly id: string;
  /** Tells the others that a notebook was stored. */
  told(notebookId: string, revision: number): void;
  /** True where the tab with this id is still open. */
  isAlive(tabId: string): Promise<boolean>;
  /** True where any other tab is open. */
  hasOthers(): Promise<boolean>;
  close(): void;
}

interface Saved {
  readonly notebookId: string;
  readonly revision: number;
}

const prefix = 'quirewise-tab:';

/**
 * Tells tabs from each other by a lock that each holds for as long as it lives, and passes word of what was stored.
 * Where the browser has neither locks nor channels, this tab is taken to be the only one.
 */
export function openTabs(id: string, onSaved: (saved: Saved) => void): Tabs {
  const channel = typeof BroadcastChannel === 'undefined' ? null : new BroadcastChannel('quirewise');
  if (channel !== null) {
    channel.onmessage = ({ data }: MessageEvent<unknown>) => {
      if (isSaved(data)) onSaved(data);
    };
  }
  const locks = typeof navigator === 'undefined' ? undefined : navigator.locks;
  let letGo = () => {};
  const held = new Promise<void>((resolve) => {
    letGo = resolve;
  });
  locks?.request(prefix + id, () => held).catch(() => {});
  const names = async (): Promise<readonly string[]> => {
    const { held: all } = (await locks?.query()) ?? {};
    return (all ?? []).flatMap(({ name }) => (name?.startsWith(prefix) ? [name.slice(prefix.length)] : []));
  };
  return {
    id,
    told: (notebookId, revision) => channel?.postMessage({ notebookId, revision } satisfies Saved),
    isAlive: async (tabId) => (await names()).includes(tabId),
    hasOthers: async () => (await names()).some((name) => name !== id),
    close() {
      channel?.close();
      letGo();
    },
  };
}

function isSaved(data: unknown): data is Saved {
  return (
    typeof data === 'object' &&
    data !== null &&
    'notebookId' in data &&
    typeof data.notebookId === 'string' &&
    'revision' in data &&
    typeof data.revision === 'number'
  );
}
