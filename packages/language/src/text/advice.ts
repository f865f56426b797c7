/** What to do about a problem, with the texts of which each can stand in place of the marked one. */
export interface Advice {
  readonly hint: string;
  readonly instead: readonly string[];
}

/** A hint in words alone, or one that an editor can carry out. */
export type Hint = string | Advice;

export function didYouMeanAdvice(near: string): Advice {
  return { hint: `did you mean \`${near}\`?`, instead: [near] };
}

/** `write …`: the hint names the one text that is right. */
export function writeAdvice(wanted: string, more = ''): Advice {
  return { hint: `write \`${wanted}\`${more}`, instead: [wanted] };
}

/** For a mark that begins earlier than what is to be replaced: the same advice with what stands before it. */
export function insteadOfWhole(before: string, advice: Advice | undefined): Advice | undefined {
  return advice && { ...advice, instead: advice.instead.map((text) => before + text) };
}

/** The hint of a problem as its own fields. */
export function hintFields(hint: Hint | undefined): { readonly hint?: string; readonly instead?: readonly string[] } {
  if (hint === undefined) return {};
  return typeof hint === 'string' ? { hint } : { hint: hint.hint, instead: hint.instead };
}
