import type { SheetFold } from '../src/common/sheet/sheet-protocol.js';

/** The fold of that name, made where there is none, at its place among the others. */
export function foldOf(
  folds: HTMLElement,
  id: string,
  index: number,
  isOpen: boolean,
  toggled: (isOpen: boolean) => void,
): HTMLDetailsElement {
  let fold = folds.querySelector<HTMLDetailsElement>(`:scope > [data-fold="${id}"]`);
  if (fold === null) {
    fold = document.createElement('details');
    fold.dataset.fold = id;
    fold.open = isOpen;
    fold.innerHTML = '<summary><h2></h2><span class="summary"></span></summary><div class="body"></div>';
    const made = fold;
    made.addEventListener('toggle', (event) => {
      if (event.target === made && made.isConnected && made.dataset.open !== String(made.open)) {
        made.dataset.open = String(made.open);
        toggled(made.open);
      }
    });
    made.dataset.open = String(isOpen);
  }
  if (folds.children[index] !== fold) folds.insertBefore(fold, folds.children[index] ?? null);
  return fold;
}

/** Title, summary, and the body where it is new; tables that were open stay open, and the keyboard stays where it was. */
export function fillFold(fold: HTMLDetailsElement, { title, summary, html }: SheetFold): void {
  setText(fold.querySelector('h2')!, title);
  setText(fold.querySelector('.summary')!, summary);
  if (html === undefined) return;
  const body = fold.querySelector<HTMLElement>('.body')!;
  const open = [...body.querySelectorAll('details')].map((each) => each.open);
  const all = () => [...body.querySelectorAll<HTMLElement>('button, summary')];
  const focused = all().indexOf(document.activeElement as HTMLElement);
  body.innerHTML = html;
  [...body.querySelectorAll('details')].forEach((each, index) => {
    each.open = open[index] ?? false;
  });
  if (focused >= 0) all()[focused]?.focus({ preventScroll: true });
}

function setText(element: Element, text: string): void {
  if (element.textContent !== text) element.textContent = text;
}
