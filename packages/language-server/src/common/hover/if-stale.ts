import type { View } from '../view.js';

/** Says that figures are those of an earlier text, when they are. */
export function ifStale(view: View, figures: string, isPending = view.basePending): string {
  if (view.stale) return `_Figures from before the text was broken._\n\n${figures}`;
  if (isPending) return `_Figures from before the last change; the new ones are being worked out._\n\n${figures}`;
  return figures;
}
