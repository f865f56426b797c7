import { expect, test } from 'vitest';
import { palette } from '../../src/charts/palette.js';

// Relative luminance and contrast as WCAG 2.2 defines them.
function luminance(colour: string): number {
  const [r = 0, g = 0, b = 0] = [1, 3, 5]
    .map((at) => Number.parseInt(colour.slice(at, at + 2), 16) / 255)
    .map((part) => (part <= 0.04045 ? part / 12.92 : ((part + 0.055) / 1.055) ** 2.4));
  return 0.2126 * r + 0.7152 * g + 0.0722 * b;
}
function contrast(a: string, b: string): number {
  const [low = 0, high = 0] = [luminance(a), luminance(b)].sort((x, y) => x - y);
  return (high + 0.05) / (low + 0.05);
}

test.each(Object.entries(palette))(
  '%s has a contrast of at least 3 : 1 on white and on a near-black editor',
  (_, colour) => {
    expect(contrast(colour, '#ffffff')).toBeGreaterThanOrEqual(3);
    expect(contrast(colour, '#1e1e1e')).toBeGreaterThanOrEqual(3);
  },
);
