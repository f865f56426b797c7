import { entryWord, labelOf } from './labels.js';
import { layerText } from './layer-words.js';
import { isDeclared, isObject, isSourced, tellingProperties } from './leaf.js';
import { shownPlain, shownValue } from './shown-value.js';

/** More facts of one thing are counted and not told. */
const mostFacts = 6;

/** What a thing that is there on one side only is: its declared facts in a row. */
export function summaryOf(thing: object): string {
  const facts = [...factsOf(thing, '', '')];
  const more = facts.length - mostFacts;
  return [...facts.slice(0, mostFacts), ...(more > 0 ? [`and ${more} more`] : [])].join(', ') || 'there';
}

function* factsOf(thing: object, words: string, parent: string): Iterable<string> {
  for (const [property, value] of tellingProperties(thing)) {
    const label = labelOf(parent, property);
    const what = [words, label.words].filter(Boolean).join(' ');
    if (isSourced(value)) {
      if (isDeclared(value)) yield `${what} ${shownValue(value, label.unit)}`.trim();
    } else if (property === 'layers' && Array.isArray(value)) yield value.map(layerText).join('; ');
    else if (Array.isArray(value)) {
      if (value.length > 0 && value.every((entry) => !isObject(entry))) yield `${what} ${value.join(', ')}`;
      else if (value.length > 0) yield `${value.length} ${entryWord(property)}${value.length > 1 ? 's' : ''}`;
    } else if (isObject(value)) {
      if ('name' in value) yield `${what} ${String(value.name)}`;
      else yield* factsOf(value, what, property);
    } else yield `${what} ${shownPlain(value, label.unit)}`;
  }
}
