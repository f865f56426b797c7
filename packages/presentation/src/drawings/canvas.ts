import type { SourceRange } from '@boothwright/language';
import { escapeXml, round, svgElement } from '../charts/svg-element.js';
import { printable } from '../text/printable.js';
import { ascent, type Box, descent, fontSize, lineHeight, textWidth, union } from './text-box.js';

export const pxPerMm = 96 / 25.4;

/** Colours by what they are for; see `DrawingOptions.theme`. */
export interface Inks {
  readonly ink: string;
  readonly paper: string;
  readonly accent: string;
}

export function inksOf(theme: 'page' | 'sheet' = 'page'): Inks {
  if (theme === 'sheet') return { ink: '#1a1a1a', paper: '#ffffff', accent: '#1f6fae' };
  return {
    ink: 'var(--boothwright-ink, currentColor)',
    paper: 'var(--boothwright-paper, Canvas)',
    accent: 'var(--boothwright-accent, #2f86c9)',
  };
}

export interface TextOptions {
  /** Which part of the text stands at x; `turned` text runs upwards and is always in the middle. */
  readonly anchor?: 'start' | 'middle' | 'end';
  readonly bold?: boolean;
  readonly turned?: boolean;
}

/** A drawing in the making: lines and areas in the order in which they are drawn, all text above them. */
export interface Canvas {
  readonly inks: Inks;
  /** px for a length of the booth, m */
  readonly px: (metres: number) => number;
  readonly labels: Box[];
  /** Lines of the text that parts of the drawing come from, by the number of their mark. */
  readonly marks: SourceRange[];
  /** What `draw` draws is one mark that leads to its line. */
  mark(range: SourceRange, draw: () => void): void;
  shape(svg: string, box: Box): void;
  line(points: readonly (readonly [number, number])[], attributes?: Readonly<Record<string, string | number>>): void;
  rectangle(box: Box, attributes?: Readonly<Record<string, string | number>>): void;
  /** Text with its middle at height `y`. */
  text(text: string, x: number, y: number, options?: TextOptions): Box;
  /** Of everything so far. */
  bounds(): Box;
  content(): string;
}

export function createCanvas(scale: number, inks: Inks): Canvas {
  const shapes: string[] = [];
  const texts: string[] = [];
  const boxes: Box[] = [];
  const labels: Box[] = [];
  const marks: SourceRange[] = [];
  const canvas: Canvas = {
    inks,
    labels,
    marks,
    mark({ file, from, to }, draw) {
      const known = marks.findIndex((one) => one.file === file && one.from === from && one.to === to);
      const number = known < 0 ? marks.push({ file, from, to }) - 1 : known;
      const open = `<g data-mark="${number}">`;
      const [shapesBefore, textsBefore] = [shapes.length, texts.length];
      draw();
      for (const [all, before] of [[shapes, shapesBefore] as const, [texts, textsBefore] as const]) {
        if (all.length === before) continue;
        all.splice(before, 0, open);
        all.push('</g>');
      }
    },
    px: (metres) => (metres * 1000 * pxPerMm) / scale,
    shape(svg, box) {
      shapes.push(svg);
      boxes.push(box);
    },
    line(points, attributes = {}) {
      const d = points.map(([x, y], index) => `${index === 0 ? 'M' : 'L'}${round(x)} ${round(y)}`).join('');
      const all = { d, fill: 'none', stroke: inks.ink, ...attributes };
      canvas.shape(svgElement('path', all), union(points.map(([x, y]) => ({ left: x, right: x, top: y, bottom: y }))));
    },
    rectangle(box, attributes = {}) {
      const { left, top, right, bottom } = box;
      const size = { x: left, y: top, width: right - left, height: bottom - top };
      canvas.shape(svgElement('rect', { ...size, fill: 'none', stroke: inks.ink, ...attributes }), box);
    },
    text(raw, x, y, { anchor = 'start', bold = false, turned = false } = {}) {
      const text = printable(raw);
      const width = textWidth(text, bold);
      const half = lineHeight / 2 - 0.5;
      const left = turned ? x - half : x - (anchor === 'start' ? 0 : anchor === 'middle' ? width / 2 : width);
      const box = turned
        ? { left, right: x + half, top: y - width / 2, bottom: y + width / 2 }
        : { left, right: left + width, top: y - half, bottom: y + half };
      const base = (ascent - descent) / 2;
      texts.push(
        svgElement(
          'text',
          {
            x: turned ? x + base : x,
            y: turned ? y : y + base,
            'text-anchor': turned ? 'middle' : anchor === 'start' ? undefined : anchor,
            'font-weight': bold ? 'bold' : undefined,
            transform: turned ? `rotate(-90 ${round(x + base)} ${round(y)})` : undefined,
          },
          escapeXml(text),
        ),
      );
      boxes.push(box);
      labels.push(box);
      return box;
    },
    bounds: () => (boxes.length === 0 ? { left: 0, top: 0, right: 0, bottom: 0 } : union(boxes)),
    content: () =>
      svgElement('g', { 'stroke-width': 1, 'stroke-linejoin': 'round' }, shapes.join('')) +
      svgElement('g', { fill: inks.ink, 'font-family': 'sans-serif', 'font-size': fontSize }, texts.join('')),
  };
  return canvas;
}
