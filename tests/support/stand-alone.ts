import axe from 'axe-core';

/** Puts an element on a blank page with nothing but its properties, and waits until it is drawn. */
export async function standAlone<E extends HTMLElement>(
  tag: string,
  properties: Record<string, unknown> = {},
  look: 'light' | 'dark' = 'light',
): Promise<E> {
  document.documentElement.dataset.look = look;
  document.documentElement.lang = 'en';
  document.title = 'An element alone';
  document.body.replaceChildren();
  document.body.style.background = 'var(--qw-leaf)';
  // A mouse that rests where the element comes to stand would point at it, and leave it, by itself.
  document.body.style.pointerEvents = 'none';
  const element = document.createElement(tag) as E & { updateComplete: Promise<unknown> };
  Object.assign(element, properties);
  const main = document.createElement('main');
  main.append(element);
  document.body.append(main);
  await drawn(element);
  return element;
}

/** Resolves when an element, and those inside it, have been drawn. */
export async function drawn(element: Element): Promise<void> {
  await (element as Element & { updateComplete?: Promise<unknown> }).updateComplete;
  for (const inner of element.shadowRoot?.querySelectorAll('*') ?? []) {
    if (inner.tagName.startsWith('QW-')) await drawn(inner);
  }
}

/** What axe finds on the page, as "rule: target". Page-wide rules that one element cannot meet are left out. */
export async function axeTroubles(): Promise<string[]> {
  const { violations } = await axe.run(document, {
    rules: { 'page-has-heading-one': { enabled: false }, region: { enabled: false } },
  });
  return violations.flatMap(({ id, nodes }) => nodes.map(({ target }) => `${id}: ${target.join(' ')}`));
}

/** The first element that fits inside shadow roots: each step goes one shadow root deeper. */
export function within<E extends Element = HTMLElement>(host: Element, ...steps: readonly string[]): E {
  const found = steps.reduce<Element | null>((at, step) => at?.shadowRoot?.querySelector(step) ?? null, host);
  if (!found) throw new Error(`Nothing fits ${steps.join(' → ')} in ${host.tagName}`);
  return found as E;
}

/** The details of every event of this name from now on. */
export function heard<Detail>(from: EventTarget, name: string): Detail[] {
  const details: Detail[] = [];
  from.addEventListener(name, (event) => details.push((event as CustomEvent<Detail>).detail));
  return details;
}
