import { checkSpec } from '../check/check-spec.js';
import { probeOf } from './probes.js';
import { questions } from './questions.js';
import { sizeWithUnits, tidyAnswer, tidyTitle } from './tidy-answer.js';

export type AnswerCheck =
  /** Nothing was said. */
  | { readonly kind: 'empty' }
  | { readonly kind: 'good'; readonly answer: string }
  /** `message` says what was expected, as the checker does. */
  | { readonly kind: 'bad'; readonly message: string };

/** Holds one answer against what the language takes at its place, and brings it into the form in which it is written there. */
export function checkAnswer(name: string, answer: string): AnswerCheck {
  const question = questions.find((each) => each.name === name);
  if (question === undefined) return { kind: 'bad', message: `nothing is asked by the name of ${name}` };
  const tidy = name === 'title' ? tidyTitle(answer) : tidyAnswer(answer);
  if (tidy === '') return { kind: 'empty' };
  const { choices } = question;
  if (choices?.some(({ value }) => value === tidy)) return { kind: 'good', answer: tidy };
  if (choices !== undefined && question.free !== true)
    return { kind: 'bad', message: `one of ${choices.map(({ value }) => value).join(', ')} was expected` };
  const probe = probeOf(name);
  if (probe === undefined) return { kind: 'good', answer: tidy };
  // A comment would swallow the rest of the line, a second fact is no answer, and a brace of its own would end the block
  // that the answer stands in; only layers are several facts.
  const foreign = question.free === true ? /[#"]/ : /[#";{}]/;
  if (foreign.test(tidy) || !bracesMatch(tidy))
    return { kind: 'bad', message: `an answer such as ${question.example} was expected` };
  const written = probe.isSize ? sizeWithUnits(tidy) : tidy;
  const text = probe.text(written);
  const { problems } = checkSpec('answer.booth', {
    read: (path) => (path === 'answer.booth' ? { kind: 'text', text } : { kind: 'missing' }),
  });
  const error = problems.find(({ severity }) => severity === 'error');
  if (error === undefined) return { kind: 'good', answer: written };
  // What the checker would have one write names the whole line; only the answer is asked for here.
  return { kind: 'bad', message: `${error.message}; such as ${question.example}` };
}

function bracesMatch(text: string): boolean {
  let depth = 0;
  for (const sign of text) {
    if (sign === '{') depth += 1;
    if (sign === '}') depth -= 1;
    if (depth < 0) return false;
  }
  return depth === 0;
}
