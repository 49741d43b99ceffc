import type { ReactiveController, ReactiveControllerHost } from 'lit';

/**
 * The whole page takes pictures: dropped on it from outside, or pasted. `over` is true while something hangs
 * above the page. Papers that are dragged inside the page are none of its business.
 */
export class DropZone implements ReactiveController {
  over = false;
  private readonly host: ReactiveControllerHost;
  private readonly take: (files: readonly File[]) => void;

  constructor(host: ReactiveControllerHost, take: (files: readonly File[]) => void) {
    this.host = host;
    this.take = take;
    host.addController(this);
  }

  hostConnected(): void {
    window.addEventListener('dragover', this.onDragOver);
    window.addEventListener('dragleave', this.onDragLeave);
    window.addEventListener('drop', this.onDrop);
    window.addEventListener('paste', this.onPaste);
  }

  hostDisconnected(): void {
    window.removeEventListener('dragover', this.onDragOver);
    window.removeEventListener('dragleave', this.onDragLeave);
    window.removeEventListener('drop', this.onDrop);
    window.removeEventListener('paste', this.onPaste);
  }

  private readonly onDragOver = (event: DragEvent): void => {
    if (!event.dataTransfer?.types.includes('Files')) return;
    event.preventDefault();
    event.dataTransfer.dropEffect = 'copy';
    this.hover(true);
  };

  private readonly onDragLeave = (event: DragEvent): void => {
    // Only the last leave, out of the window, has nothing that it goes to.
    if (event.relatedTarget === null) this.hover(false);
  };

  private readonly onDrop = (event: DragEvent): void => {
    this.hover(false);
    const files = [...(event.dataTransfer?.files ?? [])];
    if (files.length === 0) return;
    event.preventDefault();
    this.take(files);
  };

  private readonly onPaste = (event: ClipboardEvent): void => {
    const files = [...(event.clipboardData?.files ?? [])];
    if (files.length === 0) return;
    event.preventDefault();
    this.take(files);
  };

  private hover(over: boolean): void {
    if (this.over === over) return;
    this.over = over;
    this.host.requestUpdate();
  }
}
