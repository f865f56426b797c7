import type { View } from '../view.js';

/** Says that figures are those of an earlier text, when they are. */
export function ifStale(view: View, figures: string): string {
  return view.stale ? `_Figures from before the text was broken._\n\n${figures}` : figures;
}
