import { type Statement, type SymbolEntry, type Token, units } from '@boothwright/language';
import { escapeMarkdown } from '@boothwright/presentation';
import { parametersOf } from '../signature/parameters.js';
import { valueHelp } from '../signature/value-help.js';
import type { View } from '../view.js';
import { keywordSection } from './keyword-section.js';
import { symbolSection } from './symbol-section.js';

/**
 * On a word of a line of which nothing is computed: what a title names, what a unit is, what else could be chosen; and
 * what the line means.
 */
export function headerSection(view: View, statement: Statement, token: Token): readonly (string | undefined)[] {
  const { fact, slots } = statement;
  if (fact === undefined) return [];
  const named = slots.get('title');
  if (named !== undefined && named.from === token.from) {
    const symbol = declared(view, statement);
    return [symbol && symbolSection(view, symbol, token.from), keywordSection(statement)];
  }
  const parameter = parametersOf(fact).find(({ slots: own }) =>
    own.some((name) => {
      const slot = slots.get(name);
      return slot !== undefined && slot.kind !== 'flag' && slot.from <= token.from && token.to <= slot.to;
    }),
  );
  return [
    unitText(token),
    parameter && valueHelp(parameter.part),
    fact.keyword === '' ? escapeMarkdown(fact.documentation) : keywordSection(statement),
  ];
}

function unitText({ kind, text }: Token): string | undefined {
  if (kind !== 'word') return undefined;
  const unit = units.find((entry) => entry.unit === text);
  return unit && `**${escapeMarkdown(unit.unit)}** ${escapeMarkdown(unit.documentation)}`;
}

function declared({ checked, file }: View, { keyword, headerTo }: Statement): SymbolEntry | undefined {
  return checked.symbols.symbols.find(
    ({ nameRange }) => nameRange.file === file && nameRange.from >= keyword.to && nameRange.to <= headerTo,
  );
}
