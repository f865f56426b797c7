import type { DimensionName } from '../units/dimension.js';

/** The blocks of the language; `file` is the text outside every block. */
export type BlockName =
  | 'file'
  | 'material'
  | 'assembly'
  | 'frame'
  | 'site'
  | 'noise'
  | 'passage'
  | 'obstacle'
  | 'neighbour'
  | 'booth'
  | 'lining'
  | 'door'
  | 'window'
  | 'vent'
  | 'fan'
  | 'slit'
  | 'hole'
  | 'mic'
  | 'equipment'
  | 'panels'
  | 'session'
  | 'budget'
  | 'variant'
  | 'measured';

export type SymbolKind =
  | 'material'
  | 'assembly'
  | 'let'
  | 'noise'
  | 'impact'
  | 'appliance'
  | 'passage'
  | 'obstacle'
  | 'neighbour'
  | 'booth'
  | 'door'
  | 'window'
  | 'vent'
  | 'slit'
  | 'hole'
  | 'equipment'
  | 'item'
  | 'variant'
  | 'measured';

/** One thing that may stand on a line, in order. The parser, completion, hover and the reference all read these. */
export type Part =
  | { readonly kind: 'quantity'; readonly slot: string; readonly dimension: DimensionName }
  /** A thickness or a mass per area. */
  | { readonly kind: 'amount'; readonly slot: string }
  | { readonly kind: 'any-value'; readonly slot: string }
  /** `W x D x H` or `W x H`, slots named after the axes; `single` names the slot of one length alone. */
  | { readonly kind: 'size'; readonly axes: readonly string[]; readonly single?: string }
  /** Lengths separated by commas. */
  | { readonly kind: 'position'; readonly axes: readonly string[] }
  | { readonly kind: 'choice'; readonly slot: string; readonly options: readonly string[] }
  | { readonly kind: 'reference'; readonly slot: string; readonly to: readonly SymbolKind[] }
  | { readonly kind: 'new-name'; readonly declares: SymbolKind }
  | { readonly kind: 'title' }
  | { readonly kind: 'text'; readonly slot: string }
  /** A fixed word. */
  | { readonly kind: 'literal'; readonly word: string }
  /** Tried when its first part is seen; with `beforeCount` only when a number of pieces still follows. */
  | { readonly kind: 'optional'; readonly parts: readonly Part[]; readonly beforeCount?: true }
  /** The first branch whose first part is seen; the last one is expected when none is. */
  | { readonly kind: 'either'; readonly branches: readonly (readonly Part[])[] }
  | { readonly kind: 'face'; readonly slot: string }
  | { readonly kind: 'faces'; readonly slot: string }
  | { readonly kind: 'bands'; readonly slot: string; readonly dimension: DimensionName }
  /** Two values per point, points separated by commas, such as flow and pressure of a fan. */
  | { readonly kind: 'pairs'; readonly slot: string; readonly first: DimensionName; readonly second: DimensionName }
  /** A time of day. */
  | { readonly kind: 'clock'; readonly slot: string }
  /** Stretches of the day, separated by commas. */
  | { readonly kind: 'hours'; readonly slot: string }
  | { readonly kind: 'price'; readonly slot: string; readonly per: boolean }
  | { readonly kind: 'nominal'; readonly slot: string }
  | { readonly kind: 'path'; readonly slot: string }
  | { readonly kind: 'tokens'; readonly slot: string };

/** One line of the language: what it is called, what follows it, what it means. */
export interface Fact {
  /** First word, or two words as in `gap perimeter`; empty for a layer, which starts with a material's name. */
  readonly keyword: string;
  readonly parts: readonly Part[];
  /** The block that follows, if any. */
  readonly block?: { readonly name: BlockName; readonly required: boolean };
  /** Symbol kind that the line declares. */
  readonly declares?: SymbolKind;
  /** A block without it is incomplete. */
  readonly required?: true;
  /** May stand more than once in its block. */
  readonly repeats?: true;
  /** Name of the default in the table of defaults when the line is absent. */
  readonly default?: string;
  /** May end with `from KIND "…"`. */
  readonly sourced?: true;
  readonly example: string;
  /** One sentence for hover, completion and the reference. */
  readonly documentation: string;
}

export interface Block {
  readonly name: BlockName;
  readonly documentation: string;
  readonly facts: readonly Fact[];
}
