import { contextAt, type Expectation, type Part, type Statement, shapeText } from '@boothwright/language';
import { MarkupKind, type Position, type SignatureHelp } from 'vscode-languageserver';
import { type Parameter, parametersOf } from './signature/parameters.js';
import { valueHelp } from './signature/value-help.js';
import { statementOnLine } from './statement-on-line.js';
import type { View } from './view.js';

/** Where a new value may begin. */
export const signatureCharacters = [' ', ','] as const;

/** What the line takes at a position: its shape, which of its values is next, and the kinds and units of that value. */
export function signatureHelp(view: View, position: Position): SignatureHelp | undefined {
  const offset = view.lines.offsetAt(position);
  const statement = statementOnLine(view, offset);
  const fact = statement?.fact;
  if (statement === undefined || fact === undefined) return undefined;
  const parameters = parametersOf(fact);
  const context = contextAt(view.parsed, offset);
  if (parameters.length === 0 || context.quiet) return undefined;
  const active = activeParameter(parameters, statement, context.expects, offset);
  return {
    signatures: [
      {
        label: shapeText(fact),
        documentation: { kind: MarkupKind.Markdown, value: `${fact.documentation}\n\n\`${fact.example}\`` },
        parameters: parameters.map(({ from, to, part }) => ({
          label: [from, to] as [number, number],
          documentation: { kind: MarkupKind.Markdown, value: valueHelp(part) },
        })),
        // None is marked where the line is complete.
        activeParameter: active ?? parameters.length,
      },
    ],
    activeSignature: 0,
    activeParameter: active ?? parameters.length,
  };
}

function activeParameter(
  parameters: readonly Parameter[],
  { slots, keyword }: Statement,
  expects: readonly Expectation[],
  offset: number,
): number | undefined {
  // A fixed word fills a slot too, until a value of that name does.
  const filled = (name: string) => (slots.get(name)?.kind === 'flag' ? undefined : slots.get(name));
  const spans = parameters.map(({ slots: own }) => own.map(filled).find((slot) => slot !== undefined));
  const under = spans.findIndex((slot) => slot !== undefined && slot.from <= offset && offset <= slot.to);
  if (under >= 0 && keyword.to < offset) return under;
  const last = spans.findLastIndex((slot) => slot !== undefined && slot.to < offset);
  if (last >= 0 && expects.some(({ kind }) => kind === 'unit')) return last;
  const open = parameters.findIndex(
    (parameter, i) => i > last && spans[i] === undefined && expects.some((expectation) => fits(expectation, parameter)),
  );
  return open < 0 ? undefined : open;
}

const same: Partial<Record<Expectation['kind'], readonly Part['kind'][]>> = {
  reference: ['reference'],
  layer: ['reference'],
  clock: ['clock', 'hours'],
  choice: ['choice', 'price'],
  face: ['face', 'faces'],
  'new-name': ['new-name'],
  text: ['text', 'title'],
  path: ['path'],
};

/** True when what may stand at the place is the parameter's value, or the fixed word that leads to it. */
function fits(expectation: Expectation, { part, after }: Parameter): boolean {
  if (expectation.kind === 'word') {
    if (part.kind === 'bands') return expectation.word === 'octave' || expectation.word === 'third';
    return after === expectation.word;
  }
  if (expectation.kind === 'quantity') {
    if (part.kind === 'quantity') return part.dimension === expectation.dimension;
    if (part.kind === 'amount') return expectation.dimension === 'amount';
    if (part.kind === 'any-value') return expectation.dimension === 'any';
    if (part.kind === 'pairs') return part.first === expectation.dimension;
    if (part.kind === 'price') return expectation.dimension === 'money';
    if (part.kind === 'size' || part.kind === 'position') return expectation.dimension === 'length';
    return part.kind === 'tokens';
  }
  return same[expectation.kind]?.includes(part.kind) === true;
}
