import { defaultRangeExtractor, VirtualizerController } from '@tanstack/lit-virtual';
import type { LitElement } from 'lit';

/** A line of a long list that is drawn. */
export interface Line {
  readonly index: number;
  /** Room above it, in CSS pixels, in which lines stand that are not drawn. */
  readonly above: number;
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

/** Draws of a long list only the lines in view, those near them, and the one that has the keyboard. */
export class LongList {
  /** Gives the element of a line to be measured; its `data-index` tells which. For `ref`. */
  readonly measure: (element: Element | undefined) => void;
  private readonly options: LongListOptions;
  private readonly controller: VirtualizerController<Element, Element>;

  constructor(host: LitElement, options: LongListOptions) {
    this.options = options;
    this.controller = new VirtualizerController<Element, Element>(host, this.settings(0, 0, null));
    this.measure = (element) => this.controller.getVirtualizer().measureElement(element ?? null);
  }

  /**
   * The lines to draw, in order. `before`: height of what stands in the scroller above the list, in CSS pixels; `inHand`:
   * the line that has the keyboard, which is drawn wherever it stands.
   */
  lines(count: number, before: number, inHand: number | null): readonly Line[] {
    const virtual = this.controller.getVirtualizer();
    virtual.setOptions({ ...virtual.options, ...this.settings(count, before, inHand) });
    let end = before;
    return virtual.getVirtualItems().map((item) => {
      const line = { index: item.index, above: item.start - end };
      end = item.end;
      return line;
    });
  }

  /** How high the whole list is, in CSS pixels. */
  height(): number {
    return this.controller.getVirtualizer().getTotalSize();
  }

  /** Starts at the top again when it is next drawn. */
  rewind(): void {
    this.controller.getVirtualizer().scrollOffset = 0;
  }

  /** What is known of a line's height. */
  private heightOf(element: Element): number {
    const index = Number((element as HTMLElement).dataset.index);
    return this.controller.getVirtualizer().measurementsCache[index]?.size ?? this.options.lineHeight;
  }

  private settings(count: number, before: number, inHand: number | null) {
    const { scroller, lineHeight, gap, around } = this.options;
    return {
      count,
      gap,
      scrollMargin: before,
      // A new height inside the frame in which it was told of would be reported as a loop.
      useAnimationFrameWithResizeObserver: true,
      overscan: around,
      getScrollElement: scroller,
      estimateSize: () => lineHeight,
      // Told by the browser once the line stands there: asking at once would lay the page out anew for every line.
      measureElement: (element: Element, entry: ResizeObserverEntry | undefined) => {
        const height = entry?.borderBoxSize[0]?.blockSize;
        return height === undefined ? this.heightOf(element) : Math.round(height);
      },
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
