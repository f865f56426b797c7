import type { ParsedFile } from '../syntax/parsed-file.js';
import type { Context } from './context.js';
export declare function contextAt(parsed: ParsedFile, offset: number): Context;
