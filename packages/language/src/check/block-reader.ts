import type { SourceRange } from '../model/sourced.js';
import type { Slot, Statement } from '../syntax/tree.js';
import { andList } from '../text/and-list.js';
import { shapeText } from '../vocabulary/shape-text.js';
import { blockOf } from '../vocabulary/vocabulary.js';
import { type CheckContext, complain, headerOf, rangeIn, slotRange } from './context.js';

/** A block that is being read: its facts by keyword, each complaint in terms of the block's own name. */
export interface BlockReader {
  readonly ctx: CheckContext;
  readonly header: Statement;
  /** How messages call the block: `door entry`. */
  readonly label: string;
  readonly facts: ReadonlyMap<string, readonly Statement[]>;
}

export function readBlock(ctx: CheckContext, header: Statement, label: string): BlockReader {
  const facts = new Map<string, Statement[]>();
  for (const statement of header.block?.statements ?? []) {
    if (!statement.fact) continue;
    const list = facts.get(statement.fact.keyword);
    if (!list) facts.set(statement.fact.keyword, [statement]);
    else {
      if (!statement.fact.repeats) {
        const related = [{ range: headerOf(list[0]!), message: 'the first stands here' }];
        complain(ctx, 'fact-twice', headerOf(statement), `\`${statement.fact.keyword}\` stands twice in ${label}`, {
          hint: 'remove one of the two',
          related,
        });
        continue;
      }
      list.push(statement);
    }
  }
  const reader = { ctx, header, label, facts };
  reportMissing(reader);
  return reader;
}

function reportMissing(reader: BlockReader): void {
  const { ctx, header, label, facts } = reader;
  if (!header.block || !header.complete || isUnfinished(reader)) return;
  const missing = blockOf(header.block.name).facts.filter((fact) => fact.required && !facts.has(fact.keyword));
  if (missing.length === 0) return;
  const list = andList(missing.map((fact) => `\`${fact.keyword}\``));
  complain(ctx, 'fact-missing', headerOf(header), `${label} has no ${list}`, {
    lacks: missing.map((fact) => fact.keyword),
    // The shape and not the example: an invented size must not end up in a spec.
    hint: `add ${andList(missing.map((fact) => `\`${shapeText(fact)}\``))}`,
  });
}

export function factOf(reader: BlockReader, keyword: string): Statement | undefined {
  return reader.facts.get(keyword)?.[0];
}

export function factsOf(reader: BlockReader, keyword: string): readonly Statement[] {
  return reader.facts.get(keyword) ?? [];
}

export function wordIn(
  statement: Statement,
  slot: string,
): { readonly word: string; readonly range: SourceRange } | undefined {
  const found = statement.slots.get(slot);
  return found?.kind === 'word' ? { word: found.word, range: slotRange(statement, found) } : undefined;
}

export function titleOf(statement: Statement): { readonly title: string } | Record<never, never> {
  const slot = statement.slots.get('title');
  return slot?.kind === 'string' ? { title: slot.value } : {};
}

export function slotOf<K extends Slot['kind']>(
  statement: Statement,
  name: string,
  kind: K,
): Extract<Slot, { kind: K }> | undefined {
  const slot = statement.slots.get(name);
  return slot?.kind === kind ? (slot as Extract<Slot, { kind: K }>) : undefined;
}

export function nameOf(statement: Statement): { readonly name: string; readonly nameRange: SourceRange } | undefined {
  const slot = slotOf(statement, 'name', 'word');
  return slot ? { name: slot.word, nameRange: rangeIn(slot.file ?? statement.file, slot) } : undefined;
}

/**
 * A line that could not be read may be the very one that seems to be missing, and a block that is still open may be
 * about to get it.
 */
export function isUnfinished({ header: { block } }: BlockReader): boolean {
  return block !== undefined && (!block.closed || block.statements.some((statement) => !statement.fact));
}
