/** The path under which the shipped catalogue appears in ranges and files; no file of a workspace is read for it. */
export const CATALOGUE_FILE = 'catalog.booth';
