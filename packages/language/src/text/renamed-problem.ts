import type { Problem } from '../model/problem.js';
import type { SourceRange } from '../model/sourced.js';
import type { FormerWord } from '../vocabulary/former-words.js';
import { hintFields, writeAdvice } from './advice.js';

/** A keyword that still works and is called otherwise now. */
export function renamedProblem({ was, now, since }: FormerWord, range: SourceRange, written = now): Problem {
  return {
    id: 'keyword-renamed',
    severity: 'hint',
    message: `\`${was}\` is called \`${written}\` since version ${since} of the language`,
    range,
    tags: ['deprecated'],
    ...hintFields(writeAdvice(written)),
  };
}
