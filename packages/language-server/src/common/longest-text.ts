/** Longest text that is read, in characters. */
export const longestText = 10_000_000;

/** Why a text is not read. */
export function tooLong(text: string): string {
  const megabytes = (text.length / 1e6).toFixed(1);
  return `The text is ${megabytes} MB long; at most ${longestText / 1e6} MB are read`;
}
