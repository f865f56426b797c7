import { parse } from '../syntax/parse.js';
import type { ParsedFile } from '../syntax/parsed-file.js';
import { catalogueText } from './catalog.booth.js';
import { CATALOGUE_FILE } from './catalogue-file.js';

let parsed: ParsedFile | undefined;

/** The shipped catalogue, read once. */
export function catalogue(): ParsedFile {
  parsed ??= parse(catalogueText, CATALOGUE_FILE);
  return parsed;
}
