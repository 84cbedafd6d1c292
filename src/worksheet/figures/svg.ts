import { textHtml } from '../markup.ts';

/**
 * The drawing kit of the figures: ink in the colour of the text around it, hatching, words. No style sheet and no ids,
 * so that a figure stands alone, prints in black and turns with a dark page.
 */
export interface Drawing {
  readonly width: number;
  readonly height: number;
  readonly title: string;
  /** The same figures in sentences, for those who do not see the drawing. */
  readonly description: string;
  readonly parts: readonly string[];
}

export function svg({ width, height, title, description, parts }: Drawing): string {
  const box = `viewBox="0 0 ${width} ${n(height)}" width="${width}" height="${n(height)}"`;
  const ink = 'fill="none" stroke="none" font-size="12" font-family="system-ui, sans-serif"';
  return `<svg xmlns="http://www.w3.org/2000/svg" ${box} role="img" ${ink}><title>${textHtml(title)}</title><desc>${textHtml(description)}</desc>${parts.join('')}</svg>`;
}

/** A coordinate: a tenth of a unit is finer than any printer here. */
function n(value: number): string {
  return String(Math.round(value * 10) / 10);
}

export interface Stroke {
  readonly width?: number;
  readonly dashes?: string;
  /** Lighter than ink: the one neutral accent. */
  readonly accent?: boolean;
}

function strokeOf({ width = 1, dashes, accent = false }: Stroke): string {
  const dashed = dashes === undefined ? '' : ` stroke-dasharray="${dashes}"`;
  return `stroke="currentColor" stroke-width="${width}"${accent ? ' stroke-opacity="0.55"' : ''}${dashed}`;
}

/** A line through points. */
export function line(points: readonly (readonly [x: number, y: number])[], stroke: Stroke = {}): string {
  const path = points.map(([x, y], i) => `${i === 0 ? 'M' : 'L'}${n(x)} ${n(y)}`).join('');
  return `<path d="${path}" ${strokeOf(stroke)}/>`;
}

export interface Box {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

/** An outlined box; the tint is the accent, faint enough for text to be read on it. */
export function box({ x, y, width, height }: Box, options: { tinted?: boolean; stroke?: Stroke } = {}): string {
  const tint = options.tinted === true ? 'fill="currentColor" fill-opacity="0.1" ' : '';
  const size = `x="${n(x)}" y="${n(y)}" width="${n(width)}" height="${n(height)}"`;
  return `<rect ${size} ${tint}${strokeOf(options.stroke ?? {})}/>`;
}

/** Diagonal lines that fill a box exactly; they survive black-and-white printing. */
export function hatching({ x, y, width, height }: Box, gap = 5): string {
  if (width <= 0 || height <= 0) return '';
  const strokes: string[] = [];
  for (let c = gap; c < width + height; c += gap) {
    // The line x + y = c inside the box, from its lower left to its upper right.
    const from = [Math.max(0, c - height), Math.min(height, c)] as const;
    const to = [Math.min(width, c), Math.max(0, c - width)] as const;
    strokes.push(`M${n(x + from[0])} ${n(y + from[1])}L${n(x + to[0])} ${n(y + to[1])}`);
  }
  return `<path d="${strokes.join('')}" stroke="currentColor" stroke-width="0.8"/>`;
}

/** A filled wedge with its tip at a point. */
export function wedge([x, y]: readonly [number, number], towards: 'up' | 'down' | 'left', size = 5): string {
  const base = {
    up: `L${n(x - size)} ${n(y + size * 1.6)}H${n(x + size)}Z`,
    down: `L${n(x - size)} ${n(y - size * 1.6)}H${n(x + size)}Z`,
    left: `L${n(x + size * 1.6)} ${n(y - size)}V${n(y + size)}Z`,
  }[towards];
  return `<path d="M${n(x)} ${n(y)}${base}" fill="currentColor"/>`;
}

export interface TextStyle {
  readonly anchor?: 'start' | 'middle' | 'end';
  readonly size?: number;
  readonly bold?: boolean;
}

/** One line of words on its baseline. */
export function words(x: number, y: number, text: string, style: TextStyle = {}): string {
  const { anchor = 'start', size, bold = false } = style;
  const attributes = [
    `x="${n(x)}" y="${n(y)}" fill="currentColor"`,
    ...(anchor === 'start' ? [] : [`text-anchor="${anchor}"`]),
    ...(size === undefined ? [] : [`font-size="${size}"`]),
    ...(bold ? ['font-weight="700"'] : []),
  ];
  return `<text ${attributes.join(' ')}>${textHtml(text)}</text>`;
}
