import { defaultRangeExtractor, VirtualizerController } from '@tanstack/lit-virtual';
import type { LitElement } from 'lit';
import { Slots } from './slots.ts';

/** A line of a long list that is drawn. */
export interface Line {
  readonly index: number;
  /** Room above it, in CSS pixels, in which lines stand that are not drawn. */
  readonly above: number;
  /**
   * Names what it is drawn with: a line that comes into view takes over what one that left it was drawn with. A key for
   * `repeat`, so that scrolling makes no elements that must be cleared away again.
   */
  readonly slot: number;
  /** Gives the element of the line to be measured; its `data-index` tells which line it is. For `ref`. */
  readonly measure: (element: Element | undefined) => void;
}

export interface LongListOptions {
  /** The element that scrolls; null while it is not there. */
  readonly scroller: () => Element | null;
  /** How high a line is likely to be, in CSS pixels; `measure` tells better. */
  readonly lineHeight: number;
  /** Room between two lines, in CSS pixels. */
  readonly gap: number;
  /** Lines that are drawn above and below those in view, so that Tab and a quick hand find the next ones there. */
  readonly around: number;
}

/** Up to so many lines a list is drawn whole: the browser's own search finds all of it then. Ours. */
const shortList = 40;

/** After so many ms without a scroll a list is at rest. Ours: a hand that turns a wheel pauses longer to look. */
const restMs = 100;

/** Draws of a long list only the lines in view, those near them, and the one that has the keyboard. */
export class LongList {
  private readonly slots = new Slots();
  /** Told by the browser once a line stands there: asking at once would lay the page out anew for every line. */
  private readonly heights = new ResizeObserver((told) => {
    // Which line it is is read now: in the next frame another may stand there.
    const heights = told
      .filter(({ target }) => target.isConnected)
      .map(({ target, borderBoxSize: [box] }) => [lineOf(target), Math.round(box!.blockSize)] as const);
    // A new height inside the frame in which it was told of would be reported as a loop.
    requestAnimationFrame(() => {
      for (const [line, height] of heights) this.controller.getVirtualizer().resizeItem(line, height);
    });
  });
  private readonly measures = new Map<
    number,
    { readonly index: number; readonly measure: Line['measure'] }
  >();
  private readonly options: LongListOptions;
  private readonly controller: VirtualizerController<Element, Element>;

  constructor(host: LitElement, options: LongListOptions) {
    this.options = options;
    this.controller = new VirtualizerController<Element, Element>(host, this.settings(0, 0, null));
  }

  /**
   * The lines to draw, in order. `before`: height of what stands in the scroller above the list, in CSS pixels; `inHand`:
   * the line that has the keyboard, which is drawn wherever it stands.
   */
  lines(count: number, before: number, inHand: number | null): readonly Line[] {
    const virtual = this.controller.getVirtualizer();
    virtual.setOptions({ ...virtual.options, ...this.settings(count, before, inHand) });
    let end = before;
    const items = virtual.getVirtualItems();
    const slots = this.slots.of(items.map(({ index }) => index));
    return items.map((item, at) => {
      const { index } = item;
      const slot = slots[at]!;
      const line = { index, above: item.start - end, slot, measure: this.measureOf(slot, index) };
      end = item.end;
      return line;
    });
  }

  /** True while it is being scrolled, and a moment longer; the host is drawn once more when it has come to rest. */
  isMoving(): boolean {
    return this.controller.getVirtualizer().isScrolling;
  }

  /** How high the whole list is, in CSS pixels. */
  height(): number {
    return this.controller.getVirtualizer().getTotalSize();
  }

  /** Starts at the top again when it is next drawn. */
  rewind(): void {
    this.controller.getVirtualizer().scrollOffset = 0;
  }

  /** The same function for as long as the slot holds the line: another is called anew, so that the other line is measured. */
  private measureOf(slot: number, index: number): Line['measure'] {
    const before = this.measures.get(slot);
    if (before?.index === index) return before.measure;
    let stands: Element | undefined;
    const measure = (element: Element | undefined) => {
      if (stands) this.heights.unobserve(stands);
      stands = element;
      if (element) this.heights.observe(element);
    };
    this.measures.set(slot, { index, measure });
    return measure;
  }

  private settings(count: number, before: number, inHand: number | null) {
    const { scroller, lineHeight, gap, around } = this.options;
    return {
      count,
      gap,
      scrollMargin: before,
      overscan: around,
      isScrollingResetDelay: restMs,
      getScrollElement: scroller,
      estimateSize: () => lineHeight,
      // What is drawn before it is known how much room there is.
      initialRect: { width: 0, height: 900 },
      rangeExtractor: (range: Parameters<typeof defaultRangeExtractor>[0]) => {
        if (range.count <= shortList) return Array.from({ length: range.count }, (_, index) => index);
        const near = defaultRangeExtractor(range);
        if (inHand === null || inHand >= range.count || near.includes(inHand)) return near;
        return [...near, inHand].sort((a, b) => a - b);
      },
    };
  }
}

function lineOf(element: Element): number {
  return Number((element as HTMLElement).dataset.index);
}
