import * as v from 'valibot';
import type { Shelf } from '../storage/shelf.ts';
import type { Look } from './session-types.ts';

/** What the browser remembers beside notebooks. Failing to remember is no trouble: nothing of the user's work is in it. */
export interface Settings {
  readonly look: Look;
  /** The leaf that was looked at last. */
  readonly leafId: string | null;
  /** When each notebook's last bundle was saved: ISO date and time by notebook id. */
  readonly backups: Readonly<Record<string, string>>;
  setLook(look: Look): void;
  setLeaf(leafId: string): void;
  setBackup(notebookId: string, when: string): void;
}

export const defaultLook: Look = { surround: 'grey', theme: 'system', hand: 'right' };

const lookSchema = v.object({
  surround: v.fallback(v.picklist(['grey', 'white', 'dark']), defaultLook.surround),
  theme: v.fallback(v.picklist(['system', 'light', 'dark']), defaultLook.theme),
  hand: v.fallback(v.picklist(['left', 'right']), defaultLook.hand),
});
const backupsSchema = v.record(
  v.pipe(v.string(), v.regex(/^[\w-]{1,100}$/)),
  v.pipe(v.string(), v.isoTimestamp()),
);

/** Never rejects: what can't be read falls back to its default. */
export async function readSettings(shelf: Shelf): Promise<Settings> {
  const get = (key: string) => shelf.setting(key).catch(() => undefined);
  const [look, leaf, backups] = await Promise.all([get('look'), get('leaf'), get('backups')]);
  const set = (key: string, value: unknown) => void shelf.setSetting(key, value).catch(() => {});
  const known: Record<string, string> = { ...v.parse(v.fallback(backupsSchema, {}), backups) };
  return {
    look: v.parse(v.fallback(lookSchema, defaultLook), look),
    leafId: typeof leaf === 'string' ? leaf : null,
    backups: known,
    setLook: (value) => set('look', value),
    setLeaf: (value) => set('leaf', value),
    setBackup(notebookId, when) {
      known[notebookId] = when;
      set('backups', known);
    },
  };
}
