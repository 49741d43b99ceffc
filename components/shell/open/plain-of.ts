import type { Ink, Plain } from '../../../src/sheet/model.ts';
import { inkFromHex } from '../../../src/sheet/plain.ts';
import { parseColourText } from '../../../src/sheet/typed-colour.ts';
import type { PlainDetail } from '../../picture/qw-plain-form.ts';

/** The plain that a form gave. A typed colour is kept as it was meant, though a screen may not show it. */
export function plainFrom(id: string, detail: PlainDetail): Plain {
  const { name, kind, from, hex, special, takesColour } = detail;
  const typed = 'text' in from ? parseColourText(from.text) : undefined;
  const ink: Ink = {
    ...inkFromHex(typed?.hex ?? hex),
    ...(typed ? { oklch: typed.oklch } : {}),
    ...(special ? { special } : {}),
    byHand: true,
  };
  return { id, name, kind, ink, ...(takesColour ? { takesColour } : {}) };
}
