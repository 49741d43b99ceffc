import { filterChoices, matchesInDrawer } from '../drawer/look-through.ts';
import { DrawerMirror } from '../drawer/mirror.ts';
import type { DrawerAnswer, DrawerRequest } from './drawer-messages.ts';

/** Looks through a drawer of any size off the page's thread, in a copy of it that is kept up to date. */
const mirror = new DrawerMirror();

self.onmessage = ({ data }: MessageEvent<DrawerRequest>) => {
  switch (data.kind) {
    case 'things':
      mirror.take(data);
      return;
    case 'drawer':
      mirror.order(data);
      return;
    case 'find': {
      const { id, study, wish, filter, most } = data;
      const found = matchesInDrawer(mirror.drawer, study, wish, filter, most);
      const answer: DrawerAnswer = { id, ...found, choices: filterChoices(mirror.drawer) };
      (self as unknown as Worker).postMessage(answer);
    }
  }
};
