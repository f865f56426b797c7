import { expect, it } from 'vitest';
import { fitPictures } from '../../../src/common/hover/fit-pictures.js';

it('scales a tall picture down and keeps its proportions', () => {
  expect(fitPictures('![a](data:x|width=460,height=230)')).toBe('![a](data:x|width=376,height=188)');
});

it('leaves a picture that fits as it is', () => {
  const small = '![a](data:x|width=400,height=100) and text';
  expect(fitPictures(small)).toBe(small);
});
