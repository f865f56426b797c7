/**
 * An editor opens a hover no higher than 250 pixels and scrolls the rest. A picture of this height stands whole below
 * two lines of text.
 */
const tallest = 188;

/** Scales the pictures of a hover down to what is seen without scrolling; their own proportions stay. */
export function fitPictures(markdown: string): string {
  return markdown.replace(/\|width=(\d+),height=(\d+)\)/g, (whole, width: string, height: string) => {
    const scale = tallest / Number(height);
    if (scale >= 1) return whole;
    return `|width=${Math.round(Number(width) * scale)},height=${tallest})`;
  });
}
