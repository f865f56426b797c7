import type { BlockReader } from './block-reader.js';

/** A reader that does not tell the default of a fact which is absent, where nothing depends on it. */
export function idleDefault(reader: BlockReader, keyword: string, isIdle: boolean): BlockReader {
  return isIdle && !reader.facts.has(keyword) ? { ...reader, ctx: { ...reader.ctx, values: [] } } : reader;
}
