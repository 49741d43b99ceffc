/** Thrown where something kept or brought in can't be used; `message` is one or two clear sentences for the reader. */
export class StorageTrouble extends Error {
  override readonly name = 'StorageTrouble';
  readonly kind: TroubleKind;

  constructor(kind: TroubleKind, message: string, options?: ErrorOptions) {
    super(message, options);
    this.kind = kind;
  }
}

/**
 * `full`: no room is left. `torn`: not whole, or not what it says it is. `later version`: made by a later version.
 * `large`: more than is accepted. `elsewhere`: changed by another tab. `closed`: the browser's storage is not there.
 * `unfit`: it could not be opened again as it is.
 */
export type TroubleKind = 'full' | 'torn' | 'later version' | 'large' | 'elsewhere' | 'closed' | 'unfit';

/** What went wrong in storing, as a sentence that says what to do. */
export function troubleFrom(error: unknown): StorageTrouble {
  if (error instanceof StorageTrouble) return error;
  const name = nameOf(error);
  if (name === 'QuotaExceededError') {
    return new StorageTrouble(
      'full',
      'This browser has no room left, so the latest changes are only in this page. Save a backup file now, or free some space; it is tried again by itself.',
      { cause: error },
    );
  }
  return new StorageTrouble(
    'closed',
    'This browser does not let Quirewise store anything just now, so the latest changes are only in this page. Save a backup file before you close it; it is tried again by itself.',
    { cause: error },
  );
}

function nameOf(error: unknown): string {
  return typeof error === 'object' && error !== null && 'name' in error ? String(error.name) : '';
}
