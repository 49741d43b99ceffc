import type { Drawing } from '../drawing/model.ts';
import type { Board, Scene } from './model.ts';
import { escapeXml, nodeSvg } from './node-svg.ts';

export interface SvgOptions {
  /** `@font-face` rules to embed, so that the picture is set the same everywhere. Default: none. */
  readonly fontCss?: string;
}

/** A board as one stand-alone SVG document. */
export function boardSvg(board: Board, options: SvgOptions = {}): string {
  return sceneSvg(board.scene, options);
}

/** A scene as one stand-alone SVG document: valid XML, with a title and a description, naming no outside address. */
export function sceneSvg(scene: Scene, options: SvgOptions = {}): string {
  const { width, height } = scene;
  const fonts = options.fontCss ? `<style>${escapeXml(options.fontCss)}</style>` : '';
  return (
    `<svg xmlns="http://www.w3.org/2000/svg" width="${width}" height="${height}" viewBox="0 0 ${width} ${height}" ` +
    // Letters at their own widths, not moved to whole pixels: chips stand where the words before them end.
    `role="img" aria-labelledby="title desc" text-rendering="geometricPrecision">` +
    `<title id="title">${escapeXml(scene.title)}</title><desc id="desc">${escapeXml(scene.description)}</desc>${fonts}` +
    `<rect width="${width}" height="${height}" fill="${escapeXml(scene.background)}"/>` +
    `${scene.nodes.map(nodeSvg).join('')}</svg>`
  );
}

/** A chart as a scene of its own, on a ground: for a file with one chart in it. */
export function sceneOfDrawing(drawing: Drawing, background: string): Scene {
  const { width, height, title, description, nodes } = drawing;
  return { width, height, title, description, nodes, background };
}
