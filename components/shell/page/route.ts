import type { ReactiveController, ReactiveControllerHost } from 'lit';

/** What the address after # asks for: a leaf, the list of sources with one of them marked, the page of differences. */
export type Place =
  | { readonly at: 'leaf'; readonly id: string }
  | { readonly at: 'sources'; readonly id: string }
  | { readonly at: 'differences'; readonly id: '' };

/** Where a hash leads. "#sources/iso-11664-6" is a source; anything else names a leaf, an empty one none. */
export function placeOf(hash: string): Place {
  const words = decodeURIComponent(hash.replace(/^#/, ''));
  if (words === 'differences') return { at: 'differences', id: '' };
  const source = /^sources(?:\/(.*))?$/.exec(words);
  return source ? { at: 'sources', id: source[1] ?? '' } : { at: 'leaf', id: words };
}

/** Follows the address of the page and tells its host when it has changed. */
export class Route implements ReactiveController {
  place: Place = placeOf(location.hash);
  private readonly host: ReactiveControllerHost;
  private readonly turned: (place: Place) => void;

  constructor(host: ReactiveControllerHost, turned: (place: Place) => void) {
    this.host = host;
    this.turned = turned;
    host.addController(this);
  }

  hostConnected(): void {
    window.addEventListener('hashchange', this.follow);
  }

  hostDisconnected(): void {
    window.removeEventListener('hashchange', this.follow);
  }

  /** Goes to a leaf; `silently` leaves no step for the browser's own way back. */
  go(leafId: string, silently = false): void {
    const hash = leafId === '' ? '#' : `#${encodeURIComponent(leafId)}`;
    if (silently) history.replaceState(null, '', hash);
    else location.hash = hash;
    this.place = { at: 'leaf', id: leafId };
    // At once: the browser tells of the new address only later, and what happens meanwhile must not turn back.
    if (!silently) this.turned(this.place);
    this.host.requestUpdate();
  }

  private readonly follow = (): void => {
    this.place = placeOf(location.hash);
    this.turned(this.place);
    this.host.requestUpdate();
  };
}
