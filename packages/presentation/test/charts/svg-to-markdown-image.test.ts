import { expect, test } from 'vitest';
import { svgToMarkdownImage } from '../../src/charts/svg-to-markdown-image.js';

test('svgToMarkdownImage(svg, alt, size) carries picture, text and size in one Markdown image', () => {
  expect(svgToMarkdownImage('<svg/>', 'STC [41]\nof a wall', { width: 460, height: 230 })).toBe(
    '![STC \\[41\\] of a wall](data:image/svg+xml;base64,PHN2Zy8+|width=460,height=230)',
  );
});
