import { type ChartSize, margins } from './frame.js';
import { svgElement, svgText } from './svg-element.js';

export interface LegendEntry {
  readonly label: string;
  readonly colour: string;
  readonly dash?: string | undefined;
}

const stroke = 23;

/** The same for a picture of some size; nothing where the names stand beside the picture. */
export function legendIn(size: ChartSize, entries: readonly LegendEntry[], axisName = ''): string {
  return size.names === false ? '' : legend(entries, size.width, axisName);
}

/** Width of a text of the charts, px, rather too wide; capitals, figures and broad letters take more. */
function textWidth(text: string): number {
  let width = 0;
  for (const letter of text) width += /[A-Z0-9mw]/.test(letter) ? 7.6 : 5.6;
  return width;
}

/** Names of the lines along the top edge, each beside a stroke drawn like its line; long ones are cut short of the axis' name. */
export function legend(entries: readonly LegendEntry[], right: number, axisName = ''): string {
  const left = Math.max(margins.left + 24, textWidth(axisName) + 8);
  const longest = longestThatFits(
    entries.map(({ label }) => label),
    right - left,
  );
  const shown = entries.map((entry) => ({ ...entry, label: shortened(entry.label, longest) }));
  const widths = shown.map(({ label }) => stroke + textWidth(label));
  let at = Math.max(left, right - widths.reduce((sum, width) => sum + width, 0));
  const parts = shown.map((entry, index) => {
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

/** Letters that the longest name may have so that all stand beside each other; short names are left alone. */
function longestThatFits(labels: readonly string[], room: number): number {
  for (let longest = Math.max(...labels.map((label) => label.length), 0); longest > 4; longest -= 1) {
    const needed = labels.reduce((sum, label) => sum + stroke + textWidth(shortened(label, longest)), 0);
    if (needed <= room) return longest;
  }
  return 4;
}

function shortened(label: string, longest: number): string {
  return label.length <= longest ? label : `${label.slice(0, longest - 1).trimEnd()}…`;
}
