import {
  type Range,
  type SemanticTokens,
  SemanticTokensBuilder,
  type SemanticTokensDelta,
} from 'vscode-languageserver';
import { semanticTokens } from './semantic-tokens.js';
import type { View } from './view.js';

/** Remembers what each document's tokens were last, so that only what changed since is sent. */
export interface TokenMemory {
  full(view: View): SemanticTokens;
  /** The change since the answer of that name; all tokens when it is not the last one. */
  delta(view: View, previousResultId: string): SemanticTokens | SemanticTokensDelta;
  /** Those of a stretch, which are remembered for nothing. */
  range(view: View, range: Range): SemanticTokens;
  closed(uri: string): void;
}

export function createTokenMemory(): TokenMemory {
  const builders = new Map<string, SemanticTokensBuilder>();
  const fresh = (uri: string): SemanticTokensBuilder => {
    const builder = new SemanticTokensBuilder();
    builders.set(uri, builder);
    return builder;
  };
  return {
    full(view) {
      const builder = fresh(view.uri);
      semanticTokens(view, builder);
      return builder.build();
    },
    delta(view, previousResultId) {
      const builder = builders.get(view.uri) ?? fresh(view.uri);
      builder.previousResult(previousResultId);
      semanticTokens(view, builder);
      return builder.buildEdits();
    },
    range(view, { start, end }) {
      const builder = new SemanticTokensBuilder();
      semanticTokens(view, builder, { from: view.lines.offsetAt(start), to: view.lines.offsetAt(end) });
      return builder.build();
    },
    closed(uri) {
      builders.delete(uri);
    },
  };
}
