import { checkSpec } from '../check/check-spec.js';
import { format } from '../format/format.js';
import type { Problem } from '../model/problem.js';
import { checkAnswer } from './check-answer.js';
import { insideOf, roomOf, startSize } from './measures.js';
import { type Answers, isAsked } from './question.js';
import { questions } from './questions.js';
import type { Refused, SpecLine } from './spec-line.js';
import { specLines } from './spec-lines.js';

/** A complete spec to start from. */
export interface FirstSpec {
  readonly text: string;
  /** Answers that could not stand in the text, each with the reason; it stands in the text too, as a comment. */
  readonly refused: readonly Refused[];
}

/**
 * Writes a complete, commented spec from what is known. Whatever the answers are, the text checks without an error: an
 * answer that the language does not take, or that does not fit the others, is left out and named with its reason.
 */
export function firstSpec(given: Answers): FirstSpec {
  const answers: Record<string, string> = {};
  const refused = new Map<string, Refused>();
  for (const question of questions) {
    const { name } = question;
    const answer = Object.hasOwn(given, name) ? given[name] : undefined;
    if (answer === undefined || !isAsked(question, answers)) continue;
    const checked = checkAnswer(name, answer);
    if (checked.kind === 'good') answers[name] = checked.answer;
    if (checked.kind === 'bad') refused.set(name, { name, answer, message: checked.message });
  }

  // Each turn takes one answer away, so this ends; without any answer the text holds, which a test shows.
  for (;;) {
    const lines = linesOf({ answers, refused });
    const error = errorOf(lines);
    if (error === undefined) return { text: format(textOf(lines)), refused: [...refused.values()] };
    const name = culprit(lines, error, answers);
    if (name === undefined) return { text: format(textOf(lines)), refused: [...refused.values()] };
    refused.set(name, { name, answer: answers[name] ?? '', message: error.message });
    delete answers[name];
  }
}

function linesOf(given: Parameters<typeof specLines>[0]): readonly SpecLine[] {
  const room = given.answers.room === undefined ? undefined : roomOf([{ text: `site { room ${given.answers.room} }` }]);
  const outside = startSize(given.answers.kind, room);
  // What is inside follows from the faces; only then can anything be put into a place there.
  const inside = insideOf(specLines(given, { room, outside, inside: undefined }));
  return specLines(given, { room, outside, inside });
}

const textOf = (lines: readonly SpecLine[]): string => `${lines.map(({ text }) => text).join('\n')}\n`;

function errorOf(lines: readonly SpecLine[]): Problem | undefined {
  const text = textOf(lines);
  const { problems } = checkSpec('first.booth', {
    read: (path) => (path === 'first.booth' ? { kind: 'text', text } : { kind: 'missing' }),
  });
  return problems.find(({ severity }) => severity === 'error');
}

/** The answer on the line of the error, or on a line that it names besides; otherwise the last that was given. */
function culprit(lines: readonly SpecLine[], error: Problem, answers: Answers): string | undefined {
  const places = [error.range, ...(error.related ?? []).map(({ range }) => range)];
  for (const { from } of places) {
    const of = lineAt(lines, from)?.of;
    if (of !== undefined && answers[of] !== undefined) return of;
  }
  return Object.keys(answers).at(-1);
}

function lineAt(lines: readonly SpecLine[], place: number): SpecLine | undefined {
  let end = 0;
  for (const line of lines) {
    end += line.text.length + 1;
    if (place < end) return line;
  }
  return undefined;
}
