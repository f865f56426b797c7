import { boothProblems } from './booth-problems.js';
import { meaningProblems } from './meaning-problems.js';
import type { ProblemEntry } from './problem-entry.js';
import { readingProblems } from './reading-problems.js';

/** Every identifier that a problem of the text can have. They are stable: settings and comments name them. */
export const problemTable: Readonly<Record<string, ProblemEntry>> = {
  ...readingProblems,
  ...meaningProblems,
  ...boothProblems,
};
