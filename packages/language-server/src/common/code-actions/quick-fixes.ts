import type { Problem } from '@boothwright/language';
import type { View } from '../view.js';
import { addDeclaration } from './add-declaration.js';
import { addMissingFact } from './add-missing-fact.js';
import type { Candidate } from './candidate.js';
import { closeBlock } from './close-block.js';
import { type Mend, mending } from './mending.js';
import { orderAndCommas } from './order-and-commas.js';
import { removeLine } from './remove-line.js';
import { replaceMarked } from './replace-marked.js';

const kinds: readonly ((view: View, problem: Problem) => Candidate[])[] = [
  replaceMarked,
  closeBlock,
  orderAndCommas,
  removeLine,
  addMissingFact,
  addDeclaration,
];

/** The ways to mend one problem of the text, each tried before it is offered. */
export function quickFixes(view: View, problem: Problem): Mend[] {
  if (problem.range.file !== view.file) return [];
  const candidates = kinds.flatMap((kind) => kind(view, problem));
  return candidates.length === 0 ? [] : mending(view, problem, candidates);
}
