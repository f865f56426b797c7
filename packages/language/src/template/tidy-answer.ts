/** More is no answer of a person; it keeps every line of the text readable. */
const longest = 400;

/** One line of what was answered: without line breaks and signs that cannot be seen, and with single blanks. */
export function tidyAnswer(answer: string): string {
  return answer
    .slice(0, longest)
    .replace(/[\p{C}\p{Z}]+/gu, ' ')
    .trim();
}

/** The same as the inside of a text in quotes. */
export function tidyTitle(answer: string): string {
  return tidyAnswer(answer).replace(/["\\]/g, "'").slice(0, 80).trim();
}

/** `360 x 310 x 245 cm` means that all three are centimetres: a tape measure has one unit. */
export function sizeWithUnits(answer: string): string {
  const pieces = answer.split(/\s*[x×*]\s*/i);
  const unit = pieces.at(-1)?.match(/^[\d.]+\s*([a-z]+)$/i)?.[1];
  if (unit === undefined || pieces.length < 2) return answer;
  return pieces.map((piece) => (/^[\d.]+$/.test(piece) ? `${piece} ${unit}` : piece)).join(' x ');
}
