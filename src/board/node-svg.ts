import { fontStacks } from '../drawing/fonts.ts';
import type { Paint, SceneNode, TextNode } from '../drawing/model.ts';
import { subscript, textRuns } from '../drawing/text-runs.ts';
import { n } from '../drawing/torn.ts';

/** One node and what is in it, as SVG. A mark's words become its title, which a viewer shows on pointing. */
export function nodeSvg(node: SceneNode): string {
  const title = node.mark ? `<title>${escapeXml(node.mark.label)}</title>` : '';
  switch (node.type) {
    case 'group':
      return `<g${groupTransform(node)}>${title}${node.children.map(nodeSvg).join('')}</g>`;
    case 'path':
      return element('path', { d: node.d, ...paint(node) }, title);
    case 'rect': {
      const { x, y, width, height, radius } = node;
      return element(
        'rect',
        { x: n(x), y: n(y), width: n(width), height: n(height), rx: radius, ...paint(node) },
        title,
      );
    }
    case 'circle':
      return element('circle', { cx: n(node.cx), cy: n(node.cy), r: n(node.r), ...paint(node) }, title);
    case 'line': {
      const { x1, y1, x2, y2 } = node;
      return element('line', { x1: n(x1), y1: n(y1), x2: n(x2), y2: n(y2), ...paint(node) }, title);
    }
    case 'text':
      return textSvg(node, title);
    case 'image': {
      const { x, y, width, height, href } = node;
      const box = { x: n(x), y: n(y), width: n(width), height: n(height) };
      return element('image', { ...box, href: safeHref(href), preserveAspectRatio: 'xMidYMid slice' }, title);
    }
  }
}

/** Text made safe inside XML, also in attributes; control characters that XML forbids are taken out. */
export function escapeXml(text: string): string {
  return withoutForbidden(text)
    .replaceAll('&', '&amp;')
    .replaceAll('<', '&lt;')
    .replaceAll('>', '&gt;')
    .replaceAll('"', '&quot;')
    .replaceAll("'", '&#39;');
}

function withoutForbidden(text: string): string {
  let kept = '';
  // By code points, so that half of a surrogate pair, which XML forbids, shows as what it is.
  for (const character of text) {
    const code = character.codePointAt(0) ?? 0;
    const allowed =
      code === 0x9 ||
      code === 0xa ||
      code === 0xd ||
      (code >= 0x20 && code < 0x7f) ||
      (code > 0x9f && code < 0xd800) ||
      (code > 0xdfff && code < 0xfffe) ||
      code > 0xffff;
    if (allowed) kept += character;
  }
  return kept;
}

/** Only pictures that are inside the file: anything else would send a request when the board is opened. */
function safeHref(href: string): string {
  return /^data:image\/(png|jpeg|webp|avif|gif)[;,]/i.test(href) ? href : '';
}

type Attributes = Record<string, string | number | undefined>;

function element(name: string, attributes: Attributes, inside: string): string {
  const written = Object.entries(attributes)
    .filter(([, value]) => value !== undefined)
    .map(([key, value]) => ` ${key}="${escapeXml(String(value))}"`)
    .join('');
  return inside === '' ? `<${name}${written}/>` : `<${name}${written}>${inside}</${name}>`;
}

function textSvg(node: TextNode, title: string): string {
  const runs = textRuns(node.text);
  const drop = n(node.size * subscript.drop);
  let isSubscript = false;
  const inside = runs
    .map((run) => {
      const dy = run.sub === isSubscript ? '' : ` dy="${run.sub ? drop : -drop}"`;
      isSubscript = run.sub;
      if (!run.sub && dy === '') return escapeXml(run.text);
      const size = run.sub ? ` font-size="${n(node.size * subscript.size)}"` : '';
      return `<tspan${dy}${size}>${escapeXml(run.text)}</tspan>`;
    })
    .join('');
  const attributes: Attributes = {
    x: n(node.x),
    y: n(node.y),
    'font-family': fontStacks[node.face],
    'font-size': n(node.size),
    'font-weight': node.weight,
    'font-style': node.italic ? 'italic' : undefined,
    'text-anchor': node.anchor === 'start' ? undefined : node.anchor,
    'xml:space': /^\s|\s$|\s\s/.test(node.text) ? 'preserve' : undefined,
    ...paint(node),
  };
  return element('text', attributes, `${title}${inside}`);
}

function paint(node: Paint): Attributes {
  return {
    fill: node.fill === undefined ? undefined : colour(node.fill),
    stroke: node.stroke === undefined ? undefined : colour(node.stroke),
    'stroke-width': node.strokeWidth,
    'stroke-dasharray': node.dash?.length ? node.dash.join(' ') : undefined,
    'stroke-linecap': node.lineCap,
    opacity: node.opacity,
  };
}

/** A picture has one theme: dark on light. */
function colour(value: string): string {
  return value === 'ink' ? '#1c1c1c' : value === 'paper' ? '#f4f4f4' : value;
}

function groupTransform(node: { x?: number; y?: number; scale?: number; rotate?: number }): string {
  const parts: string[] = [];
  if (node.x !== undefined || node.y !== undefined)
    parts.push(`translate(${n(node.x ?? 0)} ${n(node.y ?? 0)})`);
  if (node.scale !== undefined && node.scale !== 1)
    parts.push(`scale(${Math.round(node.scale * 10000) / 10000})`);
  if (node.rotate) parts.push(`rotate(${n(node.rotate)})`);
  return parts.length > 0 ? ` transform="${parts.join(' ')}"` : '';
}
