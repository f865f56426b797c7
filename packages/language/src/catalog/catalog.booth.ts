/** The shipped catalogue, written in the language itself. */
export const catalogueText: string = '';
