import { type DefaultName, defaultOf } from '../defaults.js';
import type { Answers } from './question.js';

/** One line of a first spec, and the question whose answer it rests on. */
export interface SpecLine {
  readonly text: string;
  readonly of?: string;
}

/** An answer that found no place in the text, and why. */
export interface Refused {
  readonly name: string;
  readonly answer: string;
  readonly message: string;
}

/** What is known while the text is written. */
export interface Given {
  readonly answers: Answers;
  readonly refused: ReadonlyMap<string, Refused>;
}

/** The line of an answer, or a comment that says what stands in for it. */
export function fact(given: Given, name: string, line: (answer: string) => string, unsaid: string): SpecLine {
  const answer = given.answers[name];
  if (answer !== undefined) return { text: line(answer), of: name };
  return { text: `# ${name}: ${whyMissing(given, name)}; ${unsaid}` };
}

/** The same with a value to start from in place of a comment alone. */
export function started(given: Given, name: string, line: (answer: string) => string, start: string): SpecLine {
  const answer = given.answers[name];
  if (answer !== undefined) return { text: line(answer), of: name };
  return { text: `${line(start)}  # ${whyMissing(given, name)}: a value to start from` };
}

/** What stands in when a fact with a default of the language is left out. */
export function byDefault(name: DefaultName): string {
  return `the default ${name} stands in, ${defaultOf(name).text}`;
}

function whyMissing({ refused }: Given, name: string): string {
  const entry = refused.get(name);
  if (entry === undefined) return 'not stated';
  return `left out (${entry.message.replace(/[\p{C}\p{Zl}\p{Zp}]+/gu, ' ')})`;
}
