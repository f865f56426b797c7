import { escapeMarkdown } from '../hover/markdown.js';
import { encodeBase64 } from './encode-base64.js';
import type { ChartSize } from './frame.js';

/** A Markdown image that carries the picture in its address. `alt` is all that a screen reader says of it. */
export function svgToMarkdownImage(svg: string, alt: string, size: ChartSize): string {
  return `![${escapeMarkdown(alt)}](data:image/svg+xml;base64,${encodeBase64(svg)}|width=${size.width},height=${size.height})`;
}
