/**
 * A number for a sentence, with a fixed count of decimals and no negative zero.
 * Sentences never depend on a locale, so the decimal mark is always a point.
 */
export function decimals(value: number, places: number): string {
  const text = value.toFixed(places);
  return Number(text) === 0 ? (0).toFixed(places) : text;
}
