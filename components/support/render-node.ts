import { nothing, type SVGTemplateResult, svg } from 'lit';
import { fontStacks } from '../../src/drawing/fonts.ts';
import type { GroupNode, MarkRef, Paint, SceneNode, TextNode } from '../../src/drawing/model.ts';
import { subscript, textRuns } from '../../src/drawing/text-runs.ts';

/** What a chart on screen adds to a mark: its classes, its place in the order, whether it takes the focus. */
export interface MarkState {
  readonly index: number;
  readonly className: string;
  readonly focusable: boolean;
}

/** Nodes as SVG templates. `stateOf` says how each mark stands; marks are drawn in the order they are asked for. */
export function renderNodes(
  nodes: readonly SceneNode[],
  stateOf: (mark: MarkRef) => MarkState,
): SVGTemplateResult[] {
  return nodes.map((node) => renderNode(node, stateOf));
}

function renderNode(node: SceneNode, stateOf: (mark: MarkRef) => MarkState): SVGTemplateResult {
  if (!node.mark) return svg`<g class=${node.className ?? nothing}>${shape(node, stateOf)}</g>`;
  const state = stateOf(node.mark);
  return svg`<g
    class="mark ${node.mark.kind} ${node.className ?? ''} ${state.className}"
    role="img"
    aria-label=${node.mark.label}
    tabindex=${state.focusable ? 0 : -1}
    data-mark=${state.index}
  >${shape(node, stateOf)}</g>`;
}

function shape(node: SceneNode, stateOf: (mark: MarkRef) => MarkState): SVGTemplateResult {
  switch (node.type) {
    case 'group':
      return svg`<g transform=${groupTransform(node)}>${renderNodes(node.children, stateOf)}</g>`;
    case 'path':
      return svg`<path d=${node.d} style=${paintStyle(node)} stroke-dasharray=${dash(node)}></path>`;
    case 'rect':
      return svg`<rect x=${node.x} y=${node.y} width=${node.width} height=${node.height} rx=${node.radius ?? 0}
        style=${paintStyle(node)} stroke-dasharray=${dash(node)}></rect>`;
    case 'circle':
      return svg`<circle cx=${node.cx} cy=${node.cy} r=${node.r} style=${paintStyle(node)}></circle>`;
    case 'line':
      return svg`<line x1=${node.x1} y1=${node.y1} x2=${node.x2} y2=${node.y2} style=${paintStyle(node)}
        stroke-dasharray=${dash(node)}></line>`;
    case 'text':
      return textShape(node);
    case 'image':
      return svg`<image x=${node.x} y=${node.y} width=${node.width} height=${node.height} href=${node.href}
        preserveAspectRatio="xMidYMid slice"></image>`;
  }
}

function textShape(node: TextNode): SVGTemplateResult {
  let lowered = false;
  const drop = node.size * subscript.drop;
  const runs = textRuns(node.text).map((run) => {
    const dy = run.sub === lowered ? 0 : run.sub ? drop : -drop;
    lowered = run.sub;
    return svg`<tspan dy=${dy} font-size=${run.sub ? node.size * subscript.size : nothing}>${run.text}</tspan>`;
  });
  return svg`<text x=${node.x} y=${node.y} font-family=${fontStacks[node.face]} font-size=${node.size}
    font-weight=${node.weight ?? nothing} font-style=${node.italic ? 'italic' : nothing}
    text-anchor=${node.anchor ?? nothing} style=${paintStyle(node)}>${runs}</text>`;
}

/** As style and not as attributes, so that custom properties of the theme can stand in a paint. */
function paintStyle(node: Paint): string {
  const parts: string[] = [];
  if (node.fill !== undefined) parts.push(`fill:${themed(node.fill)}`);
  if (node.stroke !== undefined) parts.push(`stroke:${themed(node.stroke)}`);
  if (node.strokeWidth !== undefined) parts.push(`stroke-width:${node.strokeWidth}`);
  if (node.lineCap !== undefined) parts.push(`stroke-linecap:${node.lineCap}`);
  if (node.opacity !== undefined) parts.push(`opacity:${node.opacity}`);
  return parts.join(';');
}

function themed(colour: string): string {
  if (colour === 'ink') return 'var(--qw-ink)';
  return colour === 'paper' ? 'var(--qw-leaf)' : colour;
}

function dash(node: Paint): string | typeof nothing {
  return node.dash?.length ? node.dash.join(' ') : nothing;
}

function groupTransform(node: GroupNode): string | typeof nothing {
  const parts: string[] = [];
  if (node.x !== undefined || node.y !== undefined) parts.push(`translate(${node.x ?? 0} ${node.y ?? 0})`);
  if (node.scale !== undefined) parts.push(`scale(${node.scale})`);
  if (node.rotate !== undefined) parts.push(`rotate(${node.rotate})`);
  return parts.length > 0 ? parts.join(' ') : nothing;
}
