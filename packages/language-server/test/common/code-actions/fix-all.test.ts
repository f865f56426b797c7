import { expect, it } from 'vitest';
import { fixedText } from '../../../src/common/code-actions/fix-all.js';
import { openSpecs } from '../../helpers/index.js';

const fixed = (text: string) => fixedText(openSpecs({ 'test.booth': text }).view('test.booth'));

it('mends at once what has one sensible mend, round by round', () => {
  const broken = 'assembli wall {\n  gypsum-board 12,5 mm\n  air 50 millimetres\n  osb 1/2"\n';
  expect(fixed(broken)).toBe('use catalog\nassembly wall {\n  gypsum-board 12.5 mm\n  air 50 mm\n  osb 1/2 in\n}\n');
});

it('leaves what could be meant in several ways, and guesses at names and units', () => {
  const open =
    'use catalog\nassembly wall {\n  gypsm-board 12.5 mm\n  osb 12\n}\nsite {\n  room 4 m x 3 m x 2 m\n  noise a 45 db like road-traffic\n}\n';
  expect(fixed(open)).toBe(open);
});

it('leaves a sound text alone', () => {
  const sound = 'use catalog\nassembly wall {\n  osb 12 mm\n}\n';
  expect(fixed(sound)).toBe(sound);
});
