import type { FromPage, Kept, Sheet, SheetFold, SheetPlace, ToPage } from '../src/common/sheet/sheet-protocol.js';
import { fillFold, foldOf } from './folds.js';
import { drawHead } from './head.js';
import { lightLine } from './light-line.js';

declare function acquireVsCodeApi(): {
  postMessage(message: FromPage): void;
  getState(): Kept | undefined;
  setState(kept: Kept): void;
};

const host = acquireVsCodeApi();
const folds = document.getElementById('folds')!;
const head = document.getElementById('head')!;
const told = document.getElementById('told')!;

/** Folds that begin shut: whoever looks for the first time sees the sound, and opens what else is wanted. */
const shutAtFirst: readonly string[] = [];
const kept: Kept = host.getState() ?? { shut: shutAtFirst, scroll: 0 };
const shut = new Set(kept.shut);
let shown: Sheet | undefined;
let cursor: { uri: string; line: number } | undefined;
let scrollWanted = kept.scroll;

const keep = (): void =>
  host.setState({ ...(cursor ?? {}), shut: [...shut], scroll: Math.round(document.scrollingElement?.scrollTop ?? 0) });
const width = (): number => Math.max(0, folds.clientWidth - 26);
const tellView = (kind: 'ready' | 'view'): void => host.postMessage({ kind, width: width(), shut: [...shut] });

function show(sheet: Sheet, file: string): void {
  const isOther = sheet.uri !== shown?.uri;
  shown = sheet;
  document.body.dataset.state = sheet.state;
  drawHead(head, sheet, file);
  if (sheet.state === 'pending' && folds.childElementCount > 0) showEarly(sheet.folds ?? []);
  else if (sheet.folds !== null) showFolds(sheet.folds);
  if (isOther || sheet.state !== 'pending') told.textContent = announcement(sheet);
  if (scrollWanted > 0 && sheet.folds !== null && sheet.folds.length > 0) {
    document.scrollingElement?.scrollTo(0, scrollWanted);
    scrollWanted = 0;
  }
}

/** Read aloud when it changes. */
function announcement({ state, booth, verdict }: Sheet): string {
  if (booth === null) return '';
  const age = state === 'stale' ? 'Numbers from before the text was broken. ' : '';
  return `${age}${booth}: ${verdict.replace(/^[✓✗?] /, '')}`;
}

function showFolds(wanted: readonly SheetFold[]): void {
  const ids = new Set(wanted.map(({ id }) => id));
  for (const each of [...folds.children]) if (!ids.has((each as HTMLElement).dataset.fold ?? '')) each.remove();
  wanted.forEach((fold, index) => {
    const element = foldOf(folds, fold.id, index, !shut.has(fold.id), (isOpen) => {
      if (isOpen) shut.delete(fold.id);
      else shut.add(fold.id);
      keep();
      tellView('view');
    });
    fillFold(element, fold);
  });
}

/** What has come before the rest; the others stay as they are. */
function showEarly(early: readonly SheetFold[]): void {
  for (const fold of early) {
    const element = folds.querySelector<HTMLDetailsElement>(`:scope > [data-fold="${fold.id}"]`);
    if (element !== null) fillFold(element, fold);
  }
}

function placeOf(mark: Element): SheetPlace | null {
  const id = mark.closest<HTMLElement>('[data-fold]')?.dataset.fold;
  const marks = shown?.folds?.find((fold) => fold.id === id)?.marks ?? marksOf.get(id ?? '');
  return marks?.[Number(mark.getAttribute('data-mark'))] ?? null;
}

/** Kept beside the sheet, as a sheet that waits for its numbers brings none. */
const marksOf = new Map<string, readonly (SheetPlace | null)[]>();

document.addEventListener('click', (event) => {
  if (!(event.target instanceof Element)) return;
  const place = event.target.closest<HTMLElement>('[data-place]')?.dataset.place;
  if (place !== undefined) return host.postMessage({ kind: 'go', place: JSON.parse(place) });
  const mark = event.target.closest('[data-mark]') ?? nearMark(event);
  const goal = mark && placeOf(mark);
  if (goal) return host.postMessage({ kind: 'go', place: goal });
  const copy = event.target.closest('button.copy');
  const table = copy?.parentElement?.querySelector('table');
  if (table) {
    const rows = [...table.rows].map((row) => [...row.cells].map((cell) => cell.textContent.trim()).join('\t'));
    host.postMessage({ kind: 'copy', text: `${rows.join('\n')}\n` });
    told.textContent = 'Table copied';
  }
});

window.addEventListener('message', ({ data }: MessageEvent<ToPage>) => {
  if (data.kind === 'nothing') {
    if (shown === undefined) head.textContent = data.why;
    return;
  }
  cursor = data.cursor;
  if (data.kind === 'sheet') {
    for (const { id, marks } of data.sheet.folds ?? []) marksOf.set(id, marks);
    show(data.sheet, data.file);
  }
  lightLine(folds, marksOf, cursor);
  keep();
});

/** A line is thin: what passes a few pixels beside the pointer is meant as well. */
function nearMark({ clientX, clientY, target }: MouseEvent): Element | null {
  if (!(target instanceof Element) || target.closest('.plot') === null) return null;
  for (const far of [3, 6]) {
    for (const [x, y] of [
      [0, -far],
      [0, far],
      [-far, 0],
      [far, 0],
    ] as const) {
      const found = document.elementFromPoint(clientX + x, clientY + y)?.closest('.plot [data-mark]');
      if (found) return found;
    }
  }
  return null;
}

let resting: ReturnType<typeof setTimeout> | undefined;
let told0 = width();
new ResizeObserver(() => {
  if (Math.abs(width() - told0) < 12) return;
  clearTimeout(resting);
  resting = setTimeout(() => {
    told0 = width();
    tellView('view');
  }, 120);
}).observe(folds);
let scrolling: ReturnType<typeof setTimeout> | undefined;
document.addEventListener('scroll', () => {
  clearTimeout(scrolling);
  scrolling = setTimeout(keep, 300);
});

tellView('ready');
