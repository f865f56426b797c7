import type { ParsedFile } from '../syntax/parsed-file.js';
import type { Token } from '../syntax/token.js';

export interface Line {
  /** Without the line break. */
  readonly from: number;
  readonly to: number;
  /** Comments too, newlines not. */
  readonly tokens: readonly Token[];
  /** Open blocks at its first token, the ones it closes first not counted. */
  readonly depth: number;
  /** It could not be read and stays to the letter. */
  readonly verbatim: boolean;
}

export function linesOf(parsed: ParsedFile): readonly Line[] {
  const lines: Line[] = [];
  const broken = brokenPlaces(parsed);
  // Places rise with the lines, so each is passed once.
  let nextBroken = 0;
  const hasBroken = (to: number): boolean => {
    const first = nextBroken;
    while (nextBroken < broken.length && broken[nextBroken]! <= to) nextBroken++;
    return nextBroken > first;
  };
  let from = 0;
  let depth = 0;
  let tokens: Token[] = [];
  for (const token of parsed.tokens) {
    if (token.kind !== 'newline') {
      tokens.push(token);
      continue;
    }
    const to = token.from;
    let closing = 0;
    while (isBrace(tokens[closing], '}')) closing++;
    const opened = tokens.filter((t) => isBrace(t, '{')).length;
    const closed = tokens.filter((t) => isBrace(t, '}')).length;
    const isBroken = hasBroken(to);
    const verbatim = isBroken || tokens.some((t) => t.kind === 'other');
    lines.push({ from, to, tokens, depth: Math.max(0, depth - closing), verbatim });
    depth = Math.max(0, depth + opened - closed);
    from = token.to;
    tokens = [];
  }
  return lines;
}

/** Where lines could not be read. A block that is never closed has a sound header, so that is not among them. */
function brokenPlaces(parsed: ParsedFile): readonly number[] {
  return parsed.problems
    .filter(
      (problem) =>
        problem.severity === 'error' && problem.id !== 'block-not-closed' && problem.id !== 'too-many-problems',
    )
    .map((problem) => problem.range.from)
    .sort((a, b) => a - b);
}

function isBrace(token: Token | undefined, text: string): boolean {
  return token?.kind === 'symbol' && token.text === text;
}
