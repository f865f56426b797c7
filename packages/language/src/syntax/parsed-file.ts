import type { Problem } from '../model/problem.js';
import type { Token } from './token.js';
import type { FileNode } from './tree.js';

/** One text, read. Parsing never fails: the tree holds what could be understood, the problems what could not. */
export interface ParsedFile {
  readonly file: string;
  readonly text: string;
  readonly tokens: readonly Token[];
  readonly tree: FileNode;
  readonly problems: readonly Problem[];
}
