import { symbolAt, valueAt } from '@boothwright/language';
import { type Hover, MarkupKind, type Position, type Range } from 'vscode-languageserver';
import { factSection } from './hover/fact-section.js';
import { fitPictures } from './hover/fit-pictures.js';
import { headerSection } from './hover/header-section.js';
import { keywordSection } from './hover/keyword-section.js';
import { layerSection } from './hover/layer-section.js';
import { requirementSection } from './hover/requirement-section.js';
import { spaceColumns } from './hover/space-columns.js';
import { symbolSection } from './hover/symbol-section.js';
import { defaultsSection, valueSection } from './hover/value-section.js';
import { withoutPictures } from './hover/without-pictures.js';
import { statementOnLine } from './statement-on-line.js';
import { statementsAt } from './statements-at.js';
import type { View } from './view.js';

export interface HoverOptions {
  /** False for an editor that shows Markdown as text: a picture is then told in words. */
  readonly pictures: boolean;
}

/** What is known about the thing under the pointer: results first, then values and their origin, then the word itself. */
export function hover(view: View, position: Position, options: HoverOptions): Hover | undefined {
  const offset = view.lines.offsetAt(position);
  const answer =
    onName(view, offset) ??
    onWord(view, offset) ??
    onRequirement(view, offset) ??
    onValue(view, offset) ??
    onVariant(view, offset) ??
    onHeader(view, offset);
  if (answer === undefined) return undefined;
  const sections = answer.sections.filter((section) => section !== undefined && section !== '');
  if (sections.length === 0) return undefined;
  const text = sections.join('\n\n---\n\n');
  return {
    contents: {
      kind: MarkupKind.Markdown,
      value: options.pictures ? spaceColumns(fitPictures(text)) : withoutPictures(text),
    },
    range: answer.range,
  };
}

interface Answer {
  readonly sections: readonly (string | undefined)[];
  readonly range: Range;
}

function onName(view: View, offset: number): Answer | undefined {
  const hit = symbolAt(view.checked.symbols, view.file, offset);
  if (hit === undefined) return undefined;
  const sections = [symbolSection(view, hit.symbol, offset)];
  // On a layer's name the reader asks about the layer too: what it weighs here and how it is modelled.
  if (hit.symbol.kind === 'material') sections.push(layerSection(view, offset));
  if (hit.role === 'declaration') sections.push(defaultsSection(view, offset));
  return { sections, range: view.lines.rangeOf(hit.range) };
}

/** On the first word of a line: what it means, and what the line or block came to. */
function onWord(view: View, offset: number): Answer | undefined {
  const statements = statementsAt(view.parsed, offset);
  const statement = statements.at(-1);
  if (statement === undefined || offset < statement.keyword.from || offset > statement.keyword.to) return undefined;
  const declared = view.checked.symbols.symbols.find(
    ({ nameRange }) =>
      statement.fact?.declares !== undefined &&
      nameRange.file === view.file &&
      nameRange.from >= statement.keyword.to &&
      nameRange.to <= statement.headerTo,
  );
  const requirement = requirementAt(view, offset);
  return {
    sections: [
      requirement && requirementSection(view, requirement),
      declared && symbolSection(view, declared, offset),
      factSection(view, statements),
      layerSection(view, offset),
      defaultsSection(view, offset),
      keywordSection(statement),
    ],
    range: view.lines.rangeOf(statement.keyword),
  };
}

function onRequirement(view: View, offset: number): Answer | undefined {
  const requirement = requirementAt(view, offset);
  if (requirement === undefined) return undefined;
  return { sections: [requirementSection(view, requirement)], range: view.lines.rangeOf(requirement.range) };
}

function requirementAt(view: View, offset: number) {
  return view.results?.requirements.find(
    ({ range }) => range.file === view.file && range.from <= offset && offset <= range.to,
  );
}

/** Anywhere else on a line of a variant: what the variant comes to. */
function onVariant(view: View, offset: number): Answer | undefined {
  const statements = statementsAt(view.parsed, offset);
  const [block, line] = statements;
  if (block?.keyword.word !== 'variant' || line === undefined || offset > line.headerTo) return undefined;
  const variant = view.checked.symbols.symbols.find(
    ({ kind, nameRange }) =>
      kind === 'variant' &&
      nameRange.file === view.file &&
      nameRange.from >= block.keyword.to &&
      nameRange.to <= block.headerTo,
  );
  if (variant === undefined) return undefined;
  return { sections: [symbolSection(view, variant, offset)], range: view.lines.rangeOf(line) };
}

function onValue(view: View, offset: number): Answer | undefined {
  const [entry] = valueAt(view.checked.values, view.file, offset).filter(
    ({ value }) => value.origin.kind !== 'default',
  );
  const layer = layerSection(view, offset);
  if (entry === undefined && layer === undefined) return undefined;
  return {
    sections: [entry && valueSection(entry), layer],
    range: view.lines.rangeOf(entry?.value.range ?? { from: offset, to: offset }),
  };
}

/** On every other word of a line: what it is, and what the line means. */
function onHeader(view: View, offset: number): Answer | undefined {
  const token = view.parsed.tokens.find(({ kind, from, to }) => kind !== 'newline' && from <= offset && offset < to);
  if (token === undefined || ['symbol', 'other', 'comment'].includes(token.kind)) return undefined;
  const statement = statementOnLine(view, token.to);
  if (statement === undefined || token.from < statement.keyword.to) return undefined;
  return { sections: headerSection(view, statement, token), range: view.lines.rangeOf(token) };
}
