/** Bounds that keep any text, however odd, from costing more than a moment. */
export const limits = {
  /** UTF-16 units of one file. */
  fileSize: 2_000_000,
  /** Lines with content in one file. */
  statements: 100_000,
  /** Blocks in blocks; the language itself needs four. */
  blockDepth: 16,
  /** Parentheses in parentheses. */
  expressionDepth: 64,
  /** Operators in one value. */
  expressionLength: 400,
  /** Problems told per file; the rest is summed up in one line. */
  problems: 500,
  /** Files that one spec may use, directly or through others. */
  files: 100,
  variants: 200,
} as const;
