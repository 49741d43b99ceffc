import type { Look } from '../../../src/workbench/session-types.ts';

/** Puts the page into light or dark, or leaves it to the device. */
export function showLook({ theme }: Look): void {
  if (theme === 'system') delete document.documentElement.dataset.look;
  else document.documentElement.dataset.look = theme;
}
