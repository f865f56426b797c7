import { margins } from './frame.js';
import { svgElement, svgText } from './svg-element.js';

export interface LegendEntry {
  readonly label: string;
  readonly colour: string;
  readonly dash?: string | undefined;
}

/** Names of the lines along the top edge, each beside a stroke drawn like its line. */
export function legend(entries: readonly LegendEntry[], right: number): string {
  const widths = entries.map((entry) => 24 + entry.label.length * 6);
  let at = Math.max(margins.left + 24, right - widths.reduce((sum, width) => sum + width, 0));
  const parts = entries.map((entry, index) => {
    const start = at;
    at += widths[index] ?? 0;
    return (
      svgElement('path', {
        d: `M${start} 7h14`,
        stroke: entry.colour,
        'stroke-width': 2,
        'stroke-dasharray': entry.dash,
      }) + svgText(entry.label, { x: start + 17, y: 11, fill: entry.colour })
    );
  });
  return svgElement('g', { fill: 'none', 'font-family': 'sans-serif', 'font-size': 11 }, parts.join(''));
}
