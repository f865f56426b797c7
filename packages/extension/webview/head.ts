import type { Sheet, SheetPlace } from '../src/common/sheet/sheet-protocol.js';

const ages: Readonly<Partial<Record<Sheet['state'], string>>> = {
  pending: 'New numbers are being worked out; but for build-ups, what stands here is from before the last change.',
  stale: 'The text is broken. These are the numbers from before it was.',
  partial: 'The text is broken. What could be read is assessed; whatever hangs on the rest is missing.',
};

/** The part that stays in sight: which booth, what it comes to, how old that is, and what is wrong with the text. */
export function drawHead(head: HTMLElement, sheet: Sheet, file: string): void {
  const focused = head.contains(document.activeElement) ? document.activeElement?.textContent : undefined;
  head.replaceChildren(title(sheet, file), ...verdict(sheet), ...facts(sheet), ...age(sheet), ...problems(sheet));
  if (focused === undefined) return;
  [...head.querySelectorAll('button')].find(({ textContent }) => textContent === focused)?.focus();
}

function title({ booth, title: called, variant }: Sheet, file: string): HTMLElement {
  const heading = element('h1', '', booth === null ? 'No booth to tell of' : (called ?? booth));
  heading.append(
    element(
      'span',
      'quiet',
      ` ${[booth !== null && called ? booth : '', variant && `variant ${variant}`, file].filter(Boolean).join(' · ')}`,
    ),
  );
  return heading;
}

function verdict({ verdict }: Sheet): HTMLElement[] {
  return verdict === '' ? [] : [element('p', 'verdict', verdict)];
}

function facts({ facts }: Sheet): HTMLElement[] {
  if (facts.length === 0) return [];
  const list = element('dl', 'facts');
  for (const { label, value, ends } of facts) {
    const one = element('div', '');
    one.append(element('dt', '', label), element('dd', '', value), element('dd', 'quiet', ends));
    list.append(one);
  }
  return [list];
}

function age({ state, booth, problems }: Sheet): HTMLElement[] {
  const words = ages[state];
  if (words !== undefined) return [element('p', 'age', words)];
  if (booth !== null) return [];
  if (problems.length > 0) return [element('p', 'age', 'Nothing can be assessed before these are mended:')];
  return [
    element(
      'p',
      'age',
      'The text describes no booth. A block such as `booth cabin { … }` is what this sheet is about.',
    ),
  ];
}

function problems({ problems, moreProblems }: Sheet): HTMLElement[] {
  if (problems.length === 0) return [];
  const list = element('ul', 'problems');
  for (const { message, place } of problems) {
    const item = element('li', '');
    item.append(place === null ? message : button(`line ${place.line + 1}: ${message}`, place));
    list.append(item);
  }
  if (moreProblems > 0) list.append(element('li', 'quiet', `and ${moreProblems} more`));
  return [list];
}

function button(words: string, place: SheetPlace): HTMLElement {
  const made = element('button', 'entry', words) as HTMLButtonElement;
  made.type = 'button';
  made.dataset.place = JSON.stringify(place);
  return made;
}

function element(name: string, className: string, text = ''): HTMLElement {
  const made = document.createElement(name);
  if (className !== '') made.className = className;
  if (text !== '') made.textContent = text;
  return made;
}
