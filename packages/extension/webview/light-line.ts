import type { Cursor, SheetPlace } from '../src/common/sheet/sheet-protocol.js';

/** Lights the marks that belong to the line of the cursor; of several places around it the innermost. */
export function lightLine(
  folds: HTMLElement,
  marksOf: ReadonlyMap<string, readonly (SheetPlace | null)[]>,
  cursor: Cursor,
): void {
  for (const fold of folds.children) {
    const marks = marksOf.get((fold as HTMLElement).dataset.fold ?? '') ?? [];
    const holding = marks.filter(
      (place) =>
        place !== null && place.uri === cursor.uri && place.line <= cursor.line && cursor.line <= place.endLine,
    );
    const tightest = Math.min(...holding.map((place) => (place === null ? 0 : place.endLine - place.line)));
    let isAny = false;
    for (const mark of fold.querySelectorAll('[data-mark]')) {
      const place = marks[Number(mark.getAttribute('data-mark'))];
      const isLit = place != null && holding.includes(place) && place.endLine - place.line === tightest;
      mark.classList.toggle('lit', isLit);
      if (mark instanceof HTMLButtonElement) {
        if (isLit) mark.setAttribute('aria-current', 'location');
        else mark.removeAttribute('aria-current');
      }
      isAny ||= isLit;
    }
    fold.classList.toggle('here', isAny);
  }
}
