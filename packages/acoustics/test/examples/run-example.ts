import { agrees, show } from './agrees.js';
import type { StatedResult } from './instrument-example.js';

/** What an example turned out to be where it is not what it states; empty when all is as stated. */
export type Disagreement = {
  readonly line: number;
  readonly expression: string;
  readonly stated: string;
  readonly found: string;
};

/** Compares one stated result with what the expression gives. */
export function compareResult(result: StatedResult, evaluate: () => unknown): Disagreement | undefined {
  const { line, expression, stated } = result;
  const thrown = /^throws (.+)$/.exec(stated)?.[1];
  try {
    const value = evaluate();
    const ok = thrown === undefined && agrees(value, stated);
    return ok ? undefined : { line, expression, stated, found: show(value) };
  } catch (error) {
    const found = error instanceof Error ? `${error.name}: ${error.message}` : String(error);
    const ok = thrown !== undefined && found.includes(thrown);
    return ok ? undefined : { line, expression, stated, found: `throws ${found}` };
  }
}
