/**
 * Runs in the page: what sticks out of it at the right, and whatever hides part of its text. Empty when nothing does.
 *
 * @returns {string[]}
 */
export function overflowing() {
  const width = document.documentElement.clientWidth;
  /** @type {string[]} */
  const found = [];
  for (const element of document.body.querySelectorAll('*')) {
    // What is inside a picture is cut by the picture, which is looked at as a whole.
    if (element.closest('svg') !== null && element.tagName !== 'svg') continue;
    const { right, left, width: own } = element.getBoundingClientRect();
    if (own > 0 && (right > width + 1 || left < -1))
      found.push(
        `<${element.tagName.toLowerCase()}> to ${Math.round(right)} of ${width}: ${element.textContent?.slice(0, 60)}`,
      );
    const hides = getComputedStyle(element).overflowX !== 'visible' && element.scrollWidth > element.clientWidth + 1;
    if (hides && element.tagName !== 'svg')
      found.push(`<${element.tagName.toLowerCase()}> hides ${element.scrollWidth - element.clientWidth} px`);
  }
  return found.slice(0, 5);
}
