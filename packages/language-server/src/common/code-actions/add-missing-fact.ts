import {
  type BlockName,
  defaults,
  type Fact,
  type Part,
  type Problem,
  type Statement,
  shapeText,
  vocabulary,
} from '@boothwright/language';
import { statementsAt } from '../statements-at.js';
import type { View } from '../view.js';
import type { Candidate } from './candidate.js';
import { intoBlock } from './lines.js';

/** More names than this are a list to search in, not to choose from. */
const mostOptions = 8;

/**
 * The facts that a block lacks. Names and words to choose from are offered one by one, a named default is written out,
 * and any other value is left open: an invented one must not end up in a spec.
 */
export function addMissingFact(view: View, { lacks = [], range }: Problem): Candidate[] {
  const statement = statementsAt(view.parsed, range.from).find(({ from }) => from === range.from);
  const block = statement?.block;
  if (statement === undefined || block === undefined) return [];
  return lacks.flatMap((keyword) => {
    const fact = factOf(block.name, keyword);
    return fact === undefined ? [] : linesFor(view, fact).flatMap((line) => added(view, statement, line));
  });
}

interface Line {
  readonly text: string;
  readonly asks?: true;
  readonly oneOfSeveral?: true;
}

function linesFor(view: View, fact: Fact): readonly Line[] {
  const given = defaults.find(({ name }) => name === fact.default);
  if (given !== undefined) return [{ text: `${fact.keyword} ${given.text}` }];
  const options = optionsOf(view, fact);
  if (options.length > 0 && options.length <= mostOptions) {
    const several = options.length > 1 ? ({ oneOfSeveral: true } as const) : {};
    return options.map((option) => ({ text: `${fact.keyword} ${option}`, ...several }));
  }
  const shape = shapeText(fact)
    .slice(fact.keyword.length)
    .replace(/\[from \[KIND\] "TEXT"\]/, '')
    .trim();
  return [{ text: `${fact.keyword}  # ${shape}`, asks: true }];
}

/** What can stand behind the keyword when that is one word of a known list. */
function optionsOf(view: View, { parts, block }: Fact): readonly string[] {
  const needed = parts.filter(({ kind }) => kind !== 'optional' && kind !== 'title');
  const only: Part | undefined = needed[0];
  if (only === undefined || needed.length > 1 || block?.required) return [];
  if (only.kind === 'choice') return only.options;
  if (only.kind !== 'reference' || !only.to.includes('assembly')) return [];
  return view.checked.symbols.symbols
    .filter(({ kind, container }) => kind === 'assembly' && container === undefined)
    .map(({ name }) => name);
}

function added(view: View, statement: Statement, { text, asks, ...more }: Line): Candidate[] {
  const change = intoBlock(view.text, statement, text);
  if (change === undefined) return [];
  const title = asks ? `Add \`${text.split('  # ')[0]}\`, its value to be filled in` : `Add \`${text}\``;
  return [{ title, changes: [change], ...(asks ? { asks } : {}), ...more }];
}

function factOf(block: BlockName, keyword: string): Fact | undefined {
  return vocabulary.find(({ name }) => name === block)?.facts.find((fact) => fact.keyword === keyword);
}
