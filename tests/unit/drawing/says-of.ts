import type { Drawing } from '../../../src/drawing/model.ts';
import { flat } from './nodes.ts';

/** All text that a drawing shows, in order. */
export function says(drawing: Drawing): string[] {
  return flat(drawing.nodes).flatMap(({ node }) => (node.type === 'text' ? [node.text] : []));
}
