import type { ParsedFile } from './parsed-file.js';
export declare function parse(text: string, file: string): ParsedFile;
