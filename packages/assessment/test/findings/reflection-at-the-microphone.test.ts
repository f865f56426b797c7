import { describe, expect, it } from 'vitest';
import { findingsById, onlyBooth } from '../fixtures/assessed.js';
import { bigBox, smallBooth } from '../fixtures/booth-text.js';

const id = 'reflection-at-the-microphone';
/** A hard board right behind the microphone, seen from the mouth. */
const board = (absorbs: string) =>
  `mouth at 0.6 m, 0.75 m, 1.5 m; equipment copy "copy board" at 0.6 m, 0.45 m, 1.5 m { kind copy-stand; size 500 mm x 10 mm x 600 mm${absorbs} }`;

describe(id, () => {
  it('names the hard board before the mouth, with its level as the reflections give it', () => {
    const text = smallBooth({ booth: board('') });
    const found = findingsById(text, id).find(({ message }) => message.includes('copy board'));
    expect(found).toBeDefined();
    const early = onlyBooth(text).reflections!.early.filter(({ name }) => name === 'copy board');
    expect(early[0]!.levelDb).toBeGreaterThan(-15);
    expect(found!.fix.length).toBeGreaterThan(10);
  });

  it('is silent about the same board when it takes nearly everything, and without a board', () => {
    const about = (text: ReturnType<typeof smallBooth>) =>
      findingsById(text, id).filter(({ message }) => message.includes('copy board'));
    expect(about(smallBooth({ booth: board('; absorbs 98 %') }))).toEqual([]);
    expect(about(smallBooth({ booth: 'mouth at 0.6 m, 0.75 m, 1.5 m' }))).toEqual([]);
  });

  it('fires in an unrelated box for a shelf behind the head, which a cardioid does not turn away', () => {
    const shelf =
      'mouth at 1.1 m, 1.6 m, 1.4 m; equipment shelf at 1.1 m, 1.85 m, 1.4 m { kind shelf; size 1000 mm x 10 mm x 1000 mm }';
    const about = (booth: string) =>
      findingsById(bigBox({ booth }), id).filter(({ message }) => message.includes('shelf'));
    expect(about(shelf)).toHaveLength(1);
  });
});
