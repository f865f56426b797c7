/** What the reader of a question may choose from. */
export interface Choice {
  readonly value: string;
  readonly says: string;
}

/**
 * One thing that a person with a tape measure knows about a booth. Whatever asks the questions, an editor or a command
 * line, needs nothing of the language: it shows `asks` and hands the answer back as text.
 */
export interface Question {
  /** Kebab-case; also the option of the command line. */
  readonly name: string;
  readonly asks: string;
  /** An answer as it may be written. */
  readonly example: string;
  readonly choices?: readonly Choice[];
  /** With choices: another answer, written in the language, is taken too. */
  readonly free?: boolean;
  /** Asked only when another question has one of these answers. */
  readonly when?: { readonly name: string; readonly is: readonly string[] };
}

/** Answers by the name of their question; a question without an answer is missing. */
export type Answers = Readonly<Record<string, string>>;

/** True when the question makes sense after the answers given so far. */
export function isAsked(question: Question, answers: Answers): boolean {
  const { when } = question;
  return when === undefined || when.is.includes(answers[when.name] ?? '');
}
