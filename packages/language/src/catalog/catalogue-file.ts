/**
 * The path under which the shipped catalogue appears in ranges and files. It has a scheme, so that no file of a
 * workspace can be taken for it.
 */
export const CATALOGUE_FILE = 'boothwright:catalog.booth';
