import axe from 'axe-core';
import type { LitElement } from 'lit';

/** Puts an element alone on the page with its properties, and waits until it is drawn. */
export async function show<Tag extends keyof HTMLElementTagNameMap>(
  tag: Tag,
  properties: Partial<HTMLElementTagNameMap[Tag]>,
): Promise<HTMLElementTagNameMap[Tag]> {
  document.body.replaceChildren();
  // A mouse that rests where the element comes to stand would point at it, and leave it, by itself.
  document.body.style.pointerEvents = 'none';
  const element = document.createElement(tag);
  Object.assign(element, properties);
  document.body.append(element);
  await drawn(element);
  return element;
}

/** Waits until an element and the drawing inside it have been brought up to date. */
export async function drawn(element: Element): Promise<void> {
  await (element as LitElement).updateComplete;
  const inner = element.shadowRoot?.querySelector('qw-drawing');
  if (inner) await inner.updateComplete;
}

/** What axe finds wrong with the page, as short lines. */
export async function axeFinds(): Promise<string[]> {
  const { violations } = await axe.run(document.body, { rules: { region: { enabled: false } } });
  return violations.map(
    (v) =>
      `${v.id}: ${v.nodes
        .map((node) => node.html)
        .join(' | ')
        .slice(0, 300)}`,
  );
}

/** The root in which an element's drawing stands. */
export function chartRoot(element: Element): ShadowRoot {
  return (element.shadowRoot?.querySelector('qw-drawing') ?? element).shadowRoot!;
}

/** The marks of an element's drawing, as drawn. */
export function chartMarks(element: Element): SVGGElement[] {
  return [...chartRoot(element).querySelectorAll<SVGGElement>('.mark')];
}

/** The mark whose sentence begins so. */
export function markThatSays(element: Element, start: string): SVGGElement {
  const mark = chartMarks(element).find((m) => m.getAttribute('aria-label')!.startsWith(start));
  if (!mark) throw new Error(`no mark says "${start}"`);
  return mark;
}

/** Ids that qw-point brought, in order. */
export function listen(element: Element): string[] {
  const heard: string[] = [];
  element.addEventListener('qw-point', (event) => {
    heard.push((event as HTMLElementEventMap['qw-point']).detail.inks.join('+'));
  });
  return heard;
}

/** A pointer over the middle of a mark. */
export function pointAt(target: Element, type = 'pointermove', pointerType = 'mouse'): void {
  const box = target.getBoundingClientRect();
  target.dispatchEvent(
    new PointerEvent(type, {
      bubbles: true,
      composed: true,
      pointerType,
      clientX: box.left + box.width / 2,
      clientY: box.top + box.height / 2,
    }),
  );
}

export function press(root: ShadowRoot, key: string): void {
  const target = root.activeElement ?? root.querySelector('svg')!;
  target.dispatchEvent(
    new KeyboardEvent('keydown', { key, bubbles: true, composed: true, cancelable: true }),
  );
}
