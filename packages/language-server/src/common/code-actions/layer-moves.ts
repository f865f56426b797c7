import type { AssemblyLayer, Sourced } from '@boothwright/language';
import type { View } from '../view.js';
import type { Candidate } from './candidate.js';
import { valuePlace, wordBefore } from './fix-edits.js';
import { indentAt, lineBreak, lineEnd, lineStart } from './lines.js';

/** Depths of a gap that are tried, mm: common practice in double walls. */
const triedGaps = [50, 100, 150];
/** A gap that grows by less than this is the same gap. */
const deeperBy = 1.2;
/** The fibre that an empty gap is filled with. */
const fibre = 'mineral-wool-40';

/** What can be tried on one assembly of this file: deeper gaps, fibre in empty ones, boards twice. */
export function layerMoves(
  view: View,
  name: string,
  within?: { readonly from: number; readonly to: number },
): Candidate[] {
  const assembly = view.checked.spec.assemblies.get(name);
  if (assembly === undefined || assembly.range.file !== view.file) return [];
  return assembly.layers
    .filter(
      ({ range }) => range.file === view.file && assembly.range.from <= range.from && range.to <= assembly.range.to,
    )
    .filter(
      ({ range }) => within === undefined || (range.from <= within.to && within.from <= lineEnd(view.text, range.to)),
    )
    .flatMap((layer) => movesOf(view, layer));
}

function movesOf(view: View, layer: AssemblyLayer): Candidate[] {
  if (layer.kind === 'air') {
    const { from, to } = layer.range;
    const was = view.text.slice(layer.thickness.range.from, layer.thickness.range.to);
    const fill =
      layer.fixings === undefined
        ? [{ title: `${fibre} in the gap of ${was}`, changes: [{ from, to, text: `${fibre} ${was}` }] }]
        : [];
    return [...deeper(view, layer.thickness), ...fill];
  }
  if (layer.kind === 'frame') return deeper(view, layer.depth);
  if (layer.material.kind !== 'panel' && layer.material.kind !== 'limp') return [];
  return twice(view, layer.range);
}

function deeper(view: View, depth: Sourced<number>): Candidate[] {
  if (depth.range.file !== view.file || depth.origin.kind !== 'given') return [];
  const place = valuePlace(view, depth.range);
  const was = view.text.slice(place.from, place.to);
  return triedGaps
    .filter((tried) => tried / 1000 > depth.value * deeperBy)
    .slice(0, 2)
    .map((tried) => ({
      title: `${wordBefore(view, place.from)}${was} → ${tried} mm`,
      changes: [{ ...place, text: `${tried} mm` }],
    }));
}

/** The same board once more, on a line of its own. */
function twice(view: View, { from, to }: { readonly from: number; readonly to: number }): Candidate[] {
  const { text } = view;
  const isAlone = text.slice(lineStart(text, from), from).trim() === '';
  if (!isAlone) return [];
  const line = text.slice(from, to);
  const at = lineEnd(text, to);
  return [
    {
      title: `${line.replace(/\s+/g, ' ')} twice`,
      changes: [{ from: at, to: at, text: `${lineBreak(text)}${indentAt(text, from)}${line}` }],
    },
  ];
}
