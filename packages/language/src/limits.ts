/** Bounds that keep any text, however odd, from costing more than a moment. */
export const limits = {
  /** UTF-16 units of one file. */
  fileSize: 2_000_000,
  /** Lines with content in one file. */
  statements: 100_000,
  /** Blocks in blocks; the language itself needs four. */
  blockDepth: 16,
  /** Tokens that a guess about a missing or stray brace looks at. */
  lookahead: 2000,
  /** Parentheses in parentheses. */
  expressionDepth: 64,
  /** Operators in one value. */
  expressionLength: 400,
  /** Values that lead to each other by name. */
  letDepth: 200,
  /** Assemblies that are made of each other. */
  assemblyDepth: 16,
  /** Layers of one assembly, those of the assemblies in it counted in. */
  layers: 200,
  /** Near names looked for in one reading. */
  suggestions: 200,
  /** Problems told per file and per reading; the rest is summed up in one line. */
  problems: 500,
  /** Places that one problem points at beside its own. */
  related: 50,
  /** Files that one spec may use, directly or through others. */
  files: 100,
  variants: 200,
  /** Changes in one variant. */
  changes: 100,
  /** Facts times variants: what working out the variants may cost. */
  variantFacts: 400_000,
} as const;
