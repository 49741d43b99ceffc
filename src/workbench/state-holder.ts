import type { Message, SessionState } from './session-types.ts';

/** Holds the newest snapshot and tells of changes. Changes in one turn of the page are told once. */
export interface StateHolder {
  readonly state: SessionState;
  set(change: Partial<SessionState>): void;
  subscribe(listener: (state: SessionState) => void): () => void;
  /** Adds a message; one that says the same already is not said twice. */
  say(kind: Message['kind'], says: string, more?: Omit<Message, 'id' | 'kind' | 'says'>): void;
  dismiss(id: string): void;
  /**
   * Says, as long as it is so, why the latest changes are not stored, and offers a backup; null where that is not known
   * to be so. `isStored`: all of them are, and the next trouble is told anew also where it was put away.
   */
  sayUnsaved(says: string | null, isStored: boolean): void;
  /** Puts away what need not be put away by hand. */
  dismissNotes(): void;
  /** Puts away what was said of files that were dropped. */
  dismissDrops(): void;
  /** Puts away what was said in trouble of one picture: it is tried again. */
  dismissTroubleWith(name: string): void;
  /** Puts away what offered to undo a step that is no longer the last, and what was said of an edit that could not be made. */
  dismissOffers(): void;
}

export function holdState(first: SessionState): StateHolder {
  const listeners = new Set<(state: SessionState) => void>();
  let state = first;
  let told = first;
  let count = 0;
  let unsaved: string | null = null;

  const tell = () => {
    if (told === state) return;
    told = state;
    for (const listener of [...listeners]) listener(state);
  };
  const set = (change: Partial<SessionState>) => {
    const keys = Object.keys(change) as (keyof SessionState)[];
    if (keys.every((key) => state[key] === change[key])) return;
    state = { ...state, ...change };
    queueMicrotask(tell);
  };

  return {
    get state() {
      return state;
    },
    set,
    subscribe(listener) {
      listeners.add(listener);
      return () => listeners.delete(listener);
    },
    say(kind, says, more = {}) {
      const isSaid = (one: Message) => one.says === says && one.list?.join() === more.list?.join();
      if (state.messages.some(isSaid)) return;
      const message = { id: `message-${++count}`, kind, says, ...more };
      set({ messages: [...state.messages, message] });
    },
    sayUnsaved(says, isStored) {
      if (says === null && !isStored) return;
      if (says === unsaved) return;
      unsaved = says;
      const messages = state.messages.filter(({ offers }) => offers !== 'backup');
      const message = {
        id: `message-${++count}`,
        kind: 'trouble',
        says: says ?? '',
        offers: 'backup',
      } as const;
      if (says !== null) set({ messages: [...messages, message] });
      else if (messages.length !== state.messages.length) set({ messages });
    },
    dismissOffers() {
      const messages = state.messages.filter(
        ({ offers, of }) => (offers === undefined || offers === 'backup') && of !== 'edit',
      );
      if (messages.length !== state.messages.length) set({ messages });
    },
    dismissNotes() {
      const messages = state.messages.filter(({ kind, of }) => kind === 'trouble' && of === undefined);
      if (messages.length !== state.messages.length) set({ messages });
    },
    dismissDrops() {
      const messages = state.messages.filter(({ of }) => of !== 'drop');
      if (messages.length !== state.messages.length) set({ messages });
    },
    dismissTroubleWith(name) {
      const messages = state.messages.filter(({ about }) => about !== name);
      if (messages.length !== state.messages.length) set({ messages });
    },
    dismiss(id) {
      const messages = state.messages.filter((message) => message.id !== id);
      if (messages.length !== state.messages.length) set({ messages });
    },
  };
}
